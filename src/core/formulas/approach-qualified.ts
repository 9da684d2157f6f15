/**
 * Minimum approach distances for qualified electrical workers: the equations of 29 CFR 1910.269 Table R-3, with Tables
 * and Appendix B. A reference and a check; never a distance for a reader of this handbook.
 * Voltages in kV (rms, between phases unless said), overvoltage in multiples of the peak to ground, distances in m.
 * Range: AC, 0.301 to 800 kV. The voltage is the highest of its band, not the nominal (Appendix B, IV.A.1).
 */
import type { Exposure } from '../facts/qualified.ts';
import { qualified } from '../facts/qualified.ts';
import { groundFromPhases } from './voltage.ts';

/** M: what the table adds for a worker's own movement. */
const movement = { upTo750V: 0.31, upTo72kV: 0.61, above72kV: 0.31 };
const metresPerFoot = 0.3048;

/** The saturation factor a, from the peak voltage in kV: pieces [up to, subtract, divide by]. */
const groundPieces = [[635, 0, Infinity], [915, 635, 140_000], [1050, 645, 135_000], [Infinity, 675, 125_000]] as const;
const phasePieces = [[630, 0, Infinity], [848, 630, 155_000], [1131, 633.6, 152_207], [1485, 628, 153_846], [Infinity, 350.5, 203_666]] as const;

/** `spanned`: a tool or a large conductive object in the gap between phases; the pieces to ground then hold. */
export const saturation = (peak: number, exposure: Exposure, spanned = false): number => {
  const pieces = exposure === 'phaseToPhase' && !spanned ? phasePieces : groundPieces;
  const [, less, by] = pieces.find(([upTo]) => peak <= upTo) as (typeof pieces)[number];
  return (peak - less) / by;
};

/** T between phases from T to ground. */
export const phaseOvervoltage = (toGround: number): number => 1.35 * toGround + 0.45;

/** Above 72.5 kV: 0.3048 (C + a) V T A + M. `highest` is the top of the band; `altitude` the factor A of Table R-5. */
export const distanceAbove72 = (
  { highest, overvoltage, exposure, spanned = false, altitude = 1 }: { highest: number; overvoltage: number; exposure: Exposure; spanned?: boolean; altitude?: number },
): number => {
  const voltage = groundFromPhases(highest);
  const factor = exposure === 'phaseToPhase' ? phaseOvervoltage(overvoltage) : overvoltage;
  const a = saturation(voltage * factor * Math.SQRT2, exposure, spanned);
  const c = exposure === 'phaseToPhase' && !spanned ? 0.01 : 0.011;
  return metresPerFoot * (c + a) * voltage * factor * altitude + movement.above72kV;
};

/** The gap in air (m) that a peak of `kilovolts` jumps between rods: Appendix B Table 1, straight lines between its rows. */
export const rodGap = (kilovolts: number): number => {
  const rows = qualified.rodGap as unknown as readonly (readonly [number, number])[];
  const next = rows.findIndex(([kv]) => kv >= kilovolts);
  if (next < 1) throw new Error(`${kilovolts} kV is outside Appendix B Table 1`);
  const [[kv0, cm0], [kv1, cm1]] = [rows[next - 1], rows[next]] as [[number, number], [number, number]];
  return (cm0 + ((cm1 - cm0) * (kilovolts - kv0)) / (kv1 - kv0)) / 100;
};

/** The electrical part up to 72.5 kV: peak × T ÷ 0.85 put into the rod gap; T to ground is 3.0 (Appendix B, II and III). */
export const electricalGap = (highest: number, exposure: Exposure): number => {
  const factor = exposure === 'phaseToPhase' ? phaseOvervoltage(3) : 3;
  return rodGap((groundFromPhases(highest) * Math.SQRT2 * factor) / 0.85);
};

/** From 301 V to 72.5 kV: M + D, D scaled by A from 5.1 kV up. `gap` is D of Table R-4; 0.02 m up to 5 kV. */
export const distanceUpTo72 = (highest: number, gap: number, altitude = 1): number => {
  if (highest <= 0.75) return movement.upTo750V + 0.02;
  return movement.upTo72kV + (highest <= 5 ? 0.02 : altitude * gap);
};

/** Rounded up to a centimetre, as Appendix B asks. */
export const upToCentimetre = (metres: number): number => Math.ceil(metres * 100 - 1e-9) / 100;

/** The factor A of Table R-5; null above the table. */
export const altitudeFactor = (metres: number): number | null => qualified.r5.find(({ to }) => metres <= to)?.factor ?? null;
