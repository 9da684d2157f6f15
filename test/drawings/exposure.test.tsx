import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { vibrationLevels } from '#core/facts/vibration-levels.ts';
import { weatherBands } from '#core/facts/weather-bands.ts';
import { evaluate, example } from '#core/registry.ts';
import type { Inputs, Outcome } from '#core/kit/outcome.ts';
import type { Box, Placed } from '#drawings/kit/placed.ts';
import { Drawing as FuelMix } from '#drawings/fuel-mix/Drawing.tsx';
import { geometry as fuelMix } from '#drawings/fuel-mix/geometry.ts';
import { Drawing as Noise } from '#drawings/noise/Drawing.tsx';
import { geometry as noise } from '#drawings/noise/geometry.ts';
import { Drawing as PoleLoad } from '#drawings/pole-load/Drawing.tsx';
import { geometry as poleLoad } from '#drawings/pole-load/geometry.ts';
import { Drawing as Vibration } from '#drawings/vibration/Drawing.tsx';
import { geometry as vibration } from '#drawings/vibration/geometry.ts';
import { Drawing as Weather } from '#drawings/weather/Drawing.tsx';
import { geometry as weather } from '#drawings/weather/geometry.ts';
import { anyInputs, expectDrawn, expectSvg, extremes, overlaps, pathsOf, phone, pointsOf, wide, wordsOf } from './kit.ts';

type Draw = (inputs: Inputs, outcome: Outcome, box: Box, labels: Readonly<Record<string, string>>) => Placed<never>;
type Case = { id: string; face: string; draw: Draw; svg: (props: object) => ReturnType<typeof PoleLoad> };
const cases: Case[] = [
  { id: 'pole-load', face: 'side', draw: (i, o, box, labels) => poleLoad(i as never, o, { face: 'side', labels }, box) as never, svg: (p) => <PoleLoad {...(p as any)} /> },
  { id: 'vibration', face: 'day', draw: (i, o, box, labels) => vibration(i as never, o, vibrationLevels(), { face: 'day', labels }, box) as never, svg: (p) => <Vibration {...(p as any)} levels={vibrationLevels()} /> },
  { id: 'noise', face: 'day', draw: (i, o, box, labels) => noise(i as never, o, { face: 'day', labels }, box) as never, svg: (p) => <Noise {...(p as any)} /> },
  { id: 'weather', face: 'wind', draw: (i, o, box, labels) => weather(i as never, o, weatherBands(), { face: 'wind', labels }, box) as never, svg: (p) => <Weather {...(p as any)} bands={weatherBands()} /> },
  { id: 'weather', face: 'air', draw: (i, o, box, labels) => weather(i as never, o, weatherBands(), { face: 'air', labels }, box) as never, svg: (p) => <Weather {...(p as any)} bands={weatherBands()} /> },
  { id: 'fuel-mix', face: 'cans', draw: (i, o, box, labels) => fuelMix(i as never, o, { face: 'cans', labels }, box) as never, svg: (p) => <FuelMix {...(p as any)} /> },
];

describe.each(cases)('$id, $face, drawn', ({ id, face, draw, svg }) => {
  const words = wordsOf(id, face);

  it('holds nothing but numbers over the whole range of the inputs', () => {
    fc.assert(fc.property(anyInputs(id), (inputs) => {
      const outcome = evaluate(id, inputs, 'judged');
      if (outcome.kind === 'answer') expectDrawn(draw(inputs, outcome, phone, words.labels));
    }), { numRuns: 150 });
  });

  it.each([phone, wide])('keeps labels apart and on the sheet, $width px wide', (box) => {
    for (const { title, inputs, outcome } of extremes(id)) {
      if (outcome.kind === 'answer') expect(overlaps(draw(inputs, outcome, box, words.labels)), title).toEqual([]);
    }
  });

  it('takes each handle back to the value it was placed for', () => {
    const inputs = example(id);
    for (const handle of draw(inputs, evaluate(id, inputs, 'exact'), wide, words.labels).handles) {
      expect(handle.at([handle.x, handle.y]), handle.id).toBeCloseTo(handle.value, 6);
      expect(handle.at([-1e5, 1e5]), handle.id).toBeGreaterThanOrEqual(handle.min);
      expect(handle.at([1e5, -1e5]), handle.id).toBeLessThanOrEqual(handle.max);
    }
  });

  it('writes clean SVG', () => {
    for (const { inputs, outcome } of extremes(id)) {
      if (outcome.kind === 'answer') expectSvg(svg({ id: 'x', face, inputs, outcome, box: phone, words, onMove: () => {} }) as never, words);
    }
  });
});

