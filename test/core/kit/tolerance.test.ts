import { describe, expect, it } from 'vitest';
import { type AnyCalculator, answer, defineCalculator, type Got } from '#core/kit/calculator.ts';
import { choice, guess, label, list, optionalQuantity, quantity } from '#core/kit/inputs.ts';
import { atCorner, cornersOf, middle, turningPoints, type Variable, variablesOf } from '#core/kit/tolerance.ts';

const range = { min: 0, max: 100, step: 1, example: 10 };
const toy: AnyCalculator = defineCalculator({
  id: 'toy',
  inputs: {
    share: quantity('m', { ...range, tolerance: guess({ share: 0.2, least: 1 }, { share: 0.02, least: 0.5 }) }),
    plate: quantity('m', { ...range, tolerance: label({ plus: 0, minus: 3 }) }),
    carried: quantity('m', range),
    level: quantity('m', { ...range, min: -50, tolerance: guess({ least: 2, sureAtZero: true }, { least: 1, sureAtZero: true }) }),
    capped: quantity('m', { ...range, ceiling: 11, floor: 9, tolerance: guess({ least: 5 }, { least: 0 }) }),
    side: choice(['left', 'right'], 'left'),
    maybe: optionalQuantity('m', { ...range, tolerance: guess({ least: 1 }, { least: 1 }) }),
    several: list('m', { min: 0, max: 100, shortest: 0, longest: 5, example: [10], tolerance: guess({ share: 0.5, least: 2 }, { least: 1 }) }),
    plain: list('m', { min: 0, max: 100, shortest: 0, longest: 5, example: [10] }),
  },
  outputs: { x: { kind: 'quantity', unit: 'm', protects: 'up', moves: {} } },
  lead: ['x'],
  compute: () => answer({ x: 0 }),
});
const inputs = { share: 10, plate: 20, carried: 5, level: 4, capped: 10, side: 'left', maybe: null, several: [10, 2], plain: [1] };
const all = (got: Got) => () => got;
const ends = (variables: Variable[]) => Object.fromEntries(variables.map((v) => [v.name, [v.low, v.middle, v.high]]));

describe('the tolerance box', () => {
  it('judged: the larger of share and least, a plate by its own, nothing for carried and choices', () => {
    expect(ends(variablesOf(toy, inputs, all('judged')))).toEqual({
      share: [8, 10, 12], plate: [17, 20, 20], level: [2, 4, 6], capped: [9, 10, 11], several: [-1, 0, 1],
    });
  });
  it('measured: its own figures; a plate is the same however it was got', () => {
    expect(ends(variablesOf(toy, inputs, all('measured')))).toEqual({ share: [9.5, 10, 10.5], plate: [17, 20, 20], level: [3, 4, 5], several: [-1, 0, 1] });
  });
  it('exact: a point', () => {
    expect(variablesOf(toy, inputs, all('exact'))).toEqual([]);
  });
  it('least holds where the share is smaller, and no end passes what is possible', () => {
    expect(ends(variablesOf(toy, { ...inputs, share: 0.5 }, all('judged')))['share']).toEqual([0, 0.5, 1.5]);
  });
  it('nothing is no guess where so declared', () => {
    expect(ends(variablesOf(toy, { ...inputs, level: 0 }, all('judged')))).not.toHaveProperty('level');
    expect(ends(variablesOf(toy, { ...inputs, level: 0.5 }, all('judged')))['level']).toEqual([-1.5, 0.5, 2.5]);
    expect(ends(variablesOf(toy, { ...inputs, share: 0 }, all('judged')))['share']).toEqual([0, 0, 1]);
  });
  it('an optional figure that was not entered has none, one that was has', () => {
    expect(ends(variablesOf(toy, { ...inputs, maybe: 3 }, all('judged')))['maybe']).toEqual([2, 3, 4]);
  });
  it('a share of a negative figure is as wide as of the positive one', () => {
    const sloped: AnyCalculator = { ...toy, inputs: { ...toy.inputs, level: quantity('m', { ...range, min: -50, tolerance: guess({ share: 0.1 }, { least: 1 }) }) } };
    expect(ends(variablesOf(sloped, { ...inputs, level: -20 }, all('judged')))['level']).toEqual([-22, -20, -18]);
  });
});

describe('an error that inputs share', () => {
  const pair: AnyCalculator = defineCalculator({
    id: 'pair',
    inputs: {
      a: quantity('m', { ...range, tolerance: guess({ share: 0.1 }, { least: 1 }) }),
      b: quantity('m', { ...range, ceiling: 60 }),
      c: optionalQuantity('m', range),
    },
    shared: { eye: { inputs: ['a', 'b', 'c'], judged: 0.2, measured: 0 } },
    outputs: { ratio: { kind: 'quantity', unit: 'ratio', protects: 'up', moves: { a: 'up', b: 'down' } } },
    lead: ['ratio'],
    compute: ({ a, b }) => answer({ ratio: a / b }),
  });
  const given = { a: 20, b: 50, c: null };
  const got = (of: { [name: string]: Got }) => (name: string): Got => of[name] ?? 'judged';

  it('one eye: a common factor beside each one’s own', () => {
    expect(ends(variablesOf(pair, given, all('judged')))).toEqual({ a: [18, 20, 22], eye: [0.8, 1, 1.2] });
  });
  it('moves them together, and leaves out what was not entered', () => {
    const variables = variablesOf(pair, given, all('judged'));
    expect(atCorner(pair, variables, given, { a: 22, eye: 1.2 })).toEqual({ a: 22 * 1.2, b: 60, c: null });
    expect(atCorner(pair, variables, { ...given, c: 10 }, { a: 20, eye: 0.5 })).toEqual({ a: 10, b: 25, c: 5 });
  });
  it('none where both were measured, or exact', () => {
    expect(ends(variablesOf(pair, given, all('measured')))).toEqual({ a: [19, 20, 21] });
    expect(variablesOf(pair, given, all('exact'))).toEqual([]);
  });
  it('got in different ways it is no longer common: it does not cancel, each bears it alone', () => {
    // a judged: 10 % of its own, then 20 % on top: 20 × 0.9 × 0.8 to 20 × 1.1 × 1.2.
    const aJudged = ends(variablesOf(pair, given, got({ b: 'measured' })));
    expect(aJudged).toEqual({ a: [expect.closeTo(14.4, 9), 20, expect.closeTo(26.4, 9)] });
    // b judged, with no tolerance of its own and a ceiling.
    expect(ends(variablesOf(pair, given, got({ a: 'exact' })))).toEqual({ b: [40, 50, 60] });
  });
});

