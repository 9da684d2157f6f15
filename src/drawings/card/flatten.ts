/**
 * A drawing's shapes as strokes of a card: straight lines in mm, so that screen, paper, file and picture are drawn from the
 * same points. Curves become lines no longer than an eye can tell; hatchings become lines too.
 */
import type { Stroke } from '#core/card/copy.ts';
import type { Point, Shape } from '../kit/placed.ts';
import { lookOf } from '../marks/looks.ts';

type Trace = { points: Point[]; closed: boolean };

/** Pieces a curve is cut into. */
const pieces = 12;
const even = Array.from({ length: pieces }, (_, i) => (i + 1) / pieces);

const arcTo = ([x0, y0]: Point, radius: number, large: boolean, sweep: boolean, [x1, y1]: Point): Point[] => {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const chord = Math.hypot(dx, dy);
  if (chord === 0) return [];
  const r = Math.max(radius, chord / 2);
  const off = Math.sqrt(Math.max(0, r * r - (chord * chord) / 4)) * (large === sweep ? -1 : 1);
  const [cx, cy] = [(x0 + x1) / 2 - (dy / chord) * off, (y0 + y1) / 2 + (dx / chord) * off];
  const start = Math.atan2(y0 - cy, x0 - cx);
  let turn = Math.atan2(y1 - cy, x1 - cx) - start;
  if (sweep && turn < 0) turn += 2 * Math.PI;
  if (!sweep && turn > 0) turn -= 2 * Math.PI;
  return even.map((t): Point => [cx + r * Math.cos(start + turn * t), cy + r * Math.sin(start + turn * t)]);
};

/** Reads a path of d3's and of the marks' own: M, L, H, V, Q, C, A, Z, each absolute. Throws for another. */
export const traces = (d: string): Trace[] => {
  const found: Trace[] = [];
  let at: Point = [0, 0];
  const now = (): Trace => {
    const last = found.at(-1);
    if (last && !last.closed) return last;
    const next = { points: [at], closed: false };
    found.push(next);
    return next;
  };
  for (const [, letter, rest] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const n = (rest?.match(/-?\d*\.?\d+(?:e-?\d+)?/g) ?? []).map(Number) as number[];
    const to = (x: number, y: number): void => {
      at = [x, y];
      now().points.push(at);
    };
    const [a = 0, b = 0, c = 0, e = 0, f = 0, g = 0, h = 0] = n;
    const [x, y] = at;
    if (letter === 'M') {
      at = [a, b];
      found.push({ points: [at], closed: false });
      for (let i = 2; i + 1 < n.length; i += 2) to(n[i]!, n[i + 1]!);
    } else if (letter === 'L') for (let i = 0; i + 1 < n.length; i += 2) to(n[i]!, n[i + 1]!);
    else if (letter === 'H') to(a, y);
    else if (letter === 'V') to(x, a);
    else if (letter === 'Q') for (const t of even) to((1 - t) ** 2 * x + 2 * t * (1 - t) * a + t * t * c, (1 - t) ** 2 * y + 2 * t * (1 - t) * b + t * t * e);
    else if (letter === 'C') {
      for (const t of even) {
        const [p, q, r, s] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
        to(p * x + q * a + r * c + s * f, p * y + q * b + r * e + s * g);
      }
    } else if (letter === 'A') for (const p of arcTo(at, a, e === 1, f === 1, [g, h])) to(...p);
    else if (letter === 'Z') {
      const last = now();
      last.closed = true;
      at = last.points[0]!;
    } else throw new Error(`a path of a drawing has "${letter}" in it`);
  }
  return found.filter(({ points }) => points.length > 1);
};

/** Lines across an area, `every` apart, along the way (dx, dy) of length one: even-odd. */
const hatched = (areas: readonly Trace[], every: number, [dx, dy]: Point): [Point, Point][] => {
  const edges = areas.flatMap(({ points }) => points.map((p, i) => [p, points[(i + 1) % points.length]!] as const));
  // `off`: across the lines; `along`: along them.
  const off = ([x, y]: Point): number => x * dy - y * dx;
  const along = ([x, y]: Point): number => x * dx + y * dy;
  const offs = edges.map(([p]) => off(p));
  const found: [Point, Point][] = [];
  for (let k = Math.ceil(Math.min(...offs) / every); k * every < Math.max(...offs); k += 1) {
    const at = k * every;
    const cuts = edges.flatMap(([p, q]) => {
      const [a, b] = [off(p), off(q)];
      return a <= at === b <= at ? [] : [along(p) + ((at - a) / (b - a)) * (along(q) - along(p))];
    }).sort((a, b) => a - b);
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      const end = (t: number): Point => [t * dx + at * dy, t * dy - at * dx];
      found.push([end(cuts[i]!), end(cuts[i + 1]!)]);
    }
  }
  return found;
};

const slant = Math.SQRT1_2;
/** Spacing in px, and the ways its lines run. */
const hatchings: { readonly [name: string]: { every: number; ways: readonly Point[] } } = {
  squeezed: { every: 6, ways: [[slant, slant], [slant, -slant]] },
  pulled: { every: 5, ways: [[0, 1]] },
  landing: { every: 8, ways: [[slant, slant]] },
  piece: { every: 9, ways: [[slant, -slant]] },
  steep: { every: 7, ways: [[1, 0]] },
  uncut: { every: 4, ways: [[1, 0]] },
  liquid: { every: 5, ways: [[1, 0]] },
};
/** mm: thinner lines are lost in a laminate. */
const thinnest = 0.15;

/** @param scale mm a px */
export const flattened = (shapes: readonly Shape[], scale: number): Stroke[] =>
  shapes.flatMap(({ mark, d }): Stroke[] => {
    const { weight, fill = 'none', dash, stroke } = lookOf(mark);
    const areas = traces(d);
    const mm = (points: readonly Point[]): Point[] => points.map(([x, y]) => [x * scale, y * scale]);
    const [on = 0, off = on] = (dash ?? '').split(' ').filter(Boolean).map((n) => Number(n) * scale);
    // Paper round a line, to part it from what it crosses: at this size it would swallow what lies under it.
    if (stroke) return [];
    const hatching = hatchings[fill];
    const line = weight === 0 ? 0 : Math.max(weight * scale, thinnest);
    return [
      ...(hatching ? areas.map(({ points }): Stroke => ({ points: mm(points), closed: true, weight: 0, fill: fill === 'piece' ? 'paper' : 'none', dash: null })).filter((s) => s.fill !== 'none') : []),
      ...(hatching ? hatching.ways.flatMap((way) => hatched(areas, hatching.every, way)).map((ends): Stroke => ({ points: mm(ends), closed: false, weight: thinnest, fill: 'none', dash: null })) : []),
      ...areas.map(({ points, closed }): Stroke => ({
        points: mm(points), closed, weight: line, fill: fill === 'ink' || fill === 'paper' ? fill : 'none', dash: on > 0 ? [on, off] : null,
      })).filter((s) => s.weight > 0 || s.fill !== 'none'),
    ];
  });
