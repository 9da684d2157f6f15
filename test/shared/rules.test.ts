/**
 * The rule sets: their shape, that a file is all it takes to add one, and that none lets an ordinary person come nearer
 * than a qualified worker may.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { filesIn } from '../content/words.ts';
import { bandAt, distanceAt } from '#core/formulas/bands.ts';
import { groundFromPhases } from '#core/formulas/voltage.ts';
import { qualified } from '#core/facts/qualified.ts';
import { type BandTable, type RuleSet, ruleSets } from '#core/facts/rule-sets.ts';
import { ruleSet as shape } from '#src/schemas.ts';
import { json, sourceHomes, topicOf } from './files.ts';
import { ruleIds, ruleListText } from '#src/build/rule-list.mjs';

const files = filesIn('shared/tables/rules', '.json');
const tablesOf = (set: Pick<RuleSet, 'persons' | 'plant'>): BandTable[] => (set.plant ? [set.persons, set.plant] : [set.persons]);

/** What is wrong with the bands of a rule set, as sentences. */
const faults = (set: Pick<RuleSet, 'persons' | 'plant'>): string[] =>
  tablesOf(set).flatMap((table) => [
    ...table.bands.flatMap(({ upTo }, i) => ((upTo ?? Infinity) <= (table.bands[i - 1]?.upTo ?? table.over ?? 0) ? [`edge ${i} does not rise`] : [])),
    ...table.bands.flatMap(({ distance }, i) => (distance < (table.bands[i - 1]?.distance ?? 0) ? [`band ${i} needs less than the one under it`] : [])),
  ]);

describe('Rule sets', () => {
  it('are there, a file each, and the list of them is what the files say', () => {
    expect(files.length).toBeGreaterThanOrEqual(20);
    expect(ruleSets.map(({ id }) => id)).toEqual(files.map(topicOf).sort());
    expect(readFileSync('src/core/facts/rule-list.ts', 'utf8')).toBe(ruleListText(ruleIds()));
  });

  it.each(files)('%s has the shape of one', (file) => expect(shape.safeParse(json(file)).error).toBeUndefined());

  it.each(files)('%s names sources that exist, and none only where it is from memory', (file) => {
    const set = shape.parse(json(file));
    const homes = [...sourceHomes().keys()];
    for (const band of tablesOf(set as unknown as RuleSet).flatMap((t) => t.bands)) {
      const source = band.source ?? set.source;
      if (band.status === 'memory') continue;
      expect(homes).toContain(source);
    }
  });

  it.each(ruleSets.map((set) => [set.id, set] as const))('%s rises with the voltage', (_, set) => expect(faults(set)).toEqual([]));

  it.each(ruleSets.map((set) => [set.id, set] as const))('%s: where published, never nearer than a qualified worker keeps to one phase', (_, set) => {
    for (const table of tablesOf(set)) {
      for (const row of [...qualified.r6, ...qualified.r7]) {
        const counted = table.basis === 'to-ground' ? groundFromPhases(row.upTo) : row.upTo;
        const band = bandAt(table, counted);
        if (typeof band === 'string' || band.status !== 'published' || row.phaseToGround === null) continue;
        expect(distanceAt(band, counted), `${row.upTo} kV`).toBeGreaterThanOrEqual(row.phaseToGround);
      }
    }
  });
});
