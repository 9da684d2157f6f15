import { describe, expect, it } from 'vitest';
import { answer, defineCalculator } from '#core/kit/calculator.ts';
import { choice, list, quantity } from '#core/kit/inputs.ts';
import { figureNamed } from '#core/kit/names.ts';

const toy = defineCalculator({
  id: 'toy',
  inputs: {
    height: quantity('m', { min: 0, max: 5, step: 0.1, example: 1 }),
    cuts: list('mm', { min: 1, max: 400, shortest: 1, longest: 4, example: [60] }),
    side: choice(['left', 'right'], 'left'),
  },
  outputs: {
    up: { kind: 'quantity', unit: 'kg', step: 0.5, imperialStep: 2, protects: 'up', moves: {} },
    down: { kind: 'quantity', unit: 'kg', protects: 'down', moves: {} },
    both: { kind: 'quantity', unit: 'kg', protects: 'both', moves: {} },
    which: { kind: 'choice', options: ['a'], moves: {} },
  },
  lead: ['up'],
  middle: { rise: 'deg' },
  compute: () => answer({ up: 1, down: 1, both: 1, which: 'a' }),
});

describe('a figure by its name', () => {
  it('an output is rounded the way that protects', () => {
    expect(figureNamed(toy, 'up')).toEqual({ unit: 'kg', step: 0.5, imperialStep: 2, direction: 'up' });
    expect(figureNamed(toy, 'down')).toMatchObject({ direction: 'down' });
    expect(figureNamed(toy, 'both')).toMatchObject({ direction: 'nearest' });
  });
  it('an input or an intermediate figure to the nearest', () => {
    expect(figureNamed(toy, 'height')).toEqual({ unit: 'm', direction: 'nearest' });
    expect(figureNamed(toy, 'cuts')).toEqual({ unit: 'mm', direction: 'nearest' });
    expect(figureNamed(toy, 'rise')).toEqual({ unit: 'deg', direction: 'nearest' });
  });
  it('a choice is no figure, and an unknown name is a fault of ours', () => {
    expect(figureNamed(toy, 'side')).toBeNull();
    expect(figureNamed(toy, 'which')).toBeNull();
    expect(() => figureNamed(toy, 'weight')).toThrow('toy has no figure named "weight"');
  });
});
