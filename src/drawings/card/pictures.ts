/** The drawings of the handbook as small pictures of a card: the same geometry, without figures, in black lines. */
import type { Picture, Stroke } from '#core/card/copy.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { geometry as cutOrder, type Inputs as CutOrder } from '../cut-order/geometry.ts';
import { geometry as finalCut, type Inputs as FinalCut } from '../final-cut/geometry.ts';
import { geometry as stance, type Inputs as Stance } from '../stance/geometry.ts';
import { around, circle } from '../kit/path.ts';
import type { Box, Placed, Rect, Shape } from '../kit/placed.ts';
import { word } from '../kit/say.ts';
import type { Look } from '../marks/looks.ts';
import { flattened, traces } from './flatten.ts';

/** A calculator's inputs and what it said of them. */
export type Worked<I> = { inputs: I; outcome: Outcome };
export type Labels = Readonly<Record<string, string>>;

/** mm a px. With words on it, such that the drawings' type, for which they are placed, comes out as a card's. */
const withWords = 0.244;
const without = 0.22;
const ring = 11;
/** From a base line to the middle of a figure, mm. */
const halfFigure = 1.1;
/** Free on every side, mm; and what a word is taken to cover of its line. */
const edge = 0.6;

type Wish = { scale: number; box: Box; /** Labels to keep, by what they say. */ keep: readonly string[]; leave: readonly Look[]; /** px left out at the bottom. */ crop?: number; /** A label that stands clear of the stem, to its left. */ clear?: string };

/** As small as what stands on it, no wider than its box. */
const cropped = ({ strokes, texts }: Pick<Picture, 'strokes' | 'texts'>, covered: readonly Rect[]): Picture => {
  const all = [...strokes.flatMap(({ points, weight }) => around(points, weight / 2)), ...covered];
  const left = Math.min(...all.map((r) => r.x)) - edge;
  const top = Math.min(...all.map((r) => r.y)) - edge;
  return {
    width: Math.max(...all.map((r) => r.x + r.width)) + edge - left,
    height: Math.max(...all.map((r) => r.y + r.height)) + edge - top,
    strokes: strokes.map((s) => ({ ...s, points: s.points.map(([x, y]) => [x - left, y - top]) })),
    texts: texts.map(({ at: [x, y], text }) => ({ at: [x - left, y - top], text })),
  };
};

const picture = (placed: Omit<Placed<unknown>, 'handles'>, { scale, box, keep, leave, crop = 0, clear }: Wish): Picture => {
  const bottom = box.height - crop;
  const shown = (shape: Shape): boolean => !leave.includes(shape.mark) && (crop === 0 || traces(shape.d).some(({ points }) => points.some(([, y]) => y < bottom)));
  const rings = placed.badges.map(({ x, y }): Stroke => ({ points: traces(circle([x, y], ring))[0]!.points.map(([px, py]) => [px * scale, py * scale]), closed: true, weight: 0.3, fill: 'paper', dash: null }));
  const numbers = placed.badges.map(({ x, y, text }) => ({ at: [x * scale, y * scale + halfFigure] as const, text }));
  const stemLeft = Math.min(...placed.shapes.filter(({ mark }) => mark === 'stem').flatMap(({ d }) => traces(d).flatMap(({ points }) => points.map(([x]) => x))));
  const kept = placed.labels.filter(({ lines }) => keep.includes(lines.metric.join(' ')))
    .map((label) => (label.lines.metric.join(' ') === clear ? { ...label, leader: null, rect: { ...label.rect, x: stemLeft - label.rect.width - 2 } } : label));
  const leaders: Shape[] = kept.flatMap(({ leader }) => (leader === null ? [] : [{ mark: 'dim', d: leader }]));
  const words = kept.flatMap(({ lines, rect }) => lines.metric.map((text, i) => ({ at: [(rect.x + rect.width / 2) * scale, (rect.y + 13 + i * 16) * scale] as const, text })));
  const strokes = [...flattened([...placed.shapes.filter(shown), ...leaders], scale), ...rings];
  return cropped({ strokes, texts: [...numbers, ...words] }, kept.map(({ rect }) => ({ x: rect.x * scale, y: rect.y * scale, width: rect.width * scale, height: rect.height * scale })));
};

const said = (labels: Labels, ...names: readonly string[]): string[] => names.map((name) => word(labels, name));

export const cutPicture = ({ inputs, outcome }: Worked<CutOrder>, labels: Labels): Picture => {
  const box = { width: 145, height: 122 };
  return picture(cutOrder(inputs, outcome, { face: 'side', labels }, box), { box, scale: without, keep: [], leave: ['bark', 'pulled'], crop: 20 });
};

export const lastCutPicture = ({ inputs, outcome }: Worked<FinalCut>, labels: Labels): Picture => {
  const box = { width: 192, height: 112 };
  return picture(finalCut(inputs, outcome, { face: 'side', labels }, box), { box, scale: withWords, keep: said(labels, 'ridge', 'collar'), clear: word(labels, 'ridge'), leave: ['othercut', 'guide', 'dim', 'bark'] });
};

export const planPicture = ({ inputs, outcome }: Worked<Stance>, labels: Labels): Picture => {
  const box = { width: 192, height: 112 };
  return picture(stance(inputs, outcome, { face: 'plan', labels }, box), { box, scale: withWords, keep: said(labels, 'stem', 'limb'), leave: ['guide', 'dim', 'room', 'landing'] });
};
