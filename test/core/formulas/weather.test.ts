import { describe, expect, it } from 'vitest';
import { apparentTemperature, vapourPressure } from '#core/formulas/apparent-temperature.ts';
import { heatIndex, heatRegression } from '#core/formulas/heat-index.ts';
import { wbgtInSun, wbgtOutOfSun } from '#core/formulas/wbgt.ts';
import { windChill } from '#core/formulas/wind-chill.ts';
import { beaufortForce, windAt, windPressure } from '#core/formulas/wind.ts';
import beaufort from '#shared/tables/beaufort.json' with { type: 'json' };
import heatChart from '#shared/tables/nws-heat-index.json' with { type: 'json' };
import chillChart from '#shared/tables/nws-wind-chill.json' with { type: 'json' };
import loads from '#shared/tables/wind-loads.json' with { type: 'json' };

type Cell = { row: number; column: number; printed: number };
const cellsOf = (chart: { columns: { key: string }[]; rows: (number | null)[][] }): Cell[] =>
  chart.rows.flatMap(([row, ...cells]) => cells.flatMap((printed, i) =>
    printed === null ? [] : [{ row: row as number, column: Number((chart.columns[i + 1] as { key: string }).key.slice(2)), printed }]));

describe('Heat index', () => {
  const cells = cellsOf(heatChart);
  it('has the chart: every row and column of what was seen', () => expect(cells.length).toBe(70));

  // Half a degree for the printed whole degrees, and a hundredth for how the chart was rounded.
  it.each(cells)('NWS chart: $row °F, $column %: $printed °F by the bare regression', ({ row, column, printed }) =>
    expect(Math.abs(heatRegression(row, column) - printed)).toBeLessThanOrEqual(0.51));

  // Up to 85 % the algorithm agrees with the chart too; its low end is half a degree apart where the simple equation is used.
  it.each(cells.filter((c) => c.column <= 85))('NWS chart: $row °F, $column %: $printed °F by the algorithm', ({ row, column, printed }) =>
    expect(Math.abs(heatIndex(row, column) - printed)).toBeLessThanOrEqual(0.6));

  it('reads higher than the chart in its damp corner, 0.5 to 2.3 °F: 80 °F and 100 % is 89.3, the chart prints 87', () => {
    expect(heatIndex(80, 100)).toBeCloseTo(89.3, 1);
    const corner = cells.filter((c) => c.column >= 90 && c.row <= 86);
    expect(corner.length).toBeGreaterThanOrEqual(6);
    for (const { row, column, printed } of corner) {
      expect(heatIndex(row, column) - printed).toBeGreaterThan(-0.5);
      expect(heatIndex(row, column) - printed).toBeLessThanOrEqual(2.35);
    }
  });

  it('stands with the 106 °F the service prints for 90 °F and 70 %, not with the 105 of a reposted chart', () =>
    expect(heatIndex(90, 70)).toBeCloseTo(105.9, 1));

  // NWS calculator results recorded by the authors of a meteorology library.
  it.each([[86, 45, 87], [111, 27, 121], [96, 60, 116], [86, 88, 104], [110, 40, 136]])('%s °F, %s %%: %s °F', (t, r, index) =>
    expect(Math.abs(heatIndex(t, r) - index)).toBeLessThanOrEqual(0.6));

  it('takes off in dry heat: the published step by hand at 95 °F and 5 %, (13 − 5)/4·√(17/17) = 2', () =>
    expect(heatRegression(95, 5) - heatIndex(95, 5)).toBeCloseTo(2, 9));
});

describe('Wind chill', () => {
  const cells = cellsOf(chillChart);
  it('has the chart: every row and column of what was seen', () => expect(cells.length).toBe(96));
  it.each(cells)('NWS chart of 2001: $row °F, $column mph: $printed °F', ({ row, column, printed }) =>
    expect(Math.abs(windChill(row, column) - printed)).toBeLessThanOrEqual(0.5));
  // The copy lost its −10 row and labels the −15 row so: we stand with the equation, −28 °F belongs to −15 °F and 5 mph
  it('does not take the mislabelled row for −10 °F', () => {
    expect(Math.round(windChill(-15, 5))).toBe(-28);
    expect(Math.round(windChill(-10, 5))).toBe(-22);
  });
});

describe('Wind', () => {
  it.each(beaufort.rows as [number, number, number | null, string][])('force %s from %s to %s m/s', (force, from, to) => {
    expect(beaufortForce(from)).toBe(force);
    expect(beaufortForce(to ?? 60)).toBe(force);
  });
  it('starts force 1 at 0.3 m/s, as the tables do, not at 0.5 as several programs', () => {
    expect(beaufortForce(0.2)).toBe(0);
    expect(beaufortForce(0.3)).toBe(1);
  });
  // v = 0.836·B^1.5, the published curve behind the scale: the middle of each force lies in its class.
  it('agrees with the curve behind the scale', () => {
    for (let force = 1; force <= 11; force++) expect(beaufortForce(0.836 * force ** 1.5)).toBe(force);
  });
  it('two metres above ground: 5.36907 of 7 m/s (test of a weather centre’s library)', () => expect(windAt(2, 7)).toBeCloseTo(5.36907, 4));
  // "Up to half as fast again at 20 m" is said against the wind near the ground, not against the forecast's ten metres.
  it('agrees with "up to 50 % faster at 20 m" when that is taken from two metres', () => {
    expect(windAt(20, 1) / windAt(2, 1)).toBeGreaterThan(1.35);
    expect(windAt(20, 1) / windAt(2, 1)).toBeLessThan(1.5);
  });
  it.each(loads.rows as [number, number][])('handbook table, 1.2 kg/m³: %s m/s, %s Pa', (wind, pressure) =>
    expect(Math.abs(windPressure(wind, 1.2) - pressure)).toBeLessThanOrEqual(0.5));
  it('the handbook’s example: 35 m/s on 10 m² is 7,350 N', () => expect(windPressure(35, 1.2) * 10).toBeCloseTo(7350, 6));
  it('10 m/s at 1.225 kg/m³ is 61.25 Pa', () => expect(windPressure(10)).toBeCloseTo(61.25, 9));
});

describe('Other measures of heat', () => {
  it('apparent temperature: 25 °C, 30 %, 0.1 m/s is 24.1 °C (test of a thermal comfort library)', () =>
    expect(apparentTemperature(25, 30, 0.1)).toBeCloseTo(24.06, 2));
  // Saturation at 20 °C is 23.4 hPa in every handbook of meteorology (from memory); a tenth either way for this short formula.
  it('vapour pressure of saturated air at 20 °C is about 23.4 hPa', () => expect(vapourPressure(20, 100)).toBeCloseTo(23.4, 0));
  it('WBGT 25/32: 27.1 °C out of the sun, 25.9 °C in it with air of 20 °C', () => {
    expect(wbgtOutOfSun(25, 32)).toBeCloseTo(27.1, 9);
    expect(wbgtInSun(25, 32, 20)).toBeCloseTo(25.9, 9);
  });
});
