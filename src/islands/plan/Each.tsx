/** The answer for each limb, piece by piece; every calculator can be opened with what it was fed here. */
import { writeLink } from '#core/kit/link.ts';
import { parts, planOn, type Run } from '#core/plan/feed.ts';
import type { LimbWork, PieceWork } from '#core/plan/work.ts';
import type { AnyCalculator } from '#core/kit/calculator.ts';
import { Both } from '../kit/Say.tsx';
import { limbRows, loadRows, pieceRows, planRows, type Row } from './figures.ts';
import type { PlanState } from './usePlan.ts';
import { clockText, fillIn, type PlanProps, slackText } from './words.ts';

export const Rows = ({ rows }: { rows: readonly Row[] }) => (
  <dl class="more-list">
    {rows.map(({ label, text }) => (
      <div key={label}><dt>{label}</dt><dd><strong><Both {...text} /></strong></dd></div>
    ))}
  </dl>
);

/** The mark by which a calculator's page knows that the reader came from here. */
export const fromPlan = 'frame=plan';

const Ways = ({ props, runs }: { props: PlanProps; runs: readonly Run[] }) => (
  <details class="no-print">
    <summary>{props.words.answer.open}</summary>
    <ul class="ways-on">
      {runs.map((run) => (
        <li key={run.part}>
          <a href={`${props.base}calculators/${props.parts[run.part].id}/?${writeLink(parts[run.part] as AnyCalculator, run.inputs, run.got)}&${fromPlan}`}><strong>{props.parts[run.part].title}</strong></a>
        </li>
      ))}
    </ul>
  </details>
);

/** Of the line's two ends and what else may be, the run that the figure here is from. */
const nearest = ({ clearance, margin }: PieceWork): Run[] => (margin === null ? clearance.slice(0, 1) : clearance.filter(({ outcome }) => planOn(outcome, 'margin') === margin).slice(0, 1));

const Piece = ({ props, piece, number, count }: { props: PlanProps; piece: PieceWork; number: number; count: number }) => {
  const { answer } = props.words;
  return (
    <div class="piece">
      <h4>{count === 1 ? answer.one : fillIn(answer.piece, { number, count })}</h4>
      {!piece.fits && <p class="finding-word">{answer.nowhere}</p>}
      <Rows rows={[...pieceRows(props, piece), ...loadRows(props, piece)]} />
      {piece.order === null && <p>{answer.thin}</p>}
      <Ways props={props} runs={[piece.stance, piece.dropZone, ...(piece.order ? [piece.order] : []), ...(piece.load ? [piece.load] : []), ...nearest(piece)]} />
    </div>
  );
};

const One = ({ props, work, number }: { props: PlanProps; work: LimbWork; number: number }) => (
  <section class="each">
    <h3>{`${number} ${work.limb.name}`}</h3>
    <p>{fillIn(props.words.answer.turn, { clock: clockText(props, work.limb.bearings.worker) })}</p>
    <Rows rows={limbRows(props, work)} />
    {work.pieces.map((piece, i) => <Piece key={i} props={props} piece={piece} number={i + 1} count={work.pieces.length} />)}
    <Ways props={props} runs={[work.bar, work.weight]} />
  </section>
);

export const Each = ({ props, state }: { props: PlanProps; state: PlanState }) => {
  if (!state.good) return null;
  const { work } = state.good;
  return (
    <section class={state.current ? 'each-limb' : 'each-limb quiet'}>
      <h2>{props.words.parts.each}</h2>
      {!state.current && <p>{props.words.waits}</p>}
      <Rows rows={planRows(props, work, state.good.plan.facts.movement.value)} />
      {work.distance && <Ways props={props} runs={[work.distance]} />}
      <p><strong>{props.words.answer.real}</strong></p>
      <p class="soft">{`${props.words.answer.level} ${slackText(props)}`}</p>
      {work.limbs.map((one, i) => <One key={i} props={props} work={one} number={i + 1} />)}
    </section>
  );
};
