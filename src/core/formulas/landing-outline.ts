/**
 * How far from plumb under its cut a falling limb may land, by bearing: the strip it falls in, turned by its swing to both
 * sides, and at the strip's ends the furthest that either end gets. Square beside, at its tip side and at its stem side it
 * is what the drop zone says; between, the same turned. Lengths in m, angles in degrees.
 */
import { cos, sin } from './angles.ts';

/** `outward`, `inward`: with the margin. `half`: half the strip's width, with the margin. */
export type Strip = { readonly outward: number; readonly inward: number; readonly half: number; readonly swing: number };

const towards = (end: number, half: number, off: number): number => (off <= 0 ? end : Math.min(end, half / sin(Math.min(off, 90))));

/** The same, the width told by how far it reaches square beside the limb, `beside`. */
export const stripTo = (outward: number, inward: number, beside: number, swing: number): Strip => ({ outward, inward, half: beside * cos(swing), swing });

/** The outline all round, as places in m: x the way the limb points, y across it. */
export const landingOutline = (strip: Strip): (readonly [number, number])[] =>
  Array.from({ length: 121 }, (_, k) => {
    const angle = 3 * k;
    const reach = landingReach(strip, angle > 180 ? 360 - angle : angle);
    return [reach * cos(angle), reach * sin(angle)] as const;
  });

/** `angle` from the way the limb points, 0 to 180. */
export const landingReach = ({ outward, inward, half, swing }: Strip, angle: number): number =>
  Math.max(half, towards(outward, half, angle - swing), towards(inward, half, 180 - angle - swing));
