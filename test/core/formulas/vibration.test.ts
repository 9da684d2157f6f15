import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dailyExposure, exposurePoints, minutesUntil, yearsToWhiteFinger } from '#core/formulas/vibration.ts';

describe('Vibration', () => {
  it('gives the partial exposures of the forestry example (ISO 5349-2, E.3: 2.3, 2.1 and 1.8)', () => {
    expect(dailyExposure([{ magnitude: 4.6, minutes: 120 }])).toBeCloseTo(2.3, 1);
    expect(dailyExposure([{ magnitude: 6.0, minutes: 60 }])).toBeCloseTo(2.1, 1);
    expect(dailyExposure([{ magnitude: 3.6, minutes: 120 }])).toBeCloseTo(1.8, 1);
  });

  // Table C.1 of ISO 5349-1, as printed by a library that cites it; its exponent is a fit, so half a year stands beside it.
  // Its row for 26 m/s² is from memory.
  it.each([[26, 1, 0.1], [14, 2, 0.1], [7, 4, 0.1], [3.7, 8, 0.6]])('A(8) %s: one in ten after %s years', (exposure, years, within) =>
    expect(Math.abs(yearsToWhiteFinger(exposure) - years)).toBeLessThanOrEqual(within));

  const spells = fc.array(fc.record({ magnitude: fc.double({ min: 0, max: 30, noNaN: true }), minutes: fc.double({ min: 0, max: 600, noNaN: true }) }), { maxLength: 5 });

  it('does not ask for an order, and adds in energy', () => {
    fc.assert(fc.property(spells, spells, (a, b) => {
      const both = dailyExposure([...a, ...b]);
      expect(dailyExposure([...b, ...a])).toBeCloseTo(both, 9);
      expect(both ** 2).toBeCloseTo(dailyExposure(a) ** 2 + dailyExposure(b) ** 2, 6);
      expect(exposurePoints([...a, ...b])).toBeCloseTo(exposurePoints(a) + exposurePoints(b), 6);
    }));
  });

  it('says the same in points and in A(8): 100 points are 2.5 m/s² (HSE)', () => {
    fc.assert(fc.property(spells, (s) => {
      expect(2.5 * Math.sqrt(exposurePoints(s) / 100)).toBeCloseTo(dailyExposure(s), 6);
    }));
  });

  it('leaves just the minutes that bring the day to the level, and none beyond it', () => {
    fc.assert(fc.property(spells, fc.double({ min: 0.5, max: 30, noNaN: true }), (s, magnitude) => {
      const before = dailyExposure(s);
      const minutes = minutesUntil(5, before, magnitude);
      if (before >= 5) expect(minutes).toBe(0);
      else expect(dailyExposure([...s, { magnitude, minutes }])).toBeCloseTo(5, 6);
    }));
  });
});
