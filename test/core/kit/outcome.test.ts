import { describe, expect, it } from 'vitest';
import { answer, defineCalculator, outside } from '#core/kit/calculator.ts';
import { guess, quantity } from '#core/kit/inputs.ts';
import { evaluate, type Quantity } from '#core/kit/outcome.ts';
import { answered, findings, out, run, type Toy } from './toy.ts';

describe('a figure and its range', () => {
  it('up and down take one corner for each end', () => {
    const rise: Toy = { value: (x, y) => x - y, moves: { x: 'up', y: 'down' } };
    expect(out(rise)).toEqual({ value: 5, low: 2, high: 8, planOn: 8, planAt: { x: 12, y: 4 } });
    expect(out({ ...rise, protects: 'down' })).toEqual({ value: 5, low: 2, high: 8, planOn: 2, planAt: { x: 8, y: 6 } });
    expect(out({ ...rise, protects: 'both' })).toEqual({ value: 5, low: 2, high: 8, planOn: null, planAt: null });
  });
  it('how each was got', () => {
    const rise: Toy = { value: (x, y) => x - y, moves: { x: 'up', y: 'down' } };
    expect(out(rise, 'exact')).toEqual({ value: 5, low: 5, high: 5, planOn: 5, planAt: { x: 10, y: 5 } });
    expect(out(rise, 'measured')).toMatchObject({ low: 4, high: 6 });
    expect(out(rise, { x: 'measured' })).toMatchObject({ low: 3, high: 7 });
    expect(out(rise, { x: 'exact', y: 'exact' })).toMatchObject({ low: 5, high: 5 });
    // A word from outside that is none of the three counts as the roughest.
    expect(out(rise, { x: 'guessed' } as never)).toMatchObject({ low: 2, high: 8 });
    expect(out(rise, 'rubbish' as never)).toMatchObject({ low: 2, high: 8 });
  });
  it('an input that does not move it is left alone', () => {
    expect(out({ value: (x, y) => x + 0 * y, moves: { x: 'up' } })).toMatchObject({ planAt: { x: 12, y: 5 } });
  });
});

describe('what bends', () => {
  it('is searched for its turn inside the box', () => {
    const valley: Toy = { value: (x) => (x - 10.7) ** 2, moves: { x: 'bends' } };
    const figure = out({ ...valley, protects: 'down' }) as Quantity;
    expect(figure.low).toBeCloseTo(0, 6);
    expect(figure.high).toBeCloseTo(2.7 ** 2, 12);
    expect(figure.planAt?.['x']).toBeCloseTo(10.7, 3);
    const hill = out({ value: (x) => -((x - 9.2) ** 2), moves: { x: 'bends' } }) as Quantity;
    expect(hill.planOn).toBeCloseTo(0, 6);
    expect(hill.low).toBeCloseTo(-(2.8 ** 2), 12);
  });
  it('with a closed form, exactly; one that lies outside the box is ignored', () => {
    const valley = (centre: number): Toy => ({ value: (x) => (x - centre) ** 2, moves: { x: 'bends' }, turns: { x: () => centre }, protects: 'down' });
    expect(out(valley(10.7))).toMatchObject({ low: 0, planAt: { x: 10.7, y: 5 } });
    expect(out(valley(20))).toMatchObject({ low: 64, high: 144, planAt: { x: 12, y: 5 } });
  });
  it('the closed form is given the other inputs as they stand at the best corner', () => {
    // (x − 2y)² + y: least y first (4), then x at 2y = 8.
    const figure = out({
      value: (x, y) => (x - 2 * y) ** 2 + y, moves: { x: 'bends', y: 'bends' },
      turns: { x: ((i: { y: number }) => 2 * i.y) as never }, protects: 'down',
    });
    expect(figure).toMatchObject({ low: 4, planAt: { x: 8, y: 4 } });
  });
  it('never leaves the figure as entered out of its own range', () => {
    const spike = (of: number): Toy => ({ value: (x) => (x === 10 ? of : 0), moves: { x: 'bends' } });
    expect(out(spike(5))).toMatchObject({ value: 5, low: 0, high: 5 });
    expect(out(spike(-5))).toMatchObject({ value: -5, low: -5, high: 0 });
  });
  it('takes the ends of what is monotone there too', () => {
    // Best at x as entered, between two ends that are worse: (10, 6), not (10, 5).
    const figure = out({ value: (x, y) => y - (x - 10) ** 2, moves: { x: 'bends', y: 'up' }, turns: { x: () => Number.NaN } });
    expect(figure).toMatchObject({ value: 5, high: 6, low: 0, planAt: { x: 10, y: 6 } });
  });
  it('bending with two inputs takes every combination of ends', () => {
    const saddle: Toy = { value: (x, y) => (x - 10) * (y - 5), moves: { x: 'bends', y: 'bends' } };
    expect(out(saddle)).toMatchObject({ value: 0, low: -2, high: 2 });
  });
});

