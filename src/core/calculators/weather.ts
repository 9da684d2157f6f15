/** Stop for wind, heat or cold? */
import { weather as fact } from '../facts/weather.ts';
import { apparentTemperature } from '../formulas/apparent-temperature.ts';
import { heatIndex } from '../formulas/heat-index.ts';
import { windChill } from '../formulas/wind-chill.ts';
import { beaufortForce, windAt, windPressure } from '../formulas/wind.ts';
import { answer, defineCalculator, type InputProblem, type Outside, outside, type RawStep } from '../kit/calculator.ts';
import { guess, quantity } from '../kit/inputs.ts';
import { faceOf } from '../kit/units.ts';

const fahrenheit = faceOf('degC', 'imperial');
const mph = faceOf('m/s', 'imperial');
const toF = (celsius: number): number => celsius / fahrenheit.per + fahrenheit.shift;
const fromF = (f: number): number => (f - fahrenheit.shift) * fahrenheit.per;
/** The chart prints whole degrees Fahrenheit. */
const highestPrinted = (): number => fact('heat-highest') + 0.5 * fahrenheit.per;
/** Limits are kept in SI and were set in °F and mph: a hair of room for the way there. */
const hair = 1e-6;

/** Heat index, °C, in its published range. */
const heatOf = (air: number, humidity: number): number | Outside => {
  if (air < fact('heat-from') - hair) return outside('heatCool', { air, heatFrom: fact('heat-from') });
  const index = air > fact('heat-to') + hair ? Infinity : fromF(heatIndex(toF(air), humidity));
  return index > highestPrinted() ? outside('heatHot', { air, heatTo: fact('heat-to'), heatHighest: fact('heat-highest') }) : index;
};

/** Wind chill, °C, in its published range. */
const chillOf = (air: number, wind: number): number | Outside => {
  if (air > fact('chill-from') + hair) return outside('chillWarm', { air, chillFrom: fact('chill-from') });
  if (wind <= fact('chill-wind-from') + hair) return outside('chillCalm', { wind, chillWindFrom: fact('chill-wind-from') });
  return air < fact('chill-lowest') - hair || wind > fact('chill-wind-to') + hair
    ? outside('chillHard', { air, wind, chillLowest: fact('chill-lowest'), chillWindTo: fact('chill-wind-to') })
    : fromF(windChill(toF(air), wind / mph.per));
};

/** How much faster than the forecast at the basket; below the forecast's height its wind is kept. */
const aloft = (basketHeight: number, wind: number): number =>
  basketHeight > fact('wind-standard-height') ? windAt(basketHeight, wind) : wind;

const breeze = { min: 0, max: 40, step: 0.1, tolerance: guess({ share: 0.3, least: 1 }, { share: 0.1, least: 0.5 }) };

