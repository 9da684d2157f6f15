import { describe, expect, it } from 'vitest';
import { answer, defineCalculator, type GotSet, outside, type RawFinding } from '#core/kit/calculator.ts';
import { guess, list } from '#core/kit/inputs.ts';
import { evaluate } from '#core/kit/outcome.ts';
import { answered, at, findings, run, toy, type Toy } from './toy.ts';

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