describe('an error that lists share', () => {
  const lists: AnyCalculator = defineCalculator({
    id: 'lists',
    inputs: {
      a: list('mm', { min: 0, max: 400, shortest: 1, longest: 3, example: [10], tolerance: guess({ share: 0.1 }, { least: 1 }) }),
      b: list('mm', { min: 0, max: 400, shortest: 1, longest: 3, example: [10] }),
    },
    shared: { eye: { inputs: ['a', 'b'], judged: 0.2, measured: 0 } },
    outputs: { x: { kind: 'quantity', unit: 'ratio', protects: 'up', moves: {} } },
    lead: ['x'],
    compute: () => answer({ x: 0 }),
  });
  const given = { a: [10, 20], b: [30, 40] };
  it('is a factor on every item', () => {
    const variables = variablesOf(lists, given, all('judged'));
    expect(ends(variables)).toEqual({ a: [-1, 0, 1], eye: [0.8, 1, 1.2] });
    expect(atCorner(lists, variables, given, { a: 1, eye: 1.2 })).toEqual({ a: [11 * 1.2, 22 * 1.2], b: [36, 48] });
  });
  it('got in different ways, each bears it alone', () => {
    const variables = variablesOf(lists, given, (name) => (name === 'a' ? 'measured' : 'judged'));
    expect(ends(variables)).toEqual({ a: [-1, 0, 1], b: [-1, 0, 1] });
    expect(atCorner(lists, variables, given, { a: -1, b: 1 })).toEqual({ a: [9, 19], b: [36, 48] });
  });
});

describe('corners', () => {
  const variables: Variable[] = [
    { name: 'u', kind: 'own', low: 1, middle: 2, high: 3 },
    { name: 'd', kind: 'own', low: 10, middle: 20, high: 30 },
    { name: 'n', kind: 'own', low: 100, middle: 200, high: 300 },
  ];
  it('one for each end of what is monotone; what does not move it stays in the middle', () => {
    expect(cornersOf(variables, { u: 'up', d: 'down' }, 'high')).toEqual([{ u: 3, d: 10, n: 200 }]);
    expect(cornersOf(variables, { u: 'up', d: 'down' }, 'low')).toEqual([{ u: 1, d: 30, n: 200 }]);
  });
  it('both ends of what bends', () => {
    expect(cornersOf(variables, { u: 'bends', d: 'bends', n: 'up' }, 'low')).toEqual([
      { u: 1, d: 10, n: 100 }, { u: 3, d: 10, n: 100 }, { u: 1, d: 30, n: 100 }, { u: 3, d: 30, n: 100 },
    ]);
  });
  it('the middle is the figures as entered', () => {
    expect(middle(variables)).toEqual({ u: 2, d: 20, n: 200 });
  });
  it('a list moves as one, each item by its own width', () => {
    const of = variablesOf(toy, inputs, all('judged')).filter((v) => v.name === 'several');
    const at = (place: number) => atCorner(toy, of, inputs, { several: place })['several'];
    expect(at(1)).toEqual([15, 4]);
    expect(at(-1)).toEqual([5, 0]);
    expect(at(0.5)).toEqual([12.5, 3]);
    expect(at(-0.5)).toEqual([7.5, 1]);
    expect(at(0)).toEqual([10, 2]);
  });
});

describe('where an output turns', () => {
  const v: Variable = { name: 'v', kind: 'own', low: -1, middle: 1, high: 3 };
  it('by its closed form, if that is inside', () => {
    expect(turningPoints(v, 'low', () => 0, () => 0.25)).toEqual([0.25]);
    expect(turningPoints(v, 'low', () => 0, () => 3)).toEqual([]);
    expect(turningPoints(v, 'low', () => 0, () => -1)).toEqual([]);
  });
  it('at several places', () => {
    expect(turningPoints(v, 'low', () => 0, () => [-2, 0.25, 2, 3.5])).toEqual([0.25, 2]);
  });
  it('by a search without one', () => {
    expect(turningPoints(v, 'low', (x) => (x - 0.7) ** 2, undefined)[0]).toBeCloseTo(0.7, 3);
    expect(turningPoints(v, 'high', (x) => -((x - 2.5) ** 2), undefined)[0]).toBeCloseTo(2.5, 3);
  });
});
