import { describe, expect, it } from 'vitest';
import { calculator, calculators, evaluate, example, exampleOf } from '#core/registry.ts';

describe('the registry', () => {
  it('finds by id', () => {
    for (const c of calculators) expect(calculator(c.id)).toBe(c);
    expect(calculator('toString')).toBeUndefined();
  });
  it('gives an example, or names what there is', () => {
    expect(example('reduction')).toMatchObject({ parentDiameter: 80, lateralDiameter: 30, lateralAngle: 45, rule: 'third' });
    for (const c of calculators) expect(Object.keys(example(c.id))).toEqual(Object.keys(c.inputs));
    expect(() => example('reducton')).toThrow('no calculator "reducton"; there are: stance, ');
  });
  it('evaluates by id; unknown ones come from outside and are a problem', () => {
    expect(evaluate('reduction', example('reduction')).kind).toBe('answer');
    expect(evaluate('stance', {}).kind).toBe('problems');
    expect(evaluate('__proto__', {})).toEqual({
      kind: 'problems', problems: [{ input: 'calculator', problem: 'unknownCalculator', values: { calculator: '__proto__' } }],
    });
  });
  it('unless told, takes figures as judged by eye', () => {
    for (const c of calculators) expect(evaluate(c.id, exampleOf(c))).toEqual(evaluate(c.id, exampleOf(c), 'judged'));
  });
});