const lengthOf = (d: string): number => {
  const [a, b] = pointsOf(d);
  return Math.hypot(b![0] - a![0], b![1] - a![1]);
};
const widthOf = (d: string): number => {
  const xs = pointsOf(d).map((p) => p[0]);
  return Math.max(...xs) - Math.min(...xs);
};

describe('Drawn to scale', () => {
  const pole = (change: Inputs) => {
    const inputs = { ...example('pole-load'), effort: null, ...change };
    return poleLoad(inputs as never, evaluate('pole-load', inputs, 'exact'), { face: 'side', labels: wordsOf('pole-load', 'side').labels }, wide);
  };
  // Arrows in the order drawn: front hand, rear hand, along the pole, weight. Each shaft ends 7 px before the head's point.
  const forces = (change: Inputs): number[] => pathsOf(pole(change), 'arrow').map((d) => lengthOf(d) + 7);

  it('forces keep one scale while the angle changes: the weight stays as long as it is', () => {
    const px = (angle: number) => {
      const placed = pole({ poleAngle: angle });
      return (forces({ poleAngle: angle }).at(-1) as number) / placed.frame.scale;
    };
    expect(px(20)).toBeCloseTo(px(60), 1);
  });
  it('front hand and weight stand to each other as the forces do: level, 1.2 m over 0.8 m is one and a half', () => {
    const [front, , weight] = forces({ poleAngle: 0 });
    expect((front as number) / (weight as number)).toBeCloseTo(1.5, 1);
  });
  it('a tool of as many points as another is as long, and the day as long as both', () => {
    const inputs: Inputs = { ...example('vibration'), magnitude1: 4, minutes1: 60, magnitude2: 8, minutes2: 15, magnitude3: null, minutes3: null };
    const placed = vibration(inputs as never, evaluate('vibration', inputs, 'exact'), vibrationLevels(), { face: 'day', labels: wordsOf('vibration', 'day').labels }, wide);
    const [one, two, dayOne] = pathsOf(placed, 'amount').map(widthOf);
    expect(one).toBeCloseTo(two!, 0);
    expect(dayOne).toBeCloseTo(one!, 0);
    expect(pathsOf(placed, 'other').map(widthOf)[0]).toBeCloseTo(two!, 0);
  });
  it('draws a can of twice the petrol filled twice as high', () => {
    const level = (fuel: number) => {
      const inputs = { ...example('fuel-mix'), fuel };
      const placed = fuelMix(inputs as never, evaluate('fuel-mix', inputs, 'exact'), { face: 'cans', labels: wordsOf('fuel-mix', 'cans').labels }, wide);
      const ys = pointsOf(pathsOf(placed, 'liquid')[0]!).map((p) => p[1]);
      return Math.max(...ys) - Math.min(...ys);
    };
    expect(level(4.8) / level(2.4)).toBeCloseTo(2, 1);
  });
  it('puts the wind on its band: 12.5 m/s stands where the line of platforms stands', () => {
    const inputs: Inputs = { ...example('weather'), wind: 5, gust: 12.5 };
    const placed = weather(inputs as never, evaluate('weather', inputs, 'exact'), weatherBands(), { face: 'wind', labels: wordsOf('weather', 'wind').labels }, wide);
    const gust = placed.handles.find((h) => h.id === 'gust')!.x;
    expect(pointsOf(pathsOf(placed, 'limit')[0]!)[0]![0]).toBeCloseTo(gust, 0);
  });
});
