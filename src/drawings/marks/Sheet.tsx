/** The sheet a drawing stands on: its name and description for those who cannot see it, hatchings, marks, labels. */
import type { ComponentChildren } from 'preact';
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

const said = (label: Label, key: number) => {
  const { metric, imperial } = label.lines;
  return metric.join(' ') === imperial.join(' ')
    ? lines(label, metric, `${key}`)
    : [lines(label, metric, `${key} metric`, 'metric'), lines(label, imperial, `${key} imperial`, 'imperial')];
};

const Ring = ({ badge }: { badge: Badge }) => (
  <g class="mark-number">
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
  children?: ComponentChildren;
};

export const Sheet = ({ id, placed, words, quiet = false, children }: Props) => (
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
    <defs>
      {hatchesOf(placed.shapes).map((name) => (
        <Hatch key={name} name={name} id={`${id}-${name}`} />
      ))}
    </defs>
    {keyed(placed.shapes).map(([key, shape]) => mark(shape, key, id))}
    {placed.labels.map((label, i) => label.leader && <path key={i} class="mark-leader" d={label.leader} fill="none" stroke="currentColor" stroke-width="1" />)}
    {placed.badges.map((badge, i) => (
      <Ring key={i} badge={badge} />
    ))}
    <g font-size={textSize} fill="currentColor" stroke={paper} stroke-width="4" paint-order="stroke">
      {placed.labels.map(said)}
    </g>
    {children}
  </svg>
);
