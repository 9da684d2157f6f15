/** Where sources on pruning differ, the built pages show each rule with how it is known, and the conflict side by side. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import words from '#content/interface.json';
import type { Fact } from '#src/schemas.ts';
import { DIST } from './built.ts';

const page = (path: string): string => readFileSync(join(DIST, path, 'index.html'), 'utf8');
const facts = (topic: string): [string, Fact][] => Object.entries(JSON.parse(readFileSync(`shared/values/${topic}.json`, 'utf8')) as Record<string, Fact>).map(([key, fact]) => [`${topic}.${key}`, fact]);

describe.each([
  ['calculators/crown-share', 'crown', []],
  ['calculators/reduction', 'reduction', []],
  // Ratios of stem and branch belong to chapters; the angles at which it warns stand on its page.
  ['calculators/final-cut', 'union', ['union.codominant-from']],
] as const)('%s', (path, topic, elsewhere: readonly string[]) => {
  const html = page(path);
  it.each(facts(topic).filter(([id]) => !elsewhere.includes(id)))('shows %s with how it is known', (id, fact) => {
    const { says } = words.status[fact.status];
    const marks = [...html.matchAll(new RegExp(`href="[^"]*sources/#fact-${id.replace('.', '\\.')}"[^>]*>(.{0,200}?)</a>`, 'gs'))].map((m) => m[0]);
    // Findings hand their facts to the island as tokens: figure, id, mark, meaning.
    const tokens = html.includes(`|${id}|`) && html.includes(says);
    expect(marks.some((mark) => mark.includes(says)) || tokens).toBe(true);
  });
});

describe('conflicts side by side', () => {
  it('shares of the crown: every limit in one table', () => {
    const [table = ''] = page('calculators/crown-share').match(/<table.*?<\/table>/s) ?? [];
    for (const id of ['mature-a-year', 'middle-a-year', 'young-a-year', 'a-season-1995', 'a-year-2008', 'severe-from', 'permit-from', 'volume-2010']) expect(table, id).toContain(`#fact-crown.${id}"`);
    expect(table).toContain(words.status.memory.says);
  });
  it('no collar, and a twin stem: two rules each on the page of the last cut', () => {
    const html = page('calculators/final-cut');
    for (const id of ['uf-mirror-angle', 'uf-no-collar', 'hamburg-pruning-2002', 'codominant-cut', 'uf-dead-branches']) expect(html, id).toContain(`#source-${id}`);
  });
  it('whose rule applies puts them in a table and says what nobody here saw', () => {
    const html = page('chapters/whose-rule-applies');
    expect(html).toMatch(/<table/);
    expect(html).toContain(words.status.memory.says);
  });
});
