import { describe, expect, it } from 'vitest';
import { fuelMix } from '#core/calculators/fuel-mix.ts';
import { type Answer, evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { readQuantity } from '#core/kit/read.ts';
import { show } from '#core/kit/show.ts';
import oil from '#shared/tables/oil-ratios.json' with { type: 'json' };
import { checkRows, expectCheck } from './box.ts';

const petrol: Inputs = { fuel: 5, ratio: 50, battery: null, charge: null, load: null };
const run = (given: Inputs, got: 'exact' | 'judged' = 'exact') => evaluate(fuelMix, { ...petrol, ...given }, got);
const figure = (given: Inputs, name: string, got: 'exact' | 'judged' = 'exact') => (run(given, got) as Answer).outputs[name] as Quantity;

describe('Fuel against worked examples from outside', () => {
  it.each(checkRows('fuel-mix'))('$title', (row) => expectCheck(fuelMix, row));
  // The printed table: mL for a litre, US fluid ounces for a US gallon.
  it.each(oil.rows as [number, number, number][])('%s to one: %s mL a litre, %s fl oz a gallon', (ratio, mL, floz) => {
    expect(figure({ fuel: 1, ratio }, 'oil').value).toBeCloseTo(mL, 6);
    const gallon = readQuantity('1 gal', 'L', 'metric');
    if (gallon.kind !== 'value') throw new Error('a gallon is not read');
    expect(figure({ fuel: gallon.value, ratio }, 'oil').value / 29.5735295625).toBeCloseTo(floz, 6);
  });
  // 2.6 is commonly printed for fifty to one; the exact figure is 2.56, and that is what stands here.
  it('shows 2.56 US fl oz for a gallon at fifty to one', () =>
    expect(show(fuelMix.outputs.oil, figure({ fuel: 3.785411784 }, 'oil'), 'imperial')).toBe('2.56\u00a0US fl oz'));
});

describe('Fuel and battery', () => {
  it('reads a British gallon as 4.54609 L, by its legal definition', () => {
    expect(readQuantity('2 uk gal', 'L', 'imperial')).toEqual({ kind: 'value', value: 9.09218 });
    expect(readQuantity('1,5 kW', 'W', 'metric')).toEqual({ kind: 'value', value: 1500 });
    expect(readQuantity('0.2 kWh', 'Wh', 'metric')).toEqual({ kind: 'value', value: 200 });
  });
  it('oil is one part in ratio plus one of the mixture', () =>
    expect(figure({}, 'oil').value / 1000 / figure({}, 'mixture').value).toBeCloseTo(1 / 51, 12));
  it('has no run time without a battery, and plans on the shorter where load and charge were judged', () => {
    expect(figure({}, 'runTime')).toBeNull();
    const full = { battery: 216, charge: 100, load: 600 };
    expect(figure(full, 'runTime', 'judged').planOn).toBeCloseTo((216 * 0.8 * 60) / (600 * 1.3), 9);
  });
  it('asks for all three of the battery, at the empty ones', () =>
    expect(run({ battery: 100 })).toEqual({
      kind: 'problems',
      problems: [{ input: 'charge', problem: 'needsBattery', values: {} }, { input: 'load', problem: 'needsBattery', values: {} }],
    }));
});
