import { describe, expect, it } from 'vitest';
import {
  answer, defineCalculator, type Computed, type FindingDefinition, type GotSet, type Move, outside, type Protects, type RawFinding,
} from '#core/kit/calculator.ts';
import { guess, list, quantity } from '#core/kit/inputs.ts';
import { type Answer, evaluate, type Outcome, type Quantity } from '#core/kit/outcome.ts';

/** x is 10 ± 2 by eye, ± 1 measured; y is 5 ± 1 by eye. Every expectation below is worked by hand from that. */
type Toy = {
  value?: (x: number, y: number) => number | null;
  moves?: { x?: Move; y?: Move };
  turns?: { x?: (inputs: never) => number };
  protects?: Protects;
  outsideWhen?: (x: number, y: number) => boolean;
  finding?: FindingDefinition;
  raise?: (x: number, y: number) => RawFinding | false;
};
const toy = ({ value = (x) => x, moves = { x: 'up' }, turns, protects = 'up', outsideWhen = () => false, finding, raise = () => false }: Toy) =>
  defineCalculator({
    id: 'toy',
    inputs: {
      x: quantity('m', { min: 0, max: 100, step: 1, example: 10, tolerance: guess({ least: 2 }, { least: 1 }) }),
      y: quantity('m', { min: 0, max: 100, step: 1, example: 5, tolerance: guess({ least: 1 }, { least: 0 }) }),
    },
    outputs: { out: { kind: 'quantity', unit: 'm', protects, moves, ...(turns ? { turns } : {}) } },
    lead: ['out'],
    findings: finding ? { bad: finding } : {},
    limits: ['edge'],
    compute: ({ x, y }): Computed<'out'> =>
      outsideWhen(x, y)
        ? outside('edge', { x })
        : answer({ out: value(x, y) }, [raise(x, y)], [{ id: 'step', values: { x, y }, result: { name: 'out', value: value(x, y) ?? 0 } }]),
  });
const at = { x: 10, y: 5 };
const run = (of: Toy, got: GotSet = 'judged'): Outcome => evaluate(toy(of), at, got);
const answered = (outcome: Outcome): Answer => {
  if (outcome.kind !== 'answer') throw new Error(`${outcome.kind}: ${JSON.stringify(outcome)}`);
  return outcome;
};
const out = (of: Toy, got: GotSet = 'judged') => answered(run(of, got)).outputs['out'] as Quantity | null;
const findings = (of: Toy) => answered(run(of)).findings;

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

describe('findings', () => {
  const raise = (when: (x: number) => boolean) => (x: number): RawFinding | false => when(x) && { id: 'bad', values: { x } };

  it('without `at` the figures as entered decide alone', () => {
    expect(findings({ finding: { level: 'stop' }, raise: raise((x) => x > 11) })).toEqual([]);
    expect(findings({ finding: { level: 'stop' }, raise: raise((x) => x >= 10) })).toEqual([{ id: 'bad', level: 'stop', values: { x: 10 }, guess: false }]);
  });
  it('at an output: its protecting corner decides too, and says it is the guess', () => {
    const of: Toy = { finding: { level: 'stop', at: 'out' }, raise: raise((x) => x > 11) };
    expect(findings(of)).toEqual([{ id: 'bad', level: 'stop', values: { x: 12 }, guess: true }]);
    expect(findings({ ...of, protects: 'down' })).toEqual([]);
    expect(findings({ ...of, protects: 'both' })).toEqual([{ id: 'bad', level: 'stop', values: { x: 12 }, guess: true }]);
    expect(findings({ ...of, value: () => null })).toEqual([{ id: 'bad', level: 'stop', values: { x: 12 }, guess: true }]);
  });
  it('raised by both, it carries the worse figures and is no guess', () => {
    expect(findings({ finding: { level: 'stop', at: 'out' }, raise: raise((x) => x > 9) })).toEqual([{ id: 'bad', level: 'stop', values: { x: 12 }, guess: false }]);
  });
  it('at directions: the way each input makes it worse; what is not named stays', () => {
    expect(findings({ finding: { level: 'caution', at: { x: 'down' } }, raise: raise((x) => x < 9) })).toEqual([{ id: 'bad', level: 'caution', values: { x: 8 }, guess: true }]);
    expect(findings({ finding: { level: 'caution', at: { x: 'up' } }, raise: raise((x) => x < 9) })).toEqual([]);
    expect(findings({ finding: { level: 'caution', at: { y: 'up' } }, raise: (x, y) => x === 10 && y === 6 && { id: 'bad' } }))
      .toEqual([{ id: 'bad', level: 'caution', values: {}, guess: true }]);
  });
  it('raised as entered but not at the worse corner, it stands', () => {
    expect(findings({ finding: { level: 'note', at: { x: 'up' } }, raise: raise((x) => x === 10) })).toEqual([{ id: 'bad', level: 'note', values: { x: 10 }, guess: false }]);
  });
  it('a deciding corner that is outside raises nothing itself', () => {
    const of: Toy = { finding: { level: 'stop', at: { x: 'down' } }, raise: raise((x) => x < 9), outsideWhen: (x) => x < 9 };
    expect(findings(of).map((f) => f.id)).toEqual(['beyondGuess']);
  });
  it('stops first, then cautions, then notes', () => {
    const many = defineCalculator({
      ...toy({}),
      findings: { note: { level: 'note' }, stop: { level: 'stop' }, caution: { level: 'caution' } },
      compute: ({ x }) => answer({ out: x }, [{ id: 'note' }, { id: 'caution' }, { id: 'stop' }]),
    });
    expect(answered(evaluate(many, at, 'exact')).findings.map((f) => f.id)).toEqual(['stop', 'caution', 'note']);
  });
});

