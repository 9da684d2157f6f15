/**
 * Lays a card out: each block as high as it needs, put where there is room, the foot at the end of the last side. What
 * does not fit is said, by its block: nothing is cut off, and no type is made smaller.
 */
import type { Block, Foot, Part, Point } from './copy.ts';
import { cardSizes, type CardShape, columnsOf, hole, marginOf, typeSizes } from './shape.ts';
import { circleAt, codeAt, lineWidth, type Line, moved, type Placed, rule, setWords, type Sizes } from './place.ts';
import { textWidth } from './type.ts';

export type Side = { width: number; height: number; placed: Placed[] };
/** `over`: the blocks that found no room; `foot`: whether even the foot did not. */
export type CardLayout = { sides: Side[]; over: string[]; footOver: boolean };
type Set = { placed: Placed[]; height: number };

const gap = 1.2;
const between = 2.4;
const columnGap = 4;
/** A module of the code, mm: what a phone still reads off a laminated card. */
const module = 0.33;
const quiet = 4;

const stacked = (sets: readonly (Set | null)[], space: number): Set | null => {
  if (sets.includes(null)) return null;
  const placed: Placed[] = [];
  let y = 0;
  for (const set of sets as Set[]) {
    if (y > 0) y += space;
    placed.push(...set.placed.map((p) => moved(p, [0, y])));
    y += set.height;
  }
  return { placed, height: y };
};

const text = (words: Parameters<typeof setWords>[0], width: number, sizes: Sizes, of: string): Set | null => {
  const set = setWords(words, width, sizes, of);
  return set && { placed: set.type, height: set.height };
};

const numbered = (part: Extract<Part, { kind: 'text' }>, width: number, sizes: Sizes, of: string): Set | null => {
  if (part.number === undefined) return text(part.words, width, sizes, of);
  const room = textWidth(`${part.number}\u00a0`, sizes.word, true) + 0.6;
  const number = text([{ text: part.number, as: 'strong' }], width, sizes, of);
  const set = text(part.words, width - room, sizes, of);
  if (!number || !set) return null;
  // The number stands on the base line of the first line, which a figure may have lowered.
  const [n, first] = [number.placed[0], set.placed[0]] as [Placed & { y: number }, Placed & { y: number }];
  return { placed: [{ ...n, y: first.y } as Placed, ...set.placed.map((p) => moved(p, [room, 0]))], height: Math.max(set.height, number.height) };
};

/** Columns as wide as what stands in them; the heads share what is left, and break where they must. */
const table = ({ head, rows }: Extract<Part, { kind: 'table' }>, width: number, sizes: Sizes, of: string): Set | null => {
  const space = 2.5;
  const natural = head.map((_, k) => Math.max(...rows.map((row) => lineWidth(row[k] as Block['title'], sizes))));
  const left = width - natural.reduce((sum, w) => sum + w, 0) - space * (head.length - 1);
  if (left < 0) return null;
  const widths = natural.map((w) => w + left / head.length);
  const starts = widths.map((_, k) => widths.slice(0, k).reduce((sum, w) => sum + w + space, 0));
  const line = (cells: readonly Block['title'][]): Set | null => {
    const sets = cells.map((cell, k) => text(cell, widths[k] as number, sizes, of));
    if (sets.includes(null)) return null;
    const all = sets as Set[];
    // One base line for the whole row.
    const base = Math.max(...all.flatMap(({ placed }) => (placed[0] as Placed & { y: number }).y));
    return {
      placed: all.flatMap(({ placed }, k) => placed.map((p) => moved(p, [starts[k] as number, base - (placed[0] as Placed & { y: number }).y]))),
      height: Math.max(...all.map(({ height, placed }) => height + base - (placed[0] as Placed & { y: number }).y)),
    };
  };
  const under: Set = { placed: [rule([0, 0], [width, 0], 0.15, of)], height: 0.4 };
  return stacked([line(head), under, ...rows.map(line)], 0);
};

const pictures = ({ each }: Extract<Part, { kind: 'pictures' }>, width: number, sizes: Sizes, of: string): Set | null => {
  const one = ({ picture, words }: (typeof each)[number], room: number): Set | null => {
    if (picture.width > room) return null;
    const x = (room - picture.width) / 2;
    const type = picture.texts.map(({ at, text: said }): Placed => {
      const wide = textWidth(said, sizes.word);
      return { kind: 'type', x: x + at[0] - wide / 2, y: at[1], text: said, size: sizes.word, strong: false, width: wide, of };
    });
    const strokes = picture.strokes.map((stroke): Line => moved({ kind: 'stroke', of, ...stroke }, [x, 0]));
    return stacked([{ placed: [...strokes, ...type], height: picture.height }, text(words, room, sizes, of)], gap / 2);
  };
  const room = (width - 2 * (each.length - 1)) / each.length;
  const beside = each.map((e) => one(e, room));
  if (beside.includes(null)) return stacked(each.map((e) => one(e, width)), gap);
  const sets = beside as Set[];
  return { placed: sets.flatMap(({ placed }, k) => placed.map((p) => moved(p, [k * (room + 2), 0]))), height: Math.max(...sets.map(({ height }) => height)) };
};

