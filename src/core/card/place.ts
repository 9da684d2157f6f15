/** Sets words in lines of a given width, and draws boxes and codes: all in mm, from the top left, y downwards. */
import type { Point, Run, Stroke, Words } from './copy.ts';
import { hangs, point, rises, textWidth } from './type.ts';

/** A run of type on its base line. `of`: the block it belongs to. */
export type Type = { kind: 'type'; x: number; y: number; text: string; size: number; strong: boolean; width: number; of: string };
export type Line = { kind: 'stroke'; of: string } & Stroke;
export type Placed = Type | Line;
export type Sizes = { readonly word: number; readonly figure: number; readonly mark: number; readonly foot: number };
export type Rect = { x: number; y: number; width: number; height: number };

const leading = 1.2;
const sizeOf = (run: Run, sizes: Sizes): number => (run.as === 'figure' ? sizes.figure : run.as === 'mark' ? sizes.mark : sizes.word);
const isStrong = (run: Run): boolean => run.as === 'strong' || run.as === 'figure';

/** What a run of type covers. */
export const rectOf = (t: Type): Rect => ({ x: t.x, y: t.y - t.size * point * rises, width: t.width, height: t.size * point * (rises + hangs) });

type Piece = { text: string; size: number; strong: boolean; width: number; space: number };
/** Words between spaces, each with the space before it; a mark hangs on what it marks. */
const pieces = (words: Words, sizes: Sizes): Piece[] => {
  const found: Piece[] = [];
  let apart = false;
  for (const run of words) {
    const [size, strong] = [sizeOf(run, sizes), isStrong(run)];
    run.text.split(' ').forEach((text, i) => {
      if (i > 0) apart = true;
      if (text === '') return;
      found.push({ text, size, strong, width: textWidth(text, size, strong), space: apart ? textWidth(' ', size, strong) : 0 });
      apart = false;
    });
  }
  return found;
};

/** What cannot be broken: a word with the marks and stops that touch it. */
const groups = (all: readonly Piece[]): Piece[][] => {
  const found: Piece[][] = [];
  for (const piece of all) {
    const last = found.at(-1);
    if (last && piece.space === 0) last.push(piece);
    else found.push([piece]);
  }
  return found;
};
const wide = (group: readonly Piece[]): number => group.reduce((sum, { width }) => sum + width, 0);

/** @returns the type, from a top at 0, and the height it takes; null where a word is wider than the room. */
export const setWords = (words: Words, width: number, sizes: Sizes, of: string): { type: Type[]; height: number } | null => {
  const lines: Piece[][][] = [];
  let used = 0;
  for (const group of groups(pieces(words, sizes))) {
    if (wide(group) > width) return null;
    const space = (group[0] as Piece).space;
    const last = lines.at(-1);
    if (last && used + space + wide(group) <= width) {
      last.push(group);
      used += space + wide(group);
    } else {
      lines.push([group]);
      used = wide(group);
    }
  }
  const type: Type[] = [];
  let top = 0;
  for (const line of lines) {
    const largest = Math.max(...line.flat().map(({ size }) => size));
    const y = top + largest * point * (rises + (leading - rises - hangs) / 2);
    let x = 0;
    line.forEach((group, i) => group.forEach((piece, k) => {
      const before = type.at(-1);
      const space = i > 0 && k === 0 ? piece.space : 0;
      // One run of type for what stands alike on one line.
      if (before && before.y === y && before.size === piece.size && before.strong === piece.strong && Math.abs(before.x + before.width - x) < 1e-6) {
        before.text += space > 0 ? ` ${piece.text}` : piece.text;
        before.width += space + piece.width;
      } else type.push({ kind: 'type', x: x + space, y, text: piece.text, size: piece.size, strong: piece.strong, width: piece.width, of });
      x += space + piece.width;
    }));
    top += largest * point * leading;
  }
  return { type, height: top };
};

/** The width that words take in one line. */
export const lineWidth = (words: Words, sizes: Sizes): number => pieces(words, sizes).reduce((sum, { width, space }, i) => sum + width + (i === 0 ? 0 : space), 0);

export const moved = <P extends Placed>(placed: P, [dx, dy]: Point): P =>
  placed.kind === 'type'
    ? { ...placed, x: placed.x + dx, y: placed.y + dy }
    : { ...placed, points: placed.points.map(([x, y]): Point => [x + dx, y + dy]) };

export const rule = (from: Point, to: Point, weight: number, of: string, dash: Stroke['dash'] = null): Line =>
  ({ kind: 'stroke', points: [from, to], closed: false, weight, fill: 'none', dash, of });

export const circleAt = ([x, y]: Point, radius: number): Point[] =>
  Array.from({ length: 48 }, (_, i): Point => [x + radius * Math.cos((i * Math.PI) / 24), y + radius * Math.sin((i * Math.PI) / 24)]);

/** Modules as strips, a run of dark ones in a row at a time. */
export const codeAt = (code: readonly (readonly boolean[])[], [x0, y0]: Point, module: number, of: string): Line[] =>
  code.flatMap((row, y) => [...row.map((dark) => (dark ? '1' : '0')).join('').matchAll(/1+/g)].map(({ 0: run, index }): Line => {
    const [left, right, top, bottom] = [x0 + index * module, x0 + (index + run.length) * module, y0 + y * module, y0 + (y + 1) * module];
    return { kind: 'stroke', points: [[left, top], [right, top], [right, bottom], [left, bottom]], closed: true, weight: 0, fill: 'ink', dash: null, of };
  }));