describe('the working', () => {
  it('is that of the figures as entered, then what the guesses add', () => {
    expect(answered(run({})).working).toEqual([
      { id: 'step', values: { x: 10, y: 5 }, result: { name: 'out', value: 10 } },
      { id: 'allowing', values: { x: 12 }, result: { name: 'out', value: 12 } },
    ]);
  });
  it('adds nothing where there is nothing to add', () => {
    const steps = (of: Toy, got: GotSet = 'judged') => answered(run(of, got)).working.map((s) => s.id);
    expect(steps({}, 'exact')).toEqual(['step']);
    expect(steps({ protects: 'both' })).toEqual(['step']);
    expect(steps({ value: () => null })).toEqual(['step']);
    expect(steps({ value: () => 3, moves: {} })).toEqual(['step']);
  });
});

describe('choices and lists', () => {
  const side = defineCalculator({
    id: 'side',
    inputs: toy({}).inputs,
    outputs: {
      which: { kind: 'choice', options: ['left', 'middle', 'right'], moves: { x: 'up' } },
      other: { kind: 'choice', options: ['left', 'middle', 'right'], moves: {} },
    },
    lead: ['which'],
    findings: { turned: { level: 'note', at: 'which' } },
    limits: ['edge'],
    compute: ({ x }) => {
      if (x > 50) return outside('edge');
      const which = x < 9 ? 'left' : x > 11 ? 'right' : 'middle';
      return answer({ which, other: x === 7 ? null : which }, [which !== 'middle' && { id: 'turned' }]);
    },
  });
  const which = (x: number, got: GotSet = 'judged') => answered(evaluate(side, { x, y: 5 }, got)).outputs;

  it('says what else the tolerance allows', () => {
    expect(which(10)['which']).toEqual({ value: 'middle', also: ['left', 'right'] });
    expect(which(10, 'exact')['which']).toEqual({ value: 'middle', also: [] });
    expect(which(12)['which']).toEqual({ value: 'right', also: ['middle'] }); // 10 to 14
    expect(which(10)['other']).toEqual({ value: 'middle', also: [] });
  });
  it('none where there is none', () => {
    expect(which(7, 'exact')['other']).toBeNull();
  });
  it('a corner outside, or with none, adds nothing', () => {
    expect(which(49)['which']).toEqual({ value: 'right', also: [] });
    expect(answered(evaluate(side, { x: 49, y: 5 }, 'judged')).findings.map((f) => f.id)).toContain('beyondGuess');
    expect(which(9)['other']).toEqual({ value: 'middle', also: [] });
  });
  it('has no corner of its own for findings', () => {
    expect(answered(evaluate(side, { x: 10, y: 5 }, 'judged')).findings).toEqual([]);
  });

  const sum = defineCalculator({
    id: 'sum',
    inputs: { cuts: list('mm', { min: 0, max: 400, shortest: 1, longest: 5, example: [10, 20], tolerance: guess({ share: 0.1, least: 2 }, { least: 1 }) }) },
    outputs: { total: { kind: 'quantity', unit: 'mm', protects: 'up', moves: { cuts: 'up' } } },
    lead: ['total'],
    compute: ({ cuts }) => answer({ total: cuts.reduce((a, b) => a + b, 0) }),
  });
  it('a list: all too large or all too small together', () => {
    expect(answered(evaluate(sum, { cuts: [10, 50] }, 'judged')).outputs['total'])
      .toEqual({ value: 60, low: 53, high: 67, planOn: 67, planAt: { cuts: [12, 55] } });
  });
});

describe('an outcome as data', () => {
  it('survives JSON, whichever it is', () => {
    const outcomes = [run({}), run({ outsideWhen: () => true }), evaluate(toy({}), { x: Number.NaN }, 'judged'), run({ value: () => null }), run({ protects: 'both' })];
    expect(outcomes.map((o) => o.kind)).toEqual(['answer', 'outside', 'problems', 'answer', 'answer']);
    for (const outcome of outcomes) expect(JSON.parse(JSON.stringify(outcome))).toStrictEqual(outcome);
  });
  it('leaves the inputs given alone', () => {
    const given = Object.freeze({ x: 10, y: 5 });
    expect(() => evaluate(toy({}), given, 'judged')).not.toThrow();
  });
});
