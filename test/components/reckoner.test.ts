import { describe, expect, it } from 'vitest';
import { tablePages } from '#components/reckoner/pages.ts';
import type { Cell } from '#components/reckoner/table.ts';
import chillChart from '#shared/tables/nws-wind-chill.json' with { type: 'json' };
import heatChart from '#shared/tables/nws-heat-index.json' with { type: 'json' };
import canada from '#shared/tables/canada-noise-times.json' with { type: 'json' };
import usTimes from '#shared/tables/us-noise-times.json' with { type: 'json' };
import wbgt1989 from '#shared/tables/wbgt-1989.json' with { type: 'json' };
import wbgt2017 from '#shared/tables/wbgt-2017.json' with { type: 'json' };
import wbgtOld from '#shared/tables/wbgt-old-limits.json' with { type: 'json' };

const page = (id: string) => tablePages.find((p) => p.id === id)!;
const table = (id: string, key: string, only?: string) => page(id).tables.find((t) => t.id === key && t.only === only)!;
const numberIn = (text: string): number => Number(text.replace('\u2212', '-').replace(/[^\d.-].*$/, ''));
/** The cell in the row and column headed so, in one unit system. */
const cell = (of: ReturnType<typeof table>, row: number, column: number, system: 'metric' | 'imperial'): Cell | undefined => {
  const at = of.head.findIndex((h, i) => i > 0 && numberIn(h[system]) === column);
  return of.rows.find((r) => numberIn(r[0]![system]) === row)?.[at];
};

describe.each(tablePages.flatMap((p) => p.tables.map((t) => [`${p.id}, ${t.title}${t.only ? `, ${t.only}` : ''}`, t] as const)))('%s', (_, t) => {
  it('heads every column and fills every cell in both unit systems', () => {
    expect(t.list?.length ?? t.rows.length).toBeGreaterThan(3);
    for (const row of t.rows) {
      expect(row.length).toBe(t.heads.length);
      for (const { metric, imperial } of row) expect([metric, imperial].join()).not.toMatch(/NaN|Infinity|undefined|null|^,|,$/);
    }
    for (const head of t.heads.slice(1)) expect(head.word || head.metric).not.toBe('');
  });
});

describe('Ready-reckoners against published tables', () => {
  it('points: 5 m/s² for 180 min is 150, and the limit is boxed where 400 points are reached (HSE)', () => {
    const points = table('vibration', 'points');
    expect(cell(points, 5, 180, 'metric')?.metric).toBe('150');
    expect(cell(points, 5, 480, 'metric')).toEqual({ metric: '400', imperial: '400', over: 'limit' });
    expect(cell(points, 2.5, 480, 'metric')?.over).toBe('action');
    expect(cell(points, 2, 480, 'metric')?.over).toBeUndefined();
  });

  it('heat index: the cells of the NWS chart up to 85 % humidity, rounded up at most a degree', () => {
    const ours = table('weather', 'heat', 'imperial');
    let compared = 0;
    for (const [air, ...cells] of heatChart.rows) {
      cells.forEach((printed, i) => {
        const humidity = Number(heatChart.columns[i + 1]!.key.slice(2));
        const found = cell(ours, air as number, humidity, 'imperial');
        if (printed === null || humidity > 85 || !found) return;
        expect(Math.abs(numberIn(found.imperial) - printed), `${air} °F, ${humidity} %`).toBeLessThanOrEqual(1);
        compared++;
      });
    }
    expect(compared).toBeGreaterThan(20);
  });
  it('heat index: a dash beyond the highest figure of the chart', () =>
    expect(cell(table('weather', 'heat', 'imperial'), 108, 60, 'imperial')?.imperial).toBe('–'));

  it('wind chill: the cells of the NWS chart, rounded down at most a degree', () => {
    const ours = table('weather', 'chill', 'imperial');
    let compared = 0;
    for (const [air, ...cells] of chillChart.rows) {
      cells.forEach((printed, i) => {
        const found = cell(ours, air as number, Number(chillChart.columns[i + 1]!.key.slice(2)), 'imperial');
        if (!found || printed === null) return;
        expect(printed - numberIn(found.imperial), `${air} °F`).toBeGreaterThanOrEqual(0);
        expect(printed - numberIn(found.imperial), `${air} °F`).toBeLessThanOrEqual(1);
        compared++;
      });
    }
    expect(compared).toBeGreaterThanOrEqual(24);
  });

  it.each([['usLaw', 1, usTimes.rows], ['canada', 5, canada.rows]] as const)('times of noise stand as printed, %s', (_, column, rows) => {
    const times = table('noise', 'times');
    let compared = 0;
    for (const [level, hours] of rows) {
      const row = times.rows.find((r) => numberIn(r[0]!.metric) === level);
      if (!row || (hours as number) > 24) continue;
      expect(row[column]!.metric).toBe(`${hours}\u00a0h`);
      compared++;
    }
    expect(compared).toBeGreaterThan(5);
  });
  it('shows no time above the level where the federal table of Canada stops', () => {
    const times = table('noise', 'times');
    expect(times.rows.filter((r) => numberIn(r[0]!.metric) > 102).every((r) => r[5]!.metric === '–')).toBe(true);
  });
});

describe('Work limits in heat keep to their editions', () => {
  it('the edition of 1989 depends on the air for heavy work; that of 2017 has one figure', () => {
    expect(wbgt1989.rows.filter(([, used]) => /still|moving/.test(used as string))).toHaveLength(2);
    expect(wbgt2017.rows.every(([, used, not]) => /^\d+$/.test(used as string) && /^\d+$/.test(not as string))).toBe(true);
  });
  it('each is a table of its own, named by its edition, and the recalled one says so', () => {
    expect([table('weather', 'wbgt1989').title, table('weather', 'wbgt2017').title]).toEqual([expect.stringContaining('1989'), expect.stringContaining('2017')]);
    expect(table('weather', 'wbgt2017').status).toBe('memory');
  });
  // 30.0, 26.7 and 25.0 °C for work without rest: the older generation, replaced since; not mixed with the newer.
  it('the older limits stand apart, converted as they were printed', () => {
    expect(wbgtOld.rows[0]).toEqual(['no rest', 86, 80.1, 77]);
    expect(table('weather', 'wbgtOld').rows[0]!.slice(1).map((c) => c.metric)).toEqual(['30.0\u00a0°C', '26.7\u00a0°C', '25.0\u00a0°C']);
  });
});
