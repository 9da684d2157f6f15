import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { documents, filesIn, strings } from '../content/words.ts';
import { allChecks, allFacts, json, sourceHomes } from './files.ts';

const words = [...documents('chapters', '.mdx'), ...documents('calculators', '.mdx'), ...documents('cards', '.mdx'), ...documents('lessons', '.mdx'), ...documents('terms', '.md')];
const facts = allFacts();
const tables = filesIn('shared/tables', '.json');
const tablePages = filesIn('content/tables', '.json').flatMap((file) => strings(json(file)).map(([, s]) => s));

/** Everything in quotes in the code that may read facts. */
const quoted = new Set(
  [...filesIn('src', '.ts'), ...filesIn('src', '.tsx'), ...filesIn('src', '.astro')]
    .flatMap((file) => [...readFileSync(file, 'utf8').matchAll(/(['"`])([^'"`\n]+)\1/g)].map((m) => m[2] as string)),
);
const inWords = (id: string): boolean => words.some((w) => w.body.includes(`"${id}"`) || w.body.includes(`{${id}}`) || strings(w.front).some(([, s]) => s.includes(`{${id}}`)))
  || tablePages.some((s) => s.includes(`{${id}}`));

describe('What shared/ holds is used', () => {
  it.each([...facts.keys()])('the fact %s: in words or in code', (id) =>
    expect(inWords(id) || quoted.has(id) || quoted.has(id.split('.')[1] as string)).toBe(true));

  it('every source is cited by a fact, a table, a check or words', () => {
    const cited = new Set([
      ...[...facts.values()].map((f) => f.source),
      ...allChecks().flatMap((c) => c.rows.map((r) => r.source)),
      ...tables.flatMap((file) => strings(json(file)).map(([, s]) => s)),
      ...tablePages,
      ...words.flatMap((w) => (Array.isArray(w.front.sources) ? w.front.sources : [])),
      ...words.flatMap((w) => [...w.body.matchAll(/<Source id="([^"]+)"/g)].map((m) => m[1])),
    ]);
    expect([...sourceHomes().keys()].filter((id) => !cited.has(id))).toEqual([]);
  });

  it('every source a check cites exists', () =>
    expect(allChecks().flatMap((c) => c.rows.map((r) => r.source)).filter((s) => s !== undefined && !sourceHomes().has(s))).toEqual([]));
});
