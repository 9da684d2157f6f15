/** A limb or stem: tapering, with bark, its ends cut, rounded or running on past what is drawn. */
import type { Point, Shape } from '../kit/placed.ts';
import { pen, segment } from '../kit/path.ts';
import { add, apart, between, leftOf, less, times, unit } from '../kit/vector.ts';
import type { Look } from './looks.ts';

/** `on`: runs on (a torn wave); `cut`: a straight end; `butt`: left open, where it joins something else. */
export type End = 'on' | 'cut' | 'butt' | 'point';
export type Limb = { from: Point; to: Point; fromWidth: number; toWidth: number; start?: End; end?: End; bow?: number; /** Without bark: something else is drawn on it. */ bare?: boolean };

/** A point along the limb (0 to 1) and across it (−1 to 1 from edge to edge, the left edge is 1). */
export const onLimb = (l: Limb, t: number, across = 0): Point => {
  const axis = unit(less(l.to, l.from));
  const width = l.fromWidth + (l.toWidth - l.fromWidth) * t;
  const sag = (l.bow ?? 0) * 4 * t * (1 - t);
  return add(add(between(l.from, l.to, t), times(leftOf(axis), (across * width) / 2)), times(leftOf(axis), sag));
};

const edge = (path: ReturnType<typeof pen>, l: Limb, side: 1 | -1, backwards: boolean) => {
  const [a, b] = backwards ? [1, 0] : [0, 1];
  const mid = onLimb(l, 0.5, side);
  const control = less(times(mid, 2), times(add(onLimb(l, a, side), onLimb(l, b, side)), 0.5));
  path.quadraticCurveTo(...control, ...onLimb(l, b, side));
};

const closeEnd = (path: ReturnType<typeof pen>, l: Limb, t: 0 | 1, from: 1 | -1, end: End) => {
  const to = onLimb(l, t, -from);
  const width = t === 0 ? l.fromWidth : l.toWidth;
  const out = times(unit(less(l.to, l.from)), (t === 0 ? -1 : 1) * Math.min(width * 0.22, 9));
  if (end === 'on') {
    const start = onLimb(l, t, from);
    path.bezierCurveTo(...add(between(start, to, 0.3), times(out, 1.6)), ...add(between(start, to, 0.6), times(out, -1.6)), ...to);
  } else if (end === 'butt') path.moveTo(...to);
  else path.lineTo(...to);
};

/** Bark: short strokes along the limb, always the same ones for the same limb. */
const bark = (l: Limb): string => {
  const length = apart(l.from, l.to);
  const strokes: string[] = [];
  for (let i = 0; i < Math.floor(length / 26); i += 1) {
    const t = (i + 0.5 + 0.3 * Math.sin(i * 2.4)) / Math.floor(length / 26);
    const across = 0.62 * Math.sin(i * 4.1 + 1);
    const half = 5 / length;
    if (t - half > 0.02 && t + half < 0.98) strokes.push(segment(onLimb(l, t - half, across), onLimb(l, t + half, across)));
  }
  return strokes.join('');
};

export const limb = (l: Limb, mark: Look = 'limb'): Shape[] => {
  const path = pen();
  path.moveTo(...onLimb(l, 0, 1));
  edge(path, l, 1, false);
  closeEnd(path, l, 1, 1, l.end ?? 'on');
  edge(path, l, -1, true);
  closeEnd(path, l, 0, -1, l.start ?? 'on');
  const strokes = l.bare ? '' : bark(l);
  return [{ mark, d: path.toString() }, ...(strokes ? [{ mark: 'bark' as const, d: strokes }] : [])];
};

/** Wood seen end on: its rings. */
export const section = (centre: Point, radius: number, rings = 2): string => {
  const path = pen();
  for (let i = 1; i <= rings; i += 1) {
    const r = (radius * i) / (rings + 1);
    path.moveTo(centre[0] + r, centre[1]);
    path.arc(centre[0], centre[1], r, 0, 2 * Math.PI);
  }
  return path.toString();
};
