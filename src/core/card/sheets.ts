/**
 * Cards on paper: one card a page, or as many as fit on A4 or Letter with cut marks, room between them for the sealed edge
 * of the laminate, and a ruler that shows whether the printer kept the size. Lengths in mm.
 */
import type { CardInputs } from './fields.ts';
import { moved, type Placed, rule } from './place.ts';
import type { Side } from './layout.ts';
import { least, paperSizes } from './shape.ts';
import { point, textWidth } from './type.ts';

/** A page, with what stands on it; `cards`: where each card lies. */
export type Page = { width: number; height: number; placed: Placed[]; cards: { x: number; y: number; width: number; height: number }[] };
export type SheetWords = { ruler: { metric: string; imperial: string }; front: string; back: string; fold: string; cut: string };

/** What printers leave bare, the ruler's strip at the bottom, and twice the laminate's edge between cards. */
const bare = 8;
const rulerStrip = 12;
const apart = 8;
const cutMark = 3.5;
const cutOff = 0.5;
const inch = 25.4;

/** Both sides of a folded card beside each other, and the line to fold on. */
const folded = ([front, back]: readonly Side[]): Side => {
  const [a, b] = [front as Side, back as Side];
  const x = a.width;
  // Ticks at the edges and a broken line between: to score, not to cut.
  return {
    width: 2 * x, height: a.height,
    placed: [...a.placed, ...b.placed.map((p) => moved(p, [x, 0])), rule([x, 0], [x, a.height], 0.15, 'fold', [1.5, 1.5])],
  };
};

const cutMarks = (x: number, y: number, { width, height }: Side): Placed[] =>
  [x, x + width].flatMap((cx, i) => [y, y + height].flatMap((cy, k) => {
    const [dx, dy] = [i === 0 ? -1 : 1, k === 0 ? -1 : 1];
    return [
      rule([cx + dx * cutOff, cy], [cx + dx * cutMark, cy], 0.1, 'cut'),
      rule([cx, cy + dy * cutOff], [cx, cy + dy * cutMark], 0.1, 'cut'),
    ];
  }));

const said = (text: string, x: number, y: number): Placed => ({ kind: 'type', x, y, text, size: least, strong: false, width: textWidth(text, least), of: 'sheet' });

/** A hundred millimetres, or four inches, ticked. */
const ruler = (x: number, y: number, imperial: boolean): { placed: Placed[]; length: number } => {
  const [step, count, long] = imperial ? [inch / 4, 16, 4] : [5, 20, 2];
  const length = step * count;
  const ticks = Array.from({ length: count + 1 }, (_, i) => rule([x + i * step, y], [x + i * step, y - (i % long === 0 ? 3 : 1.8)], 0.15, 'ruler'));
  return { placed: [rule([x, y], [x + length, y], 0.15, 'ruler'), ...ticks], length };
};

/** How many fit, each way round the paper is held; the upright one where it makes no odds. */
const grid = (card: Side, paper: readonly [number, number]) => {
  const count = (room: number, size: number): number => Math.floor((room - 2 * bare + apart) / (size + apart));
  const ways = [paper, [paper[1], paper[0]] as const].map(([width, height]) => ({
    width, height, across: count(width, card.width), down: count(height - rulerStrip, card.height),
  }));
  return ways.reduce((best, way) => (way.across * way.down > best.across * best.down ? way : best));
};

const sheetOf = (card: Side, paper: readonly [number, number], words: SheetWords, note: string, imperial: boolean): Page => {
  const { width, height, across, down } = grid(card, paper);
  // In the middle from side to side, so that the backs meet the fronts when the sheet is turned over sideways.
  const x0 = (width - across * card.width - (across - 1) * apart) / 2;
  const y0 = bare + (height - 2 * bare - rulerStrip - down * card.height - (down - 1) * apart) / 2;
  const cards = Array.from({ length: down }, (_, row) => Array.from({ length: across }, (_, column) => ({
    x: x0 + column * (card.width + apart), y: y0 + row * (card.height + apart), width: card.width, height: card.height,
  }))).flat();
  const scale = ruler(bare + 4, height - bare, imperial);
  const beside = bare + 4 + scale.length + 4;
  return {
    width, height, cards,
    placed: [
      ...cards.flatMap(({ x, y }) => [...card.placed.map((p) => moved(p, [x, y])), ...cutMarks(x, y, card)]),
      ...scale.placed,
      said(imperial ? words.ruler.imperial : words.ruler.metric, beside, height - bare - least * point * 1.2),
      said(note, beside, height - bare),
    ],
  };
};

/** @returns the pages to print, in their order */
export const pagesOf = (sides: readonly Side[], shape: Pick<CardInputs, 'sides' | 'paper'>, words: SheetWords, imperial: boolean): Page[] => {
  const cards = shape.sides === 'fold' ? [folded(sides)] : sides;
  if (shape.paper === 'card') return cards.map((card) => ({ ...card, cards: [{ x: 0, y: 0, width: card.width, height: card.height }] }));
  const paper = paperSizes[shape.paper];
  const note = (k: number): string => (shape.sides === 'fold' ? words.fold : shape.sides === 'one' ? words.cut : k === 0 ? words.front : words.back);
  return cards.map((card, k) => sheetOf(card, paper, words, note(k), imperial));
};
