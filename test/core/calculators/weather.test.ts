import { describe, expect, it } from 'vitest';
import { weather } from '#core/calculators/weather.ts';
import { type Answer, evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { checkRows, expectCheck } from './box.ts';

const mild: Inputs = { air: 18, humidity: 50, wind: 3, gust: 6, basketHeight: 0 };
const run = (given: Inputs, got: 'exact' | 'judged' = 'exact') => evaluate(weather, { ...mild, ...given }, got) as Answer;
const figure = (given: Inputs, name: string, got: 'exact' | 'judged' = 'exact') => run(given, got).outputs[name] as Quantity | null;
const ids = (given: Inputs, got: 'exact' | 'judged' = 'exact') => run(given, got).findings.map((f) => f.id);
const celsius = (f: number): number => (f - 32) / 1.8;

describe('Weather against worked examples from outside', () => {
  it.each(checkRows('weather'))('$title', (row) => expectCheck(weather, row));
});

describe('Each index keeps to its published range', () => {
  it.each([[celsius(79.9), 50], [celsius(112.1), 20], [celsius(110), 60]])('no heat index at %s °C and %s %%', (air, humidity) =>
    expect(figure({ air, humidity }, 'heatIndex')).toBeNull());
  it.each([[celsius(80), 40], [celsius(112), 20], [celsius(108), 45]])('a heat index at %s °C and %s %%', (air, humidity) =>
    expect(figure({ air, humidity }, 'heatIndex')).not.toBeNull());
  it.each([[celsius(50.1), 10], [celsius(-45.1), 10], [0, 3 * 0.44704], [0, 27]])('no wind chill at %s °C and %s m/s', (air, wind) =>
    expect(figure({ air, wind, gust: 40 }, 'windChill')).toBeNull());
  it.each([[celsius(50), 10], [celsius(-45), 10], [0, 1.4], [0, 26.8]])('a wind chill at %s °C and %s m/s', (air, wind) =>
    expect(figure({ air, wind, gust: 40 }, 'windChill')).not.toBeNull());
  // The published limits: chart and algorithm from 80 °F to 112 °F and 137 °F of index; wind chill from 50 °F down and over 3 mph, its chart to −45 °F and 60 mph.
  it.each([
    ['heatIndex', { air: celsius(79.9) }, 'heatCool', celsius(80)],
    ['heatIndex', { air: celsius(112.1), humidity: 10 }, 'heatHot', celsius(112)],
    ['heatIndex', { air: celsius(110), humidity: 60 }, 'heatHot', celsius(137)],
    ['windChill', { air: celsius(50.1) }, 'chillWarm', celsius(50)],
    ['windChill', { air: 0, wind: 1.3 }, 'chillCalm', 3 * 0.44704],
    ['windChill', { air: celsius(-45.1), wind: 10, gust: 12 }, 'chillHard', celsius(-45)],
    ['windChill', { air: 0, wind: 27, gust: 40 }, 'chillHard', 60 * 0.44704],
  ])('%s is outside for %j: %s', (name, given, limit, at) => {
    const outcome = run(given as Inputs);
    expect(outcome.outputs[name]).toBeNull();
    expect(outcome.outside[name]).toMatchObject({ kind: 'outside', limit });
    expect(Object.values(outcome.outside[name]!.values).some((value) => Math.abs(Number(value) - at) < 1e-5)).toBe(true);
  });
  it('says of both in mild air that they are outside, and no more; inside there is no limit to say', () => {
    expect(Object.keys(run({}).outside)).toEqual(['heatIndex', 'windChill']);
    expect(ids({})).toEqual(['noWindLimit']);
    expect(run({ air: 35 }).outside).not.toHaveProperty('heatIndex');
  });
  it('stops where it is hotter than the index goes, and warns where it is colder than the chart', () => {
    expect(run({ air: 50 }).findings).toContainEqual({ id: 'heatBeyond', level: 'stop', values: {}, guess: false });
    expect(ids({ air: -48 })).toContain('chillBeyond');
    expect(ids({ air: 5, wind: 1 })).not.toContain('chillBeyond');
  });
  it('is silent on the figure where the guess reaches beyond on the side that protects', () => {
    expect(figure({ air: 43, humidity: 20 }, 'heatIndex', 'judged')).toBeNull();
    expect(run({ air: 43, humidity: 20 }, 'judged').outside.heatIndex?.limit).toBe('heatHot');
    expect(run({ air: 43, humidity: 20 }, 'judged').findings).toContainEqual({ id: 'heatBeyond', level: 'stop', values: {}, guess: true });
  });
  it('says where the guess reaches beyond on the other side', () => {
    expect(figure({ air: 28 }, 'heatIndex', 'judged')).not.toBeNull();
    expect(ids({ air: 28 }, 'judged')).toContain('beyondGuess');
  });
});

describe('Findings', () => {
  it('takes the stricter, newer steps of heat: danger from 103 °F', () => {
    // 96 °F and 50 %: the chart prints 108. 88 °F and 65 %: 98. 84 °F and 45 %: 84.
    expect(ids({ air: celsius(96), humidity: 50 })).toContain('heatDanger');
    expect(ids({ air: celsius(88), humidity: 65 })).toContain('heatCaution');
    expect(ids({ air: celsius(84), humidity: 45 })).not.toContain('heatCaution');
    // 92 °F and 60 %: the chart prints 105, which the older set calls the edge of danger. 94 °F and 50 % is 103.
    expect(ids({ air: celsius(92), humidity: 59 })).toContain('heatDanger');
  });
  it('marks the damp corner where chart and method part', () => {
    expect(ids({ air: celsius(82), humidity: 95 })).toContain('heatCorner');
    expect(ids({ air: celsius(90), humidity: 95 })).not.toContain('heatCorner');
    expect(ids({ air: celsius(82), humidity: 80 })).not.toContain('heatCorner');
  });
  it('stops a platform above the wind it is made for, by the gust at the basket', () => {
    expect(ids({ gust: 12, basketHeight: 8 })).not.toContain('platformWind');
    // Over open ground the wind at 20 m is log(2000)/log(1000) = 1.10 times the forecast's: 13.2 of 12 m/s.
    expect(ids({ gust: 12, basketHeight: 20 })).toContain('platformWind');
    expect(ids({ gust: 20 })).not.toContain('platformWind');
  });
  it('never takes the basket for calmer than the forecast', () =>
    expect(figure({ gust: 9, basketHeight: 3 }, 'gustAtBasket')?.value).toBe(9));
  it('speaks of hands in the cold, and always of the missing limit', () => {
    expect(ids({ air: 5 })).toContain('coldHands');
    expect(ids({ air: 5 })).toContain('noWindLimit');
  });
  it('wants the gust no weaker than the wind', () =>
    expect(evaluate(weather, { ...mild, gust: 2 }, 'exact')).toEqual({ kind: 'problems', problems: [{ input: 'gust', problem: 'gustUnderWind', values: { wind: 3 } }] }));
});
