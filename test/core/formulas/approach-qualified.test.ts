/**
 * The equations of 29 CFR 1910.269 Table R-3 against the tables the same rule prints: and Appendix B Tables
 * 14, 15, 17, 18 and 21. In metres, rounded up to 0.01 as Appendix B asks, they must agree exactly. Printed feet are not
 * tested: R-6 rounds them up, the others to the nearest.
 */
import { describe, expect, it } from 'vitest';
import { type Exposure, publishedByOvervoltage, qualified } from '#core/facts/qualified.ts';
import {
  altitudeFactor, distanceAbove72, distanceUpTo72, electricalGap, phaseOvervoltage, rodGap, saturation, upToCentimetre,
} from '#core/formulas/approach-qualified.ts';

const exposures: Exposure[] = ['phaseToGround', 'phaseToPhase'];
type Row = { over: number; upTo: number; phaseToGround: number | null; phaseToPhase: number | null; overvoltage?: number };

/** The distance by equation for one printed row. */
const byEquation = (row: Row, exposure: Exposure): number => {
  if (row.overvoltage !== undefined) return upToCentimetre(distanceAbove72({ highest: row.upTo, overvoltage: row.overvoltage, exposure }));
  const gap = qualified.r4.find(({ upTo }) => upTo === row.upTo)?.[exposure] ?? 0;
  return upToCentimetre(distanceUpTo72(row.upTo, gap));
};

/** The rows of a table that the equations do not give. */
const notReproduced = (rows: readonly Row[]): string[] =>
  rows.flatMap((row) => exposures.filter((e) => row[e] !== null && byEquation(row, e) !== row[e]).map((e) => `${row.upTo} kV ${e}`));

describe('Table R-3', () => {
  it('gives every distance of Table R-6', () => {
    expect(qualified.r6.filter(({ phaseToGround }) => phaseToGround !== null)).toHaveLength(6);
    expect(notReproduced(qualified.r6)).toEqual([]);
  });
  it('gives every distance of Table R-7', () => {
    expect(qualified.r7).toHaveLength(8);
    expect(notReproduced(qualified.r7)).toEqual([]);
  });

  it.each(publishedByOvervoltage.tables)('gives every distance of Appendix B Table $table', ({ upTo, rows }) => {
    expect(rows.length).toBeGreaterThan(10);
    for (const [overvoltage, toGround, toPhase] of rows as [number, number, number][]) {
      expect([overvoltage, upToCentimetre(distanceAbove72({ highest: upTo, overvoltage, exposure: 'phaseToGround' }))]).toEqual([overvoltage, toGround]);
      expect([overvoltage, upToCentimetre(distanceAbove72({ highest: upTo, overvoltage, exposure: 'phaseToPhase' }))]).toEqual([overvoltage, toPhase]);
    }
  });

  it('does not give the distances that expired in 2015 and still go about as Table R-6 (Appendix B, V.A)', () => {
    const expired: Row[] = [
      { over: 1, upTo: 15, phaseToGround: 0.64, phaseToPhase: 0.66 },
      { over: 15, upTo: 36, phaseToGround: 0.72, phaseToPhase: 0.77 },
      { over: 36, upTo: 46, phaseToGround: 0.77, phaseToPhase: 0.85 },
      { over: 46, upTo: 72.5, phaseToGround: 0.9, phaseToPhase: 1.05 },
      { over: 72.5, upTo: 121, phaseToGround: 0.95, phaseToPhase: 1.29, overvoltage: 3.5 },
      { over: 138, upTo: 145, phaseToGround: 1.09, phaseToPhase: 1.5, overvoltage: 3.5 },
      { over: 161, upTo: 169, phaseToGround: 1.22, phaseToPhase: 1.71, overvoltage: 3.5 },
      { over: 230, upTo: 242, phaseToGround: 1.59, phaseToPhase: 2.27, overvoltage: 3.5 },
      { over: 345, upTo: 362, phaseToGround: 2.59, phaseToPhase: 3.8, overvoltage: 3.5 },
      { over: 500, upTo: 550, phaseToGround: 3.42, phaseToPhase: 5.5, overvoltage: 3 },
      { over: 765, upTo: 800, phaseToGround: 4.53, phaseToPhase: 7.91, overvoltage: 2.5 },
    ];
    expect(notReproduced(expired)).toHaveLength(expired.length * 2);
    for (const row of expired) {
      const now = [...qualified.r6, ...qualified.r7].find(({ upTo }) => upTo === row.upTo);
      expect(now?.phaseToGround).toBeGreaterThan(row.phaseToGround as number);
      expect(now?.phaseToPhase).toBeGreaterThan(row.phaseToPhase as number);
    }
  });

  it('with a tool in the gap between phases, gives what the equation alone was worked out to by hand', () => {
    const byHand = [1.53, 1.77, 2.09, 3.36, 6.2, 7.89, 9.8, 14.09];
    qualified.r7.forEach((row, i) =>
      expect(upToCentimetre(distanceAbove72({ highest: row.upTo, overvoltage: row.overvoltage, exposure: 'phaseToPhase', spanned: true }))).toBe(byHand[i]));
  });
});