describe('outside', () => {
  it('at the figures as entered: the outcome is', () => {
    expect(run({ outsideWhen: (x) => x >= 10 })).toEqual({ kind: 'outside', limit: 'edge', values: { x: 10 } });
  });
  it('at the protecting corner: the outcome is, with that corner’s figures', () => {
    expect(run({ outsideWhen: (x) => x > 11 })).toEqual({ kind: 'outside', limit: 'edge', values: { x: 12 } });
    expect(run({ outsideWhen: (x) => x < 9, protects: 'down' })).toEqual({ kind: 'outside', limit: 'edge', values: { x: 8 } });
    expect(run({ outsideWhen: (x) => x < 9, protects: 'both' })).toEqual({ kind: 'outside', limit: 'edge', values: { x: 8 } });
    expect(run({ outsideWhen: (x) => x > 11, protects: 'both' })).toEqual({ kind: 'outside', limit: 'edge', values: { x: 12 } });
  });
  it('only at the far corner: a caution, and the range from the figure as entered', () => {
    const far = answered(run({ outsideWhen: (x) => x < 9 }));
    expect(far.outputs['out']).toEqual({ value: 10, low: 10, high: 12, planOn: 12, planAt: { x: 12, y: 5 } });
    expect(far.findings).toEqual([{ id: 'beyondGuess', level: 'caution', values: { x: 8 }, guess: true }]);
    const down = answered(run({ outsideWhen: (x) => x > 11, protects: 'down' }));
    expect(down.outputs['out']).toMatchObject({ low: 8, high: 10, planOn: 8 });
    expect(down.findings.map((f) => f.id)).toEqual(['beyondGuess']);
  });
  it('somewhere in what bends: the outcome is, as either end may be the one that protects', () => {
    expect(run({ outsideWhen: (x) => x > 11, moves: { x: 'bends' } }).kind).toBe('outside');
  });
  it('met only while searching for a turn: that place is not taken', () => {
    const valley = (centre: number): Toy => ({ value: (x) => (x - centre) ** 2, moves: { x: 'bends' }, protects: 'down' });
    expect(out({ ...valley(9), outsideWhen: (x) => x > 10.4 && x < 11.9 })?.low).toBeCloseTo(0, 6);
    expect(out({ ...valley(11.5), outsideWhen: (x) => x > 9 && x < 9.9 })?.low).toBeCloseTo(0, 6);
  });
  it('nowhere near: no finding', () => {
    expect(findings({ outsideWhen: (x) => x < 7 })).toEqual([]);
  });
});

