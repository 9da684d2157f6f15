import { describe, expect, it } from 'vitest';
import { answer, defineCalculator, outside } from '#core/kit/calculator.ts';
import { choice, guess, label, list, optionalQuantity, quantity } from '#core/kit/inputs.ts';

describe('answer', () => {
  it('drops findings that do not hold', () => {
    expect(answer({ a: 1 }, [false, { id: 'x' }])).toEqual({ kind: 'answer', outputs: { a: 1 }, outside: {}, findings: [{ id: 'x' }], working: [] });
  });
  it('takes text and nothing at all as outputs', () => {
    expect(answer({ a: 'left', b: null })).toMatchObject({ outputs: { a: 'left', b: null } });
  });
  it('takes an output that is outside by itself: no figure, and the limit', () => {
    expect(answer({ a: 1, b: outside('tooLow', { a: 1 }) }))
      .toMatchObject({ outputs: { a: 1, b: null }, outside: { b: { kind: 'outside', limit: 'tooLow', values: { a: 1 } } } });
    expect(() => answer({ b: outside('tooLow', { a: Number.NaN }) })).toThrow('limit "tooLow": "a" is not finite');
  });
  it.each([Number.NaN, Infinity, -Infinity])('refuses %f wherever it stands', (bad) => {
    expect(() => answer({ a: bad })).toThrow('output: "a" is not finite');
    expect(() => answer({ a: 1 }, [{ id: 'x', values: { b: bad } }])).toThrow('finding "x": "b" is not finite');
    expect(() => answer({ a: 1 }, [{ id: 'x', values: { list: [1, bad] } }])).toThrow('finding "x": "list" is not finite');
    expect(() => answer({ a: 1 }, [], [{ id: 's', values: { c: bad }, result: { name: 'a', value: 1 } }])).toThrow('step "s": "c" is not finite');
    expect(() => answer({ a: 1 }, [], [{ id: 's', values: {}, result: { name: 'a', value: bad } }])).toThrow('step "s": "a" is not finite');
  });
});

describe('outside', () => {
  it('names the limit', () => {
    expect(outside('tooLow')).toEqual({ kind: 'outside', limit: 'tooLow', values: {} });
    expect(outside('tooLow', { height: 1 })).toEqual({ kind: 'outside', limit: 'tooLow', values: { height: 1 } });
  });
});

describe('a definition', () => {
  const inputs = { a: quantity('m', { min: 0, max: 1, step: 0.1, example: 0.5 }) };
  const outputs = { b: { kind: 'quantity', unit: 'm', protects: 'up', moves: { a: 'up' } } } as const;
  it('has all its parts, also those not written', () => {
    const made = defineCalculator({ id: 'made', inputs, outputs, lead: ['b'], compute: ({ a }) => answer({ b: a }) });
    expect(made).toMatchObject({ shared: {}, middle: {}, findings: {}, limits: [], exampleGot: 'judged' });
    expect(made.relate({ a: 1 })).toEqual([]);
  });
});

describe('inputs', () => {
  const q = { min: 1, max: 2, step: 0.1, example: 1 };
  it('a quantity cannot be less than nothing, unless its range goes there', () => {
    expect(quantity('m', q)).toMatchObject({ kind: 'quantity', optional: false, floor: 0, ceiling: Infinity, girth: false, tolerance: null });
    expect(quantity('deg', { ...q, min: -25 }).floor).toBe(-Infinity);
    expect(quantity('deg', { ...q, floor: 0.5, ceiling: 3, girth: true })).toMatchObject({ floor: 0.5, ceiling: 3, girth: true });
    expect(optionalQuantity('m', q).optional).toBe(true);
  });
  it('lists and choices', () => {
    expect(choice(['a', 'b'], 'b')).toEqual({ kind: 'choice', options: ['a', 'b'], example: 'b', optional: false });
    expect(list('mm', { min: 1, max: 2, shortest: 1, longest: 3, example: [1] })).toMatchObject({ tolerance: null, floor: 0, girth: false });
    expect(list('mm', { min: 1, max: 2, shortest: 1, longest: 3, example: [1], girth: true, tolerance: guess({ share: 0.1 }, { least: 1 }) }))
      .toMatchObject({ girth: true, tolerance: { judged: { share: 0.1 }, measured: { least: 1 } } });
    expect(label({ minus: 10 })).toEqual({ label: { minus: 10 } });
  });
});
