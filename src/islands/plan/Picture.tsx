/** One picture in three faces: from above, from beside, along the line; to scale, and drawn as the hand moves. */
import { useState } from 'preact/hooks';
import lineWords from '#content/drawings/line-clearance.json';
import planWords from '#content/drawings/plan.json';
import stanceWords from '#content/drawings/stance.json';
import type { Box } from '#drawings/kit/placed.ts';
import { Drawing as Line } from '#drawings/line-clearance/Drawing.tsx';
import type { Inputs as LineInputs } from '#drawings/line-clearance/geometry.ts';
import { Drawing as Above } from '#drawings/plan/Drawing.tsx';
import type { Move } from '#drawings/plan/geometry.ts';
import { Drawing as Side } from '#drawings/stance/Drawing.tsx';
import type { Inputs as SideInputs } from '#drawings/stance/geometry.ts';
import type { PlanState, Worked } from './usePlan.ts';
import type { PlanProps } from './words.ts';

type Face = 'plan' | 'side' | 'line';
type Props = { props: PlanProps; state: PlanState; good: Worked };

const phone: Box = { width: 358, height: 300 };

/** `on` draws for paper: nothing can be moved, and no limb stands out. */
export const Faces = ({ face, props, state, good, id, box, paper = false }: Props & { face: Face; id: string; box: Box; paper?: boolean }) => {
  const work = good.work.limbs[state.limb] ?? good.work.limbs[0]!;
  const piece = work.pieces.at(-1)!;
  const common = { id, box, units: state.system, quiet: !state.current && state.problems.length > 0 };
  const words = (labels: Readonly<Record<string, string>>) => ({ title: props.words.faces[face], description: planWords.views[face], labels });
  const moved = (move: Move): void => {
    const [[name, bearing]] = Object.entries(move) as [[string, number]];
    if (name === 'line' || name === 'downhill') state.setBearing(name, bearing);
    else state.setLimbBearing(name, bearing);
  };
  if (face === 'plan') {
    return <Above {...common} words={words(planWords.labels)} seen={{ plan: paper ? good.plan : state.plan, work: good.work, chosen: paper ? null : state.limb }} {...(paper ? {} : { onMove: moved })} />;
  }
  const { stance, clearance, stand } = piece;
  if (face === 'side') {
    return stance.outcome.kind === 'answer'
      ? <Side {...common} words={words(stanceWords.labels)} face="side" inputs={stance.inputs as SideInputs} outcome={stance.outcome} standOff={stand?.standOff ?? null} />
      : null;
  }
  const run = clearance[0];
  return run?.outcome.kind === 'answer' ? <Line {...common} words={words(lineWords.labels)} face="side" inputs={run.inputs as LineInputs} outcome={run.outcome} /> : null;
};

export const Picture = (part: Props) => {
  const [face, setFace] = useState<Face>('plan');
  const { faces } = part.props.words;
  return (
    <figure class="drawing">
      <div class="choices view-switch-always">
        {(['plan', 'side', 'line'] as const).map((name) => (
          <label key={name}>
            <input type="radio" name="plan-face" checked={face === name} onChange={() => setFace(name)} />
            <span>{faces[name]}</span>
          </label>
        ))}
      </div>
      <Faces {...part} face={face} id={`plan-${face}`} box={phone} />
    </figure>
  );
};
