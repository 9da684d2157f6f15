/** The tables of stand-off, bar, lateral and weight against figures worked by hand with four-figure tables. */
import { describe, expect, it } from 'vitest';
import { tablePages } from '#components/reckoner/pages.ts';
import species from '#shared/tables/species.json' with { type: 'json' };

const table = (id: string, key: string, only?: 'metric' | 'imperial') =>
  tablePages.find((p) => p.id === id)!.tables.find((t) => t.id === key && (only === undefined || t.only === only))!;
/** The metric text in the row and column headed so. */
const cell = (of: ReturnType<typeof table>, row: string, column: string): string | undefined =>
  of.rows.find((r) => r[0]!.metric === row)?.[of.heads.findIndex((h) => h.metric === column || h.word === column)]?.metric;

describe('Stand-off', () => {
  // A tape reads 0.1 m out, the grip 0.05 m, a level 1°: (3.6 − 1.05) ÷ (1.7321 − 0.0175) = 1.487; at 20°, 2.55 ÷ (1.7321 − 0.3839) = 1.891.
  it.each([['0°', '1.5 m'], ['20°', '1.9 m']])('3.5 m up, ground at %s: %s, rounded up', (rise, expected) =>
    expect(cell(table('stand-off', 'nearest', 'metric'), '3.5\u00a0m', rise)).toBe(expected.replace(' ', '\u00a0')));
  // 1.05 + 2.95 × (0.8660 − 0.5000 × 0.0175) = 3.579.
  it('a pole of 3 m on the level makes 3.5 m, rounded down', () =>
    expect(cell(table('stand-off', 'highest', 'metric'), '3.0\u00a0m', '0°')).toBe('3.5\u00a0m'));
  // Furthest at 3.5 m with 3.5 m of pole: √(3.45² − 2.55²) = 2.324 on the level; with the ground rising a degree a little less.
  it('from nearest to furthest stays within what the pole reaches', () =>
    expect(cell(table('stand-off', 'pole', 'metric'), '3.5\u00a0m', '3.5\u00a0m')).toMatch(/^1\.5\u00a0m to 2\.[23]\u00a0m$/));
  it('there is a dash exactly where the highest cut of that pole is lower', () => {
    const [between, highest] = [table('stand-off', 'pole', 'metric'), table('stand-off', 'highest', 'metric')];
    let dashes = 0;
    for (const row of between.rows) {
      row.slice(1).forEach((found, i) => {
        const reach = parseFloat(cell(highest, between.head[i + 1]!.metric, '0°')!);
        const beyond = parseFloat(row[0]!.metric) > reach + 1e-9;
        // Within a tape's error of the highest cut the two ends may cross: no room is left either.
        if (beyond) expect(found.metric).toBe('–');
        else if (parseFloat(row[0]!.metric) < reach - 0.2) expect(found.metric).not.toBe('–');
        if (found.metric === '–') dashes++;
      });
    }
    expect(dashes).toBeGreaterThan(5);
  });
});

describe('Bar and limb', () => {
  // A bar sold as 250 mm may cut 240; less 50 to spare, 190; 15° judged within 5°: cos 20° = 0.9397, 178.5.
  it('a 250 mm bar, 15° off square: 178 mm', () => expect(cell(table('bar-and-limb', 'largest', 'metric'), '250\u00a0mm', '15°')).toBe('178\u00a0mm'));
  // A tape on 100 mm is out by 3 mm: 103 ÷ cos 5° (0.9962) + 50 = 153.4.
  it('a limb of 100 mm cut square: 154 mm', () => expect(cell(table('bar-and-limb', 'needed', 'metric'), '100\u00a0mm', '0°')).toBe('154\u00a0mm'));
});

describe('Smallest lateral', () => {
  // 60 mm read 2 mm short is 62: a third 20.67, a half 31.
  it.each([['at the usual share', '21\u00a0mm'], ['where more is asked', '31\u00a0mm']])('60 mm, %s: %s', (column, expected) =>
    expect(cell(table('smallest-lateral', 'smallest', 'metric'), '60\u00a0mm', column)).toBe(expected));
  // 20 mm may be 18: three times is 54, twice 36.
  it('20 mm does for a limb of 54 mm', () => expect(cell(table('smallest-lateral', 'largest', 'metric'), '20\u00a0mm', 'at the usual share')).toBe('54\u00a0mm'));
});

describe('Green weight', () => {
  // A metre of 100 mm is 7.854 litres: at 1000 kg/m³, 7.854 kg.
  it('100 mm at 1000 kg/m³: 7.9 kg/m, rounded up', () => expect(cell(table('green-weight', 'weight', 'metric'), '1000\u00a0kg/m³', '100\u00a0mm')).toBe('7.9\u00a0kg/m'));
  const [weight, list] = [table('green-weight', 'weight', 'metric'), table('green-weight', 'species').list!];
  it('every tree on file is listed once, under a row that is there, and one that is not known under the last', () => {
    expect(list.map(({ name }) => name).filter((name) => name !== null).sort()).toEqual(species.rows.map(({ common }) => common).sort());
    const rows = weight.rows.map((row) => row[0]!.metric.replace('\u00a0kg/m³', ''));
    expect(list.filter(({ metric }) => !rows.includes(metric))).toEqual([]);
    expect(list.find(({ name }) => name === null)?.metric).toBe(rows.at(-1));
  });
  it('no published figure of a tree is heavier than its row', () => {
    const lighter = species.rows.filter((tree) => {
      const row = parseFloat(list.find(({ name }) => name === tree.common)!.metric);
      return Math.max(tree.basic, tree.green ?? 0, tree.heart ?? 0, tree.sap ?? 0) > row;
    });
    expect(lighter).toEqual([]);
  });
});