describe('a limit that the ends are taken up to', () => {
  const upTo = (edge: number): Toy => ({ outsideWhen: (x) => x > edge, upTo: () => edge });
  it('the end is at the limit, and it is said that the guess reaches past it', () => {
    const outcome = answered(run(upTo(11)));
    expect(outcome.outputs['out']).toEqual({ value: 10, low: 8, high: 11, planOn: 11, planAt: { x: 11, y: 5 } });
    expect(outcome.findings).toEqual([{ id: 'beyondGuess', level: 'caution', values: { x: 12 }, guess: true }]);
  });
  it('at the end that does not protect too', () => {
    expect(answered(run({ ...upTo(11), protects: 'down' }))).toMatchObject({ outputs: { out: { low: 8, high: 11, planOn: 8 } }, findings: [{ id: 'beyondGuess' }] });
    expect(out({ outsideWhen: (x) => x < 9, upTo: () => 9 })).toMatchObject({ low: 9, high: 12, planOn: 12 });
  });
  it('each corner is brought back by itself', () => {
    // Outside where x > y + 5.5, y from 4 to 6: with y at 4 up to 9.5, with y at 6 up to 11.5.
    const slanted: Toy = { outsideWhen: (x, y) => x > y + 5.5, upTo: (_, y) => y + 5.5, moves: { x: 'bends', y: 'bends' } };
    expect(out({ ...slanted, value: (x) => x })).toMatchObject({ high: 11.5, planAt: { x: 11.5, y: 6 } });
    expect(out({ ...slanted, value: (x, y) => x - y })?.high).toBeCloseTo(5.5, 12);
    expect(out({ ...slanted, value: (x, y) => x - 3 * y, protects: 'down' })).toMatchObject({ low: -10, high: -2.5 });
  });
  it('a turn past it is not taken', () => {
    expect(out({ ...upTo(11), value: (x) => -((x - 11.5) ** 2), moves: { x: 'bends' }, turns: { x: () => 11.5 } })).toMatchObject({ high: -0.25, planAt: { x: 11 } });
  });
  it('nowhere to bring a corner back to: outside, where that end protects', () => {
    expect(run({ outsideWhen: (x) => x > 11, upTo: () => 7 })).toEqual({ kind: 'outside', limit: 'edge', values: { x: 12 } });
    expect(run({ outsideWhen: (x) => x > 11, upTo: () => Number.NaN }).kind).toBe('outside');
    expect(out({ outsideWhen: (x) => x > 11, upTo: () => 13, protects: 'down' })).toMatchObject({ low: 8, high: 10 });
    // Brought back to a place that is outside all the same.
    expect(run({ outsideWhen: (x) => x > 11, upTo: () => 11.5 }).kind).toBe('outside');
  });
  it('as entered past it: the outcome is outside', () => expect(run(upTo(9.9))).toMatchObject({ kind: 'outside', values: { x: 10 } }));
});

it('a small figure beside a huge one is not lost: no two places of the box are taken for one', () => {
  const field = { min: 0, max: 1e30, step: 1, tolerance: guess({ least: 2 }, { least: 2 }) };
  const beside = defineCalculator({
    id: 'beside',
    inputs: { small: quantity('m', { ...field, example: 10 }), huge: quantity('m', { ...field, example: 1e24, tolerance: guess({ share: 0.1 }, { share: 0.1 }) }) },
    outputs: { out: { kind: 'quantity', unit: 'm', protects: 'up', moves: { small: 'up' } } },
    lead: ['out'],
    compute: ({ small }) => answer({ out: small }),
  });
  expect(answered(evaluate(beside, { small: 10, huge: 1e24 })).outputs['out']).toMatchObject({ value: 10, low: 8, high: 12 });
});

describe('no such place', () => {
  it('as entered, or where it protects: no figure', () => {
    expect(out({ value: (x) => (x >= 10 ? null : x) })).toBeNull();
    expect(out({ value: (x) => (x > 11 ? null : x) })).toBeNull();
    expect(out({ value: (x) => (x < 9 ? null : x), protects: 'both' })).toBeNull();
    expect(out({ value: (x) => (x > 11 ? null : x), protects: 'both' })).toBeNull();
  });
  it('only at the end that does not protect: the range from the figure as entered', () => {
    expect(out({ value: (x) => (x < 9 ? null : x) })).toMatchObject({ value: 10, low: 10, high: 12 });
  });
  it('at one end of what bends: no figure', () => {
    expect(out({ value: (x) => (x > 11 ? null : x), moves: { x: 'bends' } })).toBeNull();
    expect(out({ value: (x) => (x < 9 ? null : x), moves: { x: 'bends' } })).toBeNull();
  });
});

