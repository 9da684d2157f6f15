/** Will this bar cross that limb: by hand, and the facts of the trade. */
import { describe, expect, it } from 'vitest';
import { barLength } from '#core/calculators/bar-length.ts';
import { type Answer, evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';

const square: Inputs = { limbDiameter: 200, barLength: 250, offSquare: 0, margin: 50 };
const run = (change: Inputs, got: 'exact' | 'measured' | 'judged' = 'exact'): Answer => evaluate(barLength, { ...square, ...change }, got) as Answer;
const figure = (answer: Answer, name: string): Quantity => answer.outputs[name] as Quantity;
const ids = (answer: Answer): string[] => answer.findings.map((f) => f.id);

describe('by hand', () => {
  it('a bar of 250 mm with 50 mm to spare crosses 200 mm, and no more', () => {
    expect(figure(run({}), 'largestLimb').value).toBe(200);
    expect(ids(run({}))).toEqual(['heavy']);
    expect(ids(run({ limbDiameter: 200.001 }))).toEqual(['barTooShort', 'heavy']);
  });
  it('the label names a class: what cuts may be 10 mm shorter', () => {
    // 240 − 50 = 190, and square to 5°, cosine 0.99619: 189.28. A limb of 195 measured is up to 198.9: it needs 249.
    const { value, low, high, planOn } = figure(run({}, 'measured'), 'largestLimb');
    expect([value, high]).toEqual([200, 200]);
    expect(low).toBeCloseTo(189.28, 2);
    expect(planOn).toBe(low);
    expect(run({ limbDiameter: 195 }, 'measured').findings[0]).toMatchObject({ id: 'barTooShort', level: 'stop', guess: true });
  });
  it('a judged limb and a judged cut', () => {
    // 100 mm by eye: to 120. 15° by eye: to 25°, cosine 0.9063. 120 ÷ 0.9063 = 132.41; with 50 to spare 182.41.
    const answer = run({ limbDiameter: 100, offSquare: 15 }, 'judged');
    expect(figure(answer, 'cutWidth').planOn).toBeCloseTo(132.41, 1);
    expect(figure(answer, 'barNeeded').planOn).toBeCloseTo(182.41, 1);
    // (240 − 50) × 0.9063 = 172.2
    expect(figure(answer, 'largestLimb').planOn).toBeCloseTo(172.2, 1);
    expect(ids(answer)).toEqual(['heavy']);
  });
});

describe('weight beside every diameter', () => {
  // 1,308.6 kg to the cubic metre: see the check from outside. A round section of 200 mm is 0.0314159 m²: 41.11 kg a metre.
  it('always stands with it', () => {
    expect(figure(run({}), 'weightPerMetre').value).toBeCloseTo(41.11, 2);
    expect(ids(run({ limbDiameter: 10 }))).toContain('heavy');
  });
  it('four times for twice the diameter', () => {
    expect(figure(run({}), 'weightPerMetre').value / figure(run({ limbDiameter: 100 }), 'weightPerMetre').value).toBeCloseTo(4, 12);
  });
  it('by eye a fifth more across is 44 % more weight', () => {
    expect(figure(run({}, 'judged'), 'weightPerMetre').planOn).toBeCloseTo(41.11 * 1.44, 1);
  });
});
