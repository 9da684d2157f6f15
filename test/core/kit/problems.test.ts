import { describe, expect, it } from 'vitest';
import { answer, defineCalculator } from '#core/kit/calculator.ts';
import { choice, list, optionalQuantity, quantity } from '#core/kit/inputs.ts';
import { evaluate, type Inputs } from '#core/kit/outcome.ts';
import { checkInputs } from '#core/kit/problems.ts';

const toy = defineCalculator({
  id: 'toy',
  inputs: {
    small: quantity('m', { min: 1, max: 10, step: 0.1, example: 2 }),
    large: quantity('m', { min: 1, max: 10, step: 0.1, example: 3 }),
    side: choice(['left', 'right'], 'left'),
    load: optionalQuantity('kg', { min: 0, max: 100, step: 1, example: 10 }),
    cuts: list('mm', { min: 5, max: 400, shortest: 1, longest: 3, example: [60] }),
  },
  outputs: { sum: { kind: 'quantity', unit: 'm', protects: 'up', moves: { small: 'up', large: 'up' } } },
  lead: ['sum'],
  relate: ({ small, large }) => (small > large ? [{ input: 'small', problem: 'order', values: { large } }] : []),
  compute: ({ small, large }) => answer({ sum: small + large }),
});
const good: Inputs = { small: 2, large: 3, side: 'left', load: null, cuts: [60] };
const check = (change: { [name: string]: unknown }) =>
  checkInputs(toy, { ...good, ...change } as Inputs).map((p) => `${p.input}: ${p.problem}`);

describe('problems at named inputs', () => {
  it('none with good inputs; the ends of the range are in it', () => {
    expect(check({})).toEqual([]);
    expect(check({ small: 1, large: 10, load: 100, cuts: [5, 400] })).toEqual([]);
  });
  it.each<[string, unknown, string[]]>([
    ['small', undefined, ['small: missing']], ['small', null, ['small: missing']],
    ['small', Number.NaN, ['small: notNumber']], ['small', Infinity, ['small: notNumber']], ['small', '2', ['small: notNumber']],
    ['small', {}, ['small: notNumber']], ['small', true, ['small: notNumber']],
    ['small', 0.999, ['small: tooSmall']], ['small', -1, ['small: tooSmall']], ['large', 1e300, ['large: tooLarge']],
    ['side', 'up', ['side: notChoice']], ['side', 1, ['side: notChoice']], ['side', null, ['side: missing']], ['side', 'toString', ['side: notChoice']],
    ['load', undefined, []], ['load', null, []], ['load', -1, ['load: tooSmall']],
    ['cuts', null, ['cuts: missing']], ['cuts', 60, ['cuts: notNumber']], ['cuts', '60', ['cuts: notNumber']],
    ['cuts', [], ['cuts: tooFew']], ['cuts', [6, 7, 8, 9], ['cuts: tooMany']],
    ['cuts', [6, Number.NaN, 1], ['cuts: notNumber']], ['cuts', [1, 900], ['cuts: tooSmall']], ['cuts', [900], ['cuts: tooLarge']],
  ])('%s = %s', (name, value, expected) => {
    expect(check({ [name]: value })).toEqual(expected);
  });
  it('every field at once, in the order of the form', () => {
    expect(check({ cuts: [], small: 0, side: 'up' })).toEqual(['small: tooSmall', 'side: notChoice', 'cuts: tooFew']);
  });
  it('a range problem carries its range', () => {
    expect(checkInputs(toy, { ...good, small: 0 })).toEqual([{ input: 'small', problem: 'tooSmall', values: { min: 1, max: 10 } }]);
  });
  it('inputs are held against one another only when each is good', () => {
    expect(check({ small: 5 })).toEqual(['small: order']);
    expect(check({ small: 5, side: 'up' })).toEqual(['side: notChoice']);
  });
  it('evaluate hands them on, and ignores what the calculator does not know', () => {
    expect(evaluate(toy, {})).toMatchObject({ kind: 'problems', problems: [{ input: 'small' }, { input: 'large' }, { input: 'side' }, { input: 'cuts' }] });
    expect(evaluate(toy, { ...good, other: 5 })).toMatchObject({ kind: 'answer' });
  });
});