const writeLine = ({ words }: Extract<Part, { kind: 'write' }>, width: number, sizes: Sizes, of: string): Set | null => {
  const height = 7;
  const start = lineWidth(words, sizes) + 1;
  const set = text(words, width, sizes, of);
  if (!set || start > width - 15) return null;
  const y = height - 1.6;
  return { placed: [...set.placed.map((p) => moved(p, [0, y - (set.placed[0] as Placed & { y: number }).y])), rule([start, y + 0.5], [width, y + 0.5], 0.2, of)], height };
};

const partSet = (part: Part, width: number, sizes: Sizes, of: string): Set | null => {
  switch (part.kind) {
    case 'text': return numbered(part, width, sizes, of);
    case 'table': return table(part, width, sizes, of);
    case 'pictures': return pictures(part, width, sizes, of);
    case 'write': return writeLine(part, width, sizes, of);
  }
};

const blockSet = (block: Block, width: number, sizes: Sizes): Set | null => {
  const bar: Set = { placed: [rule([0, 0.2], [width, 0.2], 0.4, block.id)], height: 0.6 };
  return stacked([stacked([bar, text(block.title, width, sizes, block.id)], 0.2), ...block.parts.map((part) => partSet(part, width, sizes, block.id))], gap / 2);
};

const footSet = (foot: Foot, width: number, sizes: Sizes): Set | null => {
  const small = { ...sizes, word: sizes.foot, figure: sizes.foot };
  const code = (foot.code.length + 2 * quiet) * module;
  // The quiet zone beside the words and under the rule; the edge of the card lets go of the rest.
  const room = width - code;
  const lines = stacked(foot.lines.map((words) => text(words, room, small, 'foot')), 0.3);
  if (!lines) return null;
  const top = 0.8;
  const height = Math.max(lines.height, code) + top;
  return {
    placed: [rule([0, 0.2], [width, 0.2], 0.2, 'foot'), ...lines.placed.map((p) => moved(p, [0, top])), ...codeAt(foot.code, [room + quiet * module, top + quiet * module], module, 'foot')],
    height,
  };
};

type Column = { side: Side; x: number; y: number; bottom: number };
type Made = { id: string; set: Set };
/** Each block into the first column that has room for it; those without are left out. */
const put = (blocks: readonly Made[], free: Column[]): { id: string; side: Side; placed: Placed[] }[] =>
  blocks.flatMap(({ id, set }) => {
    const column = free.find(({ y, bottom }) => y + set.height <= bottom + 1e-9);
    if (!column) return [];
    const placed = set.placed.map((p) => moved(p, [column.x, column.y]));
    column.y += set.height + between;
    return [{ id, side: column.side, placed }];
  });

/** @returns the sides, as many as the shape has, and what found no room */
export const layOut = (shape: CardShape, blocks: readonly Block[], foot: Foot): CardLayout => {
  const [width, height] = cardSizes[shape.size];
  const sizes = typeSizes[shape.type];
  const margin = marginOf(shape.size);
  const columns = columnsOf(shape.size);
  const top = shape.hole === 'punched' ? hole.strip : margin;
  const inner = width - 2 * margin;
  const columnWidth = (inner - columnGap * (columns - 1)) / columns;
  const sides: Side[] = Array.from({ length: shape.sides === 'one' ? 1 : 2 }, () => ({ width, height, placed: [] }));
  const last = sides.at(-1) as Side;

  const set = footSet(foot, inner, sizes);
  const footOver = set === null || set.height > height - top - margin;
  const footTop = footOver ? height - margin : height - margin - set.height;
  if (!footOver) last.placed.push(...set.placed.map((p) => moved(p, [margin, footTop])));

  const columnsFree = (): Column[] => sides.flatMap((side) => Array.from({ length: columns }, (_, k) => ({ side, x: margin + k * (columnWidth + columnGap), y: top, bottom: side === last ? footTop - (footOver ? 0 : between) : height - margin })));
  const narrow = blocks.map((block) => ({ id: block.id, set: blockSet(block, columnWidth, sizes) })).filter((made): made is Made => made.set !== null);
  // In the order given where that will do; the high ones first where that finds room for more.
  const ways = [narrow, narrow.toSorted((a, b) => b.set.height - a.set.height)].map((order) => put(order, columnsFree()));
  const best = ways.reduce((most, next) => (next.length > most.length ? next : most));
  for (const { side, placed } of best) side.placed.push(...placed);
  const over = blocks.map(({ id }) => id).filter((id) => !best.some((done) => done.id === id));
  if (shape.hole === 'punched') {
    const centre: Point = [width / 2, hole.centre];
    for (const side of sides) side.placed.push({ kind: 'stroke', points: circleAt(centre, hole.radius), closed: true, weight: 0.15, fill: 'none', dash: [0.8, 0.8], of: 'hole' });
  }
  return { sides, over, footOver };
};
