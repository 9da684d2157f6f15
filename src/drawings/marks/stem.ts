/** An upright stem standing on the ground: flared at the foot, running on above what is drawn. */
import type { Point, Shape } from '../kit/placed.ts';
import { pen, segment } from '../kit/path.ts';

export const stem = (foot: Point, top: number, width: number): Shape[] => {
  const [x, y] = foot;
  const half = width / 2;
  const flare = Math.min(width * 0.45, 12);
  const rise = Math.min(flare * 2.4, (y - top) / 2);
  const path = pen();
  path.moveTo(x - half - flare, y);
  path.quadraticCurveTo(x - half, y - rise * 0.2, x - half, y - rise);
  path.lineTo(x - half * 0.86, top);
  path.bezierCurveTo(x - half * 0.3, top - 7, x + half * 0.3, top + 7, x + half * 0.86, top);
  path.lineTo(x + half, y - rise);
  path.quadraticCurveTo(x + half, y - rise * 0.2, x + half + flare, y);
  const strokes = Array.from({ length: Math.floor((y - top - rise) / 34) }, (_, i) => {
    const at = y - rise - 12 - i * 34;
    const off = half * 0.55 * Math.sin(i * 2.7 + 0.6);
    return segment([x + off, at], [x + off * 0.97, at - 12]);
  }).join('');
  return [{ mark: 'stem', d: path.toString() }, ...(strokes ? [{ mark: 'bark' as const, d: strokes }] : [])];
};