describe('a calculator that finds its own ranges', () => {
  const own = (range: { low: number; high: number }, more: Partial<Toy> = {}): Toy =>
    ({ ...more, ranges: () => ({ outputs: { out: { ...range, at: { x: 11 } } }, findings: [], beyond: null }) });

  it('has its word, and its inputs at the end that protects', () => {
    expect(out(own({ low: 7, high: 15 }))).toEqual({ value: 10, low: 7, high: 15, planOn: 15, planAt: { x: 11, y: 5 } });
    expect(out(own({ low: 7, high: 15 }, { protects: 'down' }))).toMatchObject({ planOn: 7 });
    expect(out(own({ low: 7, high: 15 }, { protects: 'both' }))).toEqual({ value: 10, low: 7, high: 15, planOn: null, planAt: null });
  });
  it('never leaves the figure as entered out', () => {
    expect(out(own({ low: 11, high: 12 }))).toMatchObject({ low: 10, high: 12 });
    expect(out(own({ low: 8, high: 9 }))).toMatchObject({ low: 8, high: 10, planOn: 10 });
  });
  it('has no figure where there is none as entered', () => {
    expect(out(own({ low: 7, high: 15 }, { value: () => null }))).toBeNull();
  });
  it('is told the ends of what was guessed', () => {
    let told: unknown;
    run({ ranges: (ends) => { told = ends; return { outputs: {}, findings: [], beyond: null }; } });
    expect(told).toEqual({ x: [8, 12], y: [4, 6] });
  });
  it('names only what it finds itself; the rest is found from corners', () => {
    expect(out({ ranges: () => ({ outputs: {}, findings: [], beyond: null }) })).toMatchObject({ low: 8, high: 12 });
  });
  it('raises its own findings, beside those as entered, and says what lies outside', () => {
    const of: Toy = {
      finding: { level: 'stop', at: 'out' },
      ranges: () => ({ outputs: {}, findings: [false, { id: 'other' }, { id: 'bad', values: { x: 12 } }], beyond: { kind: 'outside', limit: 'edge', values: { x: 13 } } }),
    };
    expect(findings(of)).toEqual([
      { id: 'bad', level: 'stop', values: { x: 12 }, guess: true },
      { id: 'beyondGuess', level: 'caution', values: { x: 13 }, guess: true },
    ]);
    expect(findings({ ...of, raise: () => ({ id: 'bad', values: { x: 10 } }) })[0]).toEqual({ id: 'bad', level: 'stop', values: { x: 12 }, guess: false });
    // No corner is asked: the calculator has looked itself.
    expect(findings({ finding: { level: 'stop', at: 'out' }, raise: (x) => x > 11 && { id: 'bad' }, ranges: () => ({ outputs: {}, findings: [], beyond: null }) })).toEqual([]);
  });
});

describe('an output outside by itself', () => {
  const over = (edge: number) => (x: number) => (x > edge ? outside('edge', { x }) : x);
  it('is said with its limit, and the rest is answered', () =>
    expect(answered(run({ value: over(9) }, 'exact'))).toMatchObject({ outputs: { out: null }, outside: { out: { limit: 'edge', values: { x: 10 } } } }));
  it('where the guess passes the limit on the protecting side, from there', () =>
    expect(answered(run({ value: over(11) }))).toMatchObject({ outputs: { out: null }, outside: { out: { limit: 'edge', values: { x: 12 } } } }));
  it('has its figure where only the other side is passed, and that is said', () => {
    const outcome = answered(run({ value: over(11), protects: 'down' }));
    expect(outcome.outside).toEqual({});
    expect(outcome.outputs['out']).toMatchObject({ value: 10, low: 8, high: 10 });
    expect(outcome.findings.map(({ id }) => id)).toEqual(['beyondGuess']);
  });
  it('names no limit where there is simply no such place', () => expect(answered(run({ value: () => null })).outside).toEqual({}));
});
