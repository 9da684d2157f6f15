/** How long today, for the hands? */
import { vibration as fact } from '../facts/vibration.ts';
import { dailyExposure, exposurePoints, minutesUntil, type Spell } from '../formulas/vibration.ts';
import { answer, defineCalculator, type InputProblem, outside, type RawStep } from '../kit/calculator.ts';
import { guess, optionalQuantity, quantity } from '../kit/inputs.ts';
import { pairProblems, timeProblem } from '../kit/spells.ts';

const strength = { min: 0, max: 30, step: 0.1 };
const time = { min: 0, max: 600, step: 5, tolerance: guess({ share: 0.3 }, { share: 0.1 }) };
const all = { magnitude1: 'up', magnitude2: 'up', magnitude3: 'up', minutes1: 'up', minutes2: 'up', minutes3: 'up', uncertainty: 'up' } as const;
const left = {
  magnitude1: 'down', magnitude2: 'down', magnitude3: 'down', minutes1: 'down', minutes2: 'down', minutes3: 'down',
  uncertainty: 'down', nextMagnitude: 'down',
} as const;

export const vibration = defineCalculator({
  id: 'vibration',
  inputs: {
    magnitude1: quantity('m/s2', { ...strength, example: 4 }),
    minutes1: quantity('min', { ...time, example: 90 }),
    magnitude2: optionalQuantity('m/s2', { ...strength, example: 6 }),
    minutes2: optionalQuantity('min', { ...time, example: 30 }),
    magnitude3: optionalQuantity('m/s2', { ...strength, example: 3 }),
    minutes3: optionalQuantity('min', { ...time, example: 20 }),
    uncertainty: optionalQuantity('%', { min: 0, max: 100, step: 5, example: 40 }),
    nextMagnitude: quantity('m/s2', { min: 0.5, max: 30, step: 0.1, example: 4 }),
  },
  outputs: {
    dailyExposure: { kind: 'quantity', unit: 'm/s2', protects: 'up', moves: all },
    points: { kind: 'quantity', unit: 'points', protects: 'up', moves: all },
    minutesToAction: { kind: 'quantity', unit: 'min', protects: 'down', moves: left },
    minutesToLimit: { kind: 'quantity', unit: 'min', protects: 'down', moves: left },
  },
  lead: ['dailyExposure', 'points', 'minutesToLimit'],
  exampleGot: 'measured',
  middle: {
    share: '%', counted1: 'm/s2', counted2: 'm/s2', counted3: 'm/s2', countedNext: 'm/s2',
    rate1: 'points', rate2: 'points', rate3: 'points', action: 'm/s2', limit: 'm/s2', strongest: 'm/s2', reckoner: 'm/s2',
  },
  findings: {
    overLimit: { level: 'stop', at: 'dailyExposure' },
    overAction: { level: 'caution', at: 'dailyExposure' },
    assumedUncertainty: { level: 'note' },
    dayEndsFirst: { level: 'note', at: 'minutesToLimit' },
  },
  limits: ['beyondReckoner'],
  relate: (i): InputProblem[] => [
    ...pairProblems(i, 'magnitude', 'minutes'),
    ...timeProblem(i),
  ],
  compute: (i) => {
    const share = i.uncertainty ?? fact('default-uncertainty');
    const counted = (magnitude: number): number => magnitude * (1 + share / 100);
    const action = fact('action');
    const limit = fact('limit');
    const given: [number | null, number | null][] = [[i.magnitude1, i.minutes1], [i.magnitude2, i.minutes2], [i.magnitude3, i.minutes3]];
    const spells: Spell[] = given.map(([magnitude, minutes]) => ({ magnitude: counted(magnitude ?? 0), minutes: minutes ?? 0 }));
    const [counted1, counted2, counted3] = spells.map((s) => s.magnitude) as [number, number, number];
    const countedNext = counted(i.nextMagnitude);
    const reckoner = fact('reckoner-vibration');
    const strongest = Math.max(counted1, counted2, counted3, countedNext);
    if (strongest > reckoner) return outside('beyondReckoner', { strongest, reckoner });
    const exposure = dailyExposure(spells);
    const points = exposurePoints(spells);
    const minutesToAction = minutesUntil(action, exposure, countedNext);
    const minutesToLimit = minutesUntil(limit, exposure, countedNext);
    const used = spells.reduce((sum, s) => sum + s.minutes, 0);
    const minutes = { minutes1: i.minutes1, minutes2: i.minutes2 ?? 0, minutes3: i.minutes3 ?? 0 };
    return answer(
      { dailyExposure: exposure, points, minutesToAction, minutesToLimit },
      [
        exposure > limit && { id: 'overLimit', values: { dailyExposure: exposure, limit } },
        exposure > action && exposure <= limit && { id: 'overAction', values: { dailyExposure: exposure, action } },
        i.uncertainty === null && { id: 'assumedUncertainty', values: { share } },
        minutesToLimit > 24 * 60 - used && { id: 'dayEndsFirst', values: { minutesToLimit } },
      ],
      [
        { id: 'counted', values: { magnitude1: i.magnitude1, share }, result: { name: 'counted1', value: counted1 } },
        { id: 'dailyExposure', values: { counted1, counted2, counted3, ...minutes }, result: { name: 'dailyExposure', value: exposure } },
        ...spells.flatMap((spell, at): RawStep[] => {
          const n = at + 1;
          return given[at]?.[0] === null ? [] : [{ id: `rate${n}`, values: { [`counted${n}`]: spell.magnitude }, result: { name: `rate${n}`, value: exposurePoints([{ ...spell, minutes: 60 }]) } }];
        }),
        { id: 'points', values: { counted1, counted2, counted3, ...minutes }, result: { name: 'points', value: points } },
        { id: 'countedNext', values: { nextMagnitude: i.nextMagnitude, share }, result: { name: 'countedNext', value: countedNext } },
        { id: 'minutesToAction', values: { action, dailyExposure: exposure, countedNext }, result: { name: 'minutesToAction', value: minutesToAction } },
        { id: 'minutesToLimit', values: { limit, dailyExposure: exposure, countedNext }, result: { name: 'minutesToLimit', value: minutesToLimit } },
      ],
    );
  },
});
