/** The sheet a drawing stands on: its name and description for those who cannot see it, hatchings, marks, labels. */
import type { ComponentChildren, VNode } from 'preact';
import { useRef } from 'preact/hooks';
import type { UnitSystem } from '#core/kit/units.ts';
import type { Badge, DrawingWords, Label, Placed, Shape } from '../kit/placed.ts';
import { textSize } from '../kit/labels.ts';
import { Hatch } from './Hatch.tsx';
import { lookOf, type Fill, type Hatch as HatchName } from './looks.ts';

const paper = 'var(--paper, Canvas)';
const plain = (fill: Fill) => fill === 'none' || fill === 'ink' || fill === 'paper';
const hatchesOf = (shapes: readonly Shape[]) =>
  [...new Set(shapes.map((s) => lookOf(s.mark).fill).filter((fill): fill is HatchName => fill !== undefined && !plain(fill)))];

/** Each by its mark and which of them it is, so that one that comes or goes leaves the others as they are. */
const keyed = (shapes: readonly Shape[]): [string, Shape][] => {
  const met: { [mark: string]: number } = {};
  return shapes.map((shape) => [`${shape.mark} ${(met[shape.mark] = (met[shape.mark] ?? 0) + 1)}`, shape]);
};

/** Draws again only what is drawn from something else than before: a drag moves a part of the sheet, sixty times a second. */
const useSame = () => {
  const before = useRef(new Map<string, { from: string; drawn: VNode }>());
  return (key: string, from: string, draw: () => VNode): VNode => {
    const last = before.current.get(key);
    if (last?.from === from) return last.drawn;
    const drawn = draw();
    before.current.set(key, { from, drawn });
    return drawn;
  };
};

const mark = (shape: Shape, key: string, id: string) => {
  const { weight, fill = 'none', dash, of = shape.mark, stroke } = lookOf(shape.mark);
  return (
    <path
      key={key}
      class={`mark-${of}`}
      d={shape.d}
      fill={fill === 'none' ? 'none' : fill === 'ink' ? 'currentColor' : fill === 'paper' ? paper : `url(#${id}-${fill})`}
      stroke={weight === 0 ? 'none' : stroke ? paper : 'currentColor'}
      stroke-width={weight === 0 ? undefined : weight}
      stroke-dasharray={dash}
      stroke-linecap={dash ? 'butt' : undefined}
    />
  );
};

const lines = (label: Label, said: readonly string[], key: string, system?: string) => (
  <text
    key={key}
    class={system ? `mark-label ${system}` : 'mark-label'}
    x={label.x.toFixed(1)}
    y={label.y.toFixed(1)}
    text-anchor={label.anchor}
    font-weight={label.strong ? 700 : undefined}
  >
    {said.length === 1
      ? said[0]
      : said.map((line, i) => (
          <tspan key={i} x={label.x.toFixed(1)} dy={i === 0 ? 0 : 16}>
            {line}
          </tspan>
        ))}
  </text>
);

/** A label in each unit system, or in the one alone that is shown. */
const said = (label: Label, key: number, only: UnitSystem | undefined): { key: string; said: readonly string[]; system?: UnitSystem }[] => {
  const { metric, imperial } = label.lines;
  if (metric.join(' ') === imperial.join(' ')) return [{ key: `${key}`, said: metric }];
  return (['metric', 'imperial'] as const).filter((system) => !only || system === only).map((system) => ({ key: `${key} ${system}`, said: label.lines[system], system }));
};

const ring = (badge: Badge, key: string) => (
  <g key={key} class="mark-number">
    <circle cx={badge.x.toFixed(1)} cy={badge.y.toFixed(1)} r="11" fill={paper} stroke="currentColor" stroke-width="2" />
    <text x={badge.x.toFixed(1)} y={(badge.y + 5).toFixed(1)} text-anchor="middle" font-size="15" font-weight="700" fill="currentColor">
      {badge.text}
    </text>
  </g>
);

type Props = {
  /** Unique on the page. */
  id: string;
  // A drawing without handles is a Placed<never>.
  placed: Pick<Placed<unknown>, 'box' | 'shapes' | 'labels' | 'badges'>;
  words: DrawingWords;
  /** The last good state of a drawing whose figures have a problem now. */
  quiet?: boolean;
  /** While a handle is dragged the labels are drawn in the units shown alone. */
  only?: UnitSystem | undefined;
  children?: ComponentChildren;
};

export const Sheet = ({ id, placed, words, quiet = false, only, children }: Props) => {
  const same = useSame();
  const hatches = hatchesOf(placed.shapes);
  return (
    <svg
      class={quiet ? 'drawing-sheet quiet' : 'drawing-sheet'}
      viewBox={`0 0 ${placed.box.width} ${placed.box.height}`}
      width={placed.box.width}
      height={placed.box.height}
      role={children ? 'group' : 'img'}
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-about`}
      stroke-linejoin="round"
      stroke-linecap="round"
      opacity={quiet ? 0.4 : undefined}
    >
      <title id={`${id}-title`}>{words.title}</title>
      <desc id={`${id}-about`}>{words.description}</desc>
      {same('hatches', hatches.join(), () => <defs>{hatches.map((name) => <Hatch key={name} name={name} id={`${id}-${name}`} />)}</defs>)}
      {keyed(placed.shapes).map(([key, shape]) => same(key, shape.d, () => mark(shape, key, id)))}
      {placed.labels.map((label, i) => label.leader && <path key={i} class="mark-leader" d={label.leader} fill="none" stroke="currentColor" stroke-width="1" />)}
      {placed.badges.map((badge, i) => same(`ring ${i}`, `${badge.x} ${badge.y} ${badge.text}`, () => ring(badge, `${i}`)))}
      <g font-size={textSize} fill="currentColor" stroke={paper} stroke-width="4" paint-order="stroke">
        {placed.labels.map((label, i) =>
          said(label, i, only).map((one) =>
            same(`label ${one.key}`, [label.x, label.y, label.anchor, label.strong, ...one.said].join('\n'), () => lines(label, one.said, one.key, one.system))))}
      </g>
      {children}
    </svg>
  );
};