describe('Its parts', () => {
  it('Appendix B gives every D of Table R-4', () => {
    for (const row of qualified.r4) for (const e of exposures) expect([row.upTo, e, upToCentimetre(electricalGap(row.upTo, e))]).toEqual([row.upTo, e, row[e]]);
  });

  it('the saturation pieces meet at their joins as nearly as they are printed, and start at nothing', () => {
    for (const peak of [635, 915, 1050]) expect(saturation(peak + 1e-9, 'phaseToGround') - saturation(peak, 'phaseToGround')).toBeCloseTo(0, 4);
    for (const peak of [630, 848, 1131, 1485]) expect(saturation(peak + 1e-9, 'phaseToPhase') - saturation(peak, 'phaseToPhase')).toBeCloseTo(0, 4);
    expect(saturation(635, 'phaseToGround')).toBe(0);
    expect(saturation(630, 'phaseToPhase')).toBe(0);
    expect(saturation(700, 'phaseToPhase', true)).toBe(saturation(700, 'phaseToGround'));
    // Steps of the worked examples: 230 kV and 345 kV, each with the top of its band.
    expect(saturation(691.57, 'phaseToGround')).toBeCloseTo(0.000404, 6);
    expect(saturation(1022.54, 'phaseToPhase')).toBeCloseTo(0.002555, 6);
    expect(saturation(1034.5, 'phaseToGround')).toBeCloseTo(0.002885, 6);
    expect(saturation(1529.58, 'phaseToPhase')).toBeCloseTo(0.005789, 6);
  });

  it('between phases the overvoltage is 1.35 T + 0.45', () => {
    expect(phaseOvervoltage(3)).toBeCloseTo(4.5, 12);
    expect(phaseOvervoltage(3.5)).toBeCloseTo(5.175, 12);
  });

  it('the rod gap is read between its rows and not beyond them', () => {
    expect(rodGap(208.93)).toBeCloseTo(0.3826, 4);
    expect(() => rodGap(10)).toThrow('outside');
    expect(() => rodGap(400)).toThrow('outside');
  });

  it('altitude: the equation scales the electrical part, the footnote the whole distance, so the table is the larger', () => {
    expect([900, 901, 1500, 3000, 6000, 6001].map(altitudeFactor)).toEqual([1, 1.02, 1.05, 1.2, 1.44, null]);
    const a = altitudeFactor(1500) as number;
    expect(upToCentimetre(distanceAbove72({ highest: 145, overvoltage: 3.5, exposure: 'phaseToGround', altitude: a }))).toBe(1.35);
    expect(upToCentimetre(1.3 * a)).toBe(1.37);
    expect(upToCentimetre(distanceUpTo72(72.5, 0.39, a))).toBe(1.02);
    expect(upToCentimetre(1 * a)).toBe(1.05);
  });
});
