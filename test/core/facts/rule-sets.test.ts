/** The mark by which a link names a rule set and the edition of its figures. */
import { describe, expect, it } from 'vitest';
import { readMark, ruleMark, ruleSet, ruleSets, stampOf, type RuleSet } from '#core/facts/rule-sets.ts';

describe('The mark of a rule set', () => {
  const set = ruleSet('au-sa') as RuleSet;
  it('changes with any figure and with nothing else', () => {
    const [first, ...rest] = set.persons.bands;
    expect(stampOf({ ...set, persons: { ...set.persons, bands: [{ ...first!, distance: first!.distance + 0.1 }, ...rest] } })).not.toBe(stampOf(set));
    expect(stampOf({ ...set, unknown: 9 })).not.toBe(stampOf(set));
    expect(stampOf({ ...set, title: 'other', notes: [] } as RuleSet)).toBe(stampOf(set));
  });
  it('is eight digits, one for each set', () => {
    const marks = ruleSets.map(ruleMark);
    for (const mark of marks) expect(mark).toMatch(/^[a-z0-9-]+\.[0-9a-f]{8}$/);
    expect(new Set(marks).size).toBe(marks.length);
  });
  it('is read back: the same, changed since, or gone', () => {
    expect(readMark(ruleMark(set))).toEqual({ id: 'au-sa', changed: false });
    expect(readMark('au-sa.00000000')).toEqual({ id: 'au-sa', changed: true });
    expect(readMark('au-sa')).toEqual({ id: 'au-sa', changed: true });
    expect(readMark('gone.00000000')).toBeNull();
    expect(readMark('')).toBeNull();
  });
});
