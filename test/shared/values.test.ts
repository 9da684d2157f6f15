import { describe, expect, it } from 'vitest';
import { units } from '#core/kit/units.ts';
import type { Fact } from '#src/schemas.ts';
import { checks, facts, sources } from '#src/schemas.ts';
import { allFacts, checkFiles, json, sourceFiles, sourceHomes, topicOf, valueFiles } from './files.ts';

const known = [...allFacts()];
const ends = (value: number | [number, number]): number[] => [value].flat();

/** Metres, degrees Celsius … of one of a unit a source may print. Exact by the agreement of 1959. */
const printed: Record<string, { unit: string; of: (x: number) => number }> = {
  in: { unit: 'mm', of: (x) => x * 25.4 },
  ft: { unit: 'm', of: (x) => x * 0.3048 },
  V: { unit: 'kV', of: (x) => x / 1000 },
  lb: { unit: 'kg', of: (x) => x * 0.45359237 },
  'lb/ft3': { unit: 'kg/m3', of: (x) => (x * 0.45359237) / 0.3048 ** 3 },
  degF: { unit: 'degC', of: (x) => (x - 32) / 1.8 },
  mph: { unit: 'm/s', of: (x) => x * 0.44704 },
};
const metres: Record<string, number> = { m: 1, mm: 0.001 };
const inUnit = (x: number, from: string, to: string): number => (from === to ? x : (x * (metres[from] ?? NaN)) / (metres[to] ?? NaN));

describe('Files of shared/', () => {
  it.each(sourceFiles)('%s holds sources', (file) => expect(sources.safeParse(json(file)).error).toBeUndefined());
  it.each(valueFiles)('%s holds facts', (file) => expect(facts.safeParse(json(file)).error).toBeUndefined());
  it.each(checkFiles)('%s holds checks', (file) => expect(checks.safeParse(json(file)).error).toBeUndefined());

  it('are there at all', () => {
    expect(sourceFiles.length).toBeGreaterThanOrEqual(4);
    expect(valueFiles.length).toBeGreaterThanOrEqual(10);
    expect(known.length).toBeGreaterThanOrEqual(30);
  });

  it.each(checkFiles)('%s is named after its calculator', (file) =>
    expect((json(file) as { calculator: string }).calculator).toBe(topicOf(file)));

  it('name each source once', () =>
    expect([...sourceHomes()].filter(([, homes]) => homes.length > 1)).toEqual([]));
});

describe.each(known)('The fact %s', (id, fact: Fact) => {
  it('has a unit we can show', () => expect([...Object.keys(units), 'share']).toContain(fact.unit));

  it('is a finite number, or a range from low to high', () => {
    const [low, high = Infinity] = ends(fact.value);
    expect(ends(fact.value).every(Number.isFinite)).toBe(true);
    expect(low).toBeLessThan(high);
  });

  it('names a source that exists, if it names one', () => {
    if (fact.source !== undefined) expect([...sourceHomes().keys()]).toContain(fact.source);
  });

  it('says to which side it is rounded when shown, if it had to be converted: no source prints so many places', () => {
    if (!fact.as || fact.protects) return;
    for (const x of ends(fact.value)) expect(Number(x.toFixed(2))).toBe(x);
  });

  it('agrees with the figure as printed, within the rounding of trade sizes (2 %)', () => {
    if (!fact.as) return;
    const unit = printed[fact.as.unit];
    if (!unit) throw new Error(`${id}: nothing is known of the unit "${fact.as.unit}"`);
    const wanted = ends(fact.as.value).map((x) => inUnit(unit.of(x), unit.unit, fact.unit));
    expect(wanted).toHaveLength(ends(fact.value).length);
    ends(fact.value).forEach((x, i) => expect(Math.abs(x / (wanted[i] as number) - 1)).toBeLessThan(0.02));
  });

  it('says what it is without a figure in it', () => expect(fact.says.replace(/\b(19|20)\d\d\b/g, '')).not.toMatch(/\d/));
});
