import { describe, expect, it } from 'vitest';
import { vibration } from '#core/calculators/vibration.ts';
import { type Answer, evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { checkRows, expectCheck } from './box.ts';

const one: Inputs = { magnitude1: 4, minutes1: 60, magnitude2: null, minutes2: null, magnitude3: null, minutes3: null, uncertainty: 0, nextMagnitude: 4 };
const run = (given: Inputs, got: 'exact' | 'judged' = 'exact') => evaluate(vibration, { ...one, ...given }, got);
const figure = (given: Inputs, name: string, got: 'exact' | 'judged' = 'exact') => (run(given, got) as Answer).outputs[name] as Quantity;
const ids = (given: Inputs, got: 'exact' | 'judged' = 'exact') => (run(given, got) as Answer).findings.map((f) => f.id);

describe('Vibration against worked examples from outside', () => {
  it.each(checkRows('vibration'))('$title', (row) => expectCheck(vibration, row));
});

describe('Vibration', () => {
  // HSE information sheet 246/31: forty per cent where none is given.
  it('adds forty per cent where no uncertainty is stated, and says so', () => {
    expect(figure({ uncertainty: null }, 'dailyExposure').value).toBeCloseTo(1.4 * figure({}, 'dailyExposure').value, 9);
    expect(ids({ uncertainty: null })).toContain('assumedUncertainty');
    expect(ids({})).not.toContain('assumedUncertainty');
  });
  it('counts the uncertainty of the next tool too', () =>
    expect(figure({ magnitude1: 0, uncertainty: 100, nextMagnitude: 2.5 }, 'minutesToLimit').value).toBeCloseTo(480, 9));
  it('plans on a third more trigger time where it was judged', () => {
    expect(figure({}, 'points', 'judged').planOn).toBeCloseTo(1.3 * figure({}, 'points').value, 9);
    expect(figure({}, 'minutesToLimit', 'judged').planOn).toBeLessThan(figure({}, 'minutesToLimit').value);
  });
  it('warns at the action value and stops at the limit, from the guess as well', () => {
    expect(ids({ magnitude1: 4.9, minutes1: 480 })).toContain('overAction');
    expect(ids({ magnitude1: 4.9, minutes1: 480 })).not.toContain('overLimit');
    expect(ids({ magnitude1: 4.9, minutes1: 480 }, 'judged')).toContain('overLimit');
    expect(figure({ magnitude1: 6, minutes1: 480 }, 'minutesToLimit').value).toBe(0);
    expect(ids({ magnitude1: 1, minutes1: 10, nextMagnitude: 1 })).toEqual(['dayEndsFirst']);
  });
  it('is outside beyond the regulator’s reckoner, which ends at 40 m/s², K counted', () => {
    expect(run({ magnitude1: 30, uncertainty: 33 })).toMatchObject({ kind: 'answer' });
    expect(run({ magnitude1: 30, uncertainty: 34 })).toMatchObject({ kind: 'outside', limit: 'beyondReckoner' });
    expect(run({ nextMagnitude: 30, uncertainty: null })).toMatchObject({ kind: 'outside' });
  });
  it('wants both halves of a pair, at the empty one, and no more minutes than a day has', () => {
    expect(run({ magnitude2: 3 })).toEqual({ kind: 'problems', problems: [{ input: 'minutes2', problem: 'needsPair', values: {} }] });
    expect(run({ minutes3: 3 })).toEqual({ kind: 'problems', problems: [{ input: 'magnitude3', problem: 'needsPair', values: {} }] });
    expect(run({ minutes1: 600, magnitude2: 3, minutes2: 600, magnitude3: 3, minutes3: 600 }))
      .toEqual({ kind: 'problems', problems: [{ input: 'minutes3', problem: 'moreThanDay', values: {} }] });
  });
});
