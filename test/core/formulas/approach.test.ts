/** What a rule set asks, on a set of our own, small enough to see through. */
import { describe, expect, it } from 'vitest';
import { type BandTable, type RuleSet, ruleSets } from '#core/facts/rule-sets.ts';
import { asked } from '#core/formulas/approach.ts';

const table = (...bands: [number | null, number][]): BandTable =>
  ({ basis: 'between-phases', bands: bands.map(([upTo, distance]) => ({ upTo, distance, status: 'published' })) });
const set = (persons: BandTable, plant?: BandTable): RuleSet => ({ ...(ruleSets[0] as RuleSet), persons, ...(plant ? { plant } : { plant: undefined }) } as RuleSet);
const at = (of: RuleSet, voltage: number, from: 'ground' | 'platform') => {
  const answer = asked(of, { kind: 'threePhase', voltage }, from);
  return typeof answer === 'string' ? answer : [answer.table, answer.distance];
};

describe('what a set asks', () => {
  const both = set(table([33, 3], [110, 4]), table([33, 6], [66, 2]));
  it('from the ground, for persons', () => {
    expect(at(both, 33, 'ground')).toEqual(['persons', 3]);
    expect(at(both, 34, 'ground')).toEqual(['persons', 4]);
  });
  it('from a platform, the larger of the two', () => {
    expect(at(both, 33, 'platform')).toEqual(['plant', 6]);
    expect(at(both, 66, 'platform')).toEqual(['persons', 4]);
  });
  it('from a platform, nothing where the set says nothing for plant at that voltage: what it says for persons is not carried over', () => {
    expect(at(both, 110, 'platform')).toBe('above');
    expect(at(both, 110, 'ground')).toEqual(['persons', 4]);
  });
  it('from a platform, for persons where the set has no table for plant', () => {
    expect(at(set(table([33, 3])), 33, 'platform')).toEqual(['persons', 3]);
  });
  it('beyond the last band, above', () => {
    expect(at(both, 111, 'ground')).toBe('above');
    expect(at(both, 111, 'platform')).toBe('above');
  });
});
