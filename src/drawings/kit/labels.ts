/** Labels that overlap neither each other nor what must be seen, and stay in the box. */
import { segment } from './path.ts';
import type { Box, Label, Point, Rect } from './placed.ts';
import type { Said } from './say.ts';

export const textSize = 13;
const lineHeight = 16;

/** Width of a line in px, a little on the wide side: the reader's device brings its own type. */
export const textWidth = (text: string, strong = false): number => {
  let em = 0;
  for (const c of text) em += /[iljtfr.,:;'’|! ]/.test(c) ? 0.36 : /[mwMW%@]/.test(c) ? 0.95 : /[A-Z°→]/.test(c) ? 0.72 : 0.61;
  return em * textSize * (strong ? 1.06 : 1);
};

/** Broken between words so that no line has more than `most` characters, long words apart. */
export const wrap = (text: string, most: number): string[] => {
  const lines: string[] = [];
  for (const next of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + next.length < most) lines[lines.length - 1] = `${last} ${next}`;
    else lines.push(next);
  }
  return lines;
};

export type Place = 'above' | 'below' | 'left' | 'right' | 'above-left' | 'above-right' | 'below-left' | 'below-right' | 'on';
const sides: { readonly [K in Place]: Point } = {
  above: [0, -1], below: [0, 1], left: [-1, 0], right: [1, 0], on: [0, 0],
  'above-left': [-1, -1], 'above-right': [1, -1], 'below-left': [-1, 1], 'below-right': [1, 1],
};
const everySide: readonly Place[] = ['above', 'right', 'below', 'left', 'above-right', 'above-left', 'below-right', 'below-left'];

/** What is to be said where; `places` in order of liking; `wrap` in characters; `gap` px between point and text. */
export type Ask = { text: Said; at: Point; places?: readonly Place[]; wrap?: number; gap?: number; strong?: boolean; leader?: boolean };

const meet = (a: Rect, b: Rect, gap = 2): boolean =>
  a.x < b.x + b.width + gap && b.x < a.x + a.width + gap && a.y < b.y + b.height + gap && b.y < a.y + a.height + gap;
const inside = (r: Rect, box: Box): boolean => r.x >= 1 && r.y >= 1 && r.x + r.width <= box.width - 1 && r.y + r.height <= box.height - 1;

const beside = ([x, y]: Point, [dx, dy]: Point, width: number, height: number, gap: number): Rect => {
  const slant = dx !== 0 && dy !== 0 ? 0.75 : 1;
  return {
    x: x + dx * gap * slant - (dx === 0 ? width / 2 : dx < 0 ? width : 0),
    y: y + dy * gap * slant - (dy === 0 ? height / 2 : dy < 0 ? height : 0),
    width,
    height,
  };
};

/** The point of a rectangle nearest to another. */
const nearest = (r: Rect, [x, y]: Point): Point => [Math.min(Math.max(x, r.x), r.x + r.width), Math.min(Math.max(y, r.y), r.y + r.height)];
const shift = (r: Rect, box: Box): Rect => ({
  ...r,
  x: Math.min(Math.max(r.x, 1), box.width - 1 - r.width),
  y: Math.min(Math.max(r.y, 1), box.height - 1 - r.height),
});

function* candidates(ask: Ask, width: number, height: number, box: Box): Generator<Rect> {
  const gap = ask.gap ?? 6;
  const liked = ask.places ?? everySide;
  for (const side of liked) yield beside(ask.at, sides[side], width, height, gap);
  for (const side of liked) yield shift(beside(ask.at, sides[side], width, height, gap), box);
  for (let far = gap + 8; far < gap + 44; far += 6) for (const side of liked) yield shift(beside(ask.at, sides[side], width, height, far), box);
  for (let far = gap + 10; far < box.width + box.height; far += 12) {
    for (const side of [...liked, ...everySide]) {
      if (side !== 'on') yield shift(beside(ask.at, sides[side], width, height, far), box);
    }
  }
}

/** Small squares along a line, for what labels should keep off. */
export const along = (a: Point, b: Point, thick = 3): Rect[] => {
  const n = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / 8));
  return Array.from({ length: n + 1 }, (_, i) => ({
    x: a[0] + ((b[0] - a[0]) * i) / n - thick / 2,
    y: a[1] + ((b[1] - a[1]) * i) / n - thick / 2,
    width: thick,
    height: thick,
  }));
};

/** The first that is clear of all, else the first that is clear of other labels, else the first in the box. */
const firstFree = (all: Iterable<Rect>, box: Box, labels: readonly Label[], keepOff: readonly Rect[]): Rect => {
  let first: Rect | null = null;
  let second: Rect | null = null;
  for (const rect of all) {
    first ??= shift(rect, box);
    if (!inside(rect, box) || labels.some((l) => meet(rect, l.rect))) continue;
    if (!keepOff.some((k) => meet(rect, k, 0))) return rect;
    second ??= rect;
  }
  return (second ?? first)!;
};

/**
 * Places the labels in the order given, the first where it likes best. None is left out: one that finds no clear room
 * stands over a line rather than over another label.
 */
export const placeLabels = (asks: readonly Ask[], box: Box, keepOff: readonly Rect[] = []): Label[] => {
  const done: Label[] = [];
  for (const ask of asks) {
    const strong = ask.strong ?? false;
    const most = ask.wrap ?? 22;
    const lines = { metric: wrap(ask.text.metric, most), imperial: wrap(ask.text.imperial, most) };
    const width = Math.max(...[...lines.metric, ...lines.imperial].map((line) => textWidth(line, strong)));
    const height = Math.max(lines.metric.length, lines.imperial.length) * lineHeight;
    const rect = firstFree(candidates(ask, width, height, box), box, done, keepOff);
    const off = ask.at[0] < rect.x ? 'start' : ask.at[0] > rect.x + rect.width ? 'end' : 'middle';
    const end = nearest(rect, ask.at);
    const away = Math.hypot(end[0] - ask.at[0], end[1] - ask.at[1]);
    done.push({
      x: off === 'start' ? rect.x : off === 'end' ? rect.x + rect.width : rect.x + rect.width / 2,
      y: rect.y + 12,
      anchor: off,
      lines,
      rect,
      strong,
      leader: (ask.leader ?? true) && away > (ask.gap ?? 6) + 7 ? segment(end, ask.at) : null,
    });
  }
  return done;
};