export const weather = defineCalculator({
  id: 'weather',
  inputs: {
    air: quantity('degC', { min: -50, max: 55, step: 1, example: 31, tolerance: guess({ least: 3 }, { least: 1 }) }),
    humidity: quantity('%', { min: 0, max: 100, step: 1, example: 60, tolerance: guess({ least: 15 }, { least: 5 }), ceiling: 100 }),
    wind: quantity('m/s', { ...breeze, example: 5 }),
    gust: quantity('m/s', { ...breeze, example: 9 }),
    basketHeight: quantity('m', { min: 0, max: 50, step: 0.5, example: 0, tolerance: guess({ share: 0.2 }, { least: 0.2 }) }),
  },
  outputs: {
    force: { kind: 'quantity', unit: 'number', protects: 'up', moves: { wind: 'up' } },
    gustAtBasket: { kind: 'quantity', unit: 'm/s', protects: 'up', moves: { gust: 'up', basketHeight: 'up' } },
    heatIndex: { kind: 'quantity', unit: 'degC', protects: 'up', moves: { air: 'up', humidity: 'bends' } },
    apparent: { kind: 'quantity', unit: 'degC', protects: 'both', moves: { air: 'up', humidity: 'up', wind: 'down' } },
    windChill: { kind: 'quantity', unit: 'degC', protects: 'down', moves: { air: 'up', wind: 'down' } },
    gustPressure: { kind: 'quantity', unit: 'Pa', protects: 'up', moves: { gust: 'up', basketHeight: 'up' } },
  },
  lead: ['gustAtBasket', 'heatIndex', 'windChill'],
  exampleGot: 'measured',
  middle: {
    plate: 'm/s', heatFrom: 'degC', heatTo: 'degC', heatHighest: 'degC', chillFrom: 'degC', chillLowest: 'degC',
    chillWindFrom: 'm/s', chillWindTo: 'm/s', step: 'degC',
  },
  findings: {
    platformWind: { level: 'stop', at: 'gustAtBasket' },
    heatDanger: { level: 'stop', at: 'heatIndex' },
    heatCaution: { level: 'caution', at: 'heatIndex' },
    heatBeyond: { level: 'stop', at: 'heatIndex' },
    chillBeyond: { level: 'caution', at: 'windChill' },
    heatCorner: { level: 'note', at: { air: 'down', humidity: 'up' } },
    coldHands: { level: 'note', at: { air: 'down' } },
    noWindLimit: { level: 'note' },
  },
  limits: ['heatCool', 'heatHot', 'chillWarm', 'chillCalm', 'chillHard'],
  relate: ({ wind, gust }): InputProblem[] => (gust < wind ? [{ input: 'gust', problem: 'gustUnderWind', values: { wind } }] : []),
  compute: ({ air, humidity, wind, gust, basketHeight }) => {
    const heat = heatOf(air, humidity);
    const cold = chillOf(air, wind);
    const index = typeof heat === 'number' ? heat : null;
    const chill = typeof cold === 'number' ? cold : null;
    const gustAtBasket = aloft(basketHeight, gust);
    const apparent = apparentTemperature(air, humidity, wind);
    const force = beaufortForce(wind);
    const gustPressure = windPressure(gustAtBasket);
    const plate = fact('platform-wind');
    const danger = fact('heat-danger');
    const caution = fact('heat-extreme-caution');
    const working: RawStep[] = [
      { id: 'force', values: { wind }, result: { name: 'force', value: force } },
      { id: 'gustAtBasket', values: { gust, basketHeight }, result: { name: 'gustAtBasket', value: gustAtBasket } },
      { id: 'gustPressure', values: { gustAtBasket }, result: { name: 'gustPressure', value: gustPressure } },
      ...(index === null ? [] : [{ id: 'heatIndex', values: { air, humidity }, result: { name: 'heatIndex', value: index } }]),
      ...(chill === null ? [] : [{ id: 'windChill', values: { air, wind }, result: { name: 'windChill', value: chill } }]),
      { id: 'apparent', values: { air, humidity, wind }, result: { name: 'apparent', value: apparent } },
    ];
    return answer(
      { force, gustAtBasket, heatIndex: heat, apparent, windChill: cold, gustPressure },
      [
        basketHeight > 0 && gustAtBasket > plate && { id: 'platformWind', values: { gustAtBasket, plate } },
        index !== null && index >= danger && { id: 'heatDanger', values: { heatIndex: index, step: danger } },
        index !== null && index < danger && index >= caution && { id: 'heatCaution', values: { heatIndex: index, step: caution } },
        typeof heat === 'object' && heat.limit === 'heatHot' && { id: 'heatBeyond' },
        typeof cold === 'object' && cold.limit === 'chillHard' && { id: 'chillBeyond' },
        index !== null && humidity > fact('heat-corner-humidity') && air < fact('heat-corner-air') && { id: 'heatCorner' },
        air <= fact('chill-from') && { id: 'coldHands' },
        { id: 'noWindLimit' },
      ],
      working,
    );
  },
});
