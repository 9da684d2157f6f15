/** How high is that cut? */
import { standing as fact } from '../facts/standing.ts';
import { angleUp, tan } from '../formulas/angles.ts';
import { aboveEye, fromPercent, levelPart, poleRise } from '../formulas/sighting.ts';
import { answer, defineCalculator, type InputProblem, type InputsOf, outside, type RawStep } from '../kit/calculator.ts';
import { choice, guess, optionalQuantity, quantity } from '../kit/inputs.ts';

// An angle judged by eye is refused: the two ways to get one are the tilt of a phone and a sighting instrument.
const angle = (example: number | null) =>
  optionalQuantity('deg', { min: -45, max: 60, step: 0.5, example, tolerance: guess({ least: 2 }, { least: 0.5 }), floor: -80, ceiling: 80 });
// The same two errors on a percent scale, which widens with the angle.
const percent = () =>
  optionalQuantity('%', { min: -100, max: 173, step: 1, example: null, tolerance: guess({ share: 0.081, least: 4.6 }, { share: 0.0202, least: 1.2 }), floor: -Infinity });

const inputs = {
  method: choice(['sight', 'pole'], 'sight'),
  distance: optionalQuantity('m', { min: 2, max: 60, step: 0.1, example: 10, tolerance: guess({ share: 0.1 }, { least: 0.1 }) }),
  along: choice(['level', 'slope'], 'level'),
  slope: quantity('deg', { min: -30, max: 30, step: 1, example: 0, tolerance: guess({ least: 5 }, { least: 1 }) }),
  scale: choice(['degrees', 'percent'], 'degrees'),
  angleToCut: angle(17),
  angleToBase: angle(-9),
  percentToCut: percent(),
  percentToBase: percent(),
  eyeHeight: optionalQuantity('m', { min: 1, max: 2.2, step: 0.05, example: null, tolerance: guess({ least: 0.1 }, { least: 0.02 }) }),
  poleOut: optionalQuantity('m', { min: 1.2, max: 6, step: 0.1, example: null, tolerance: guess({ least: 0.3 }, { least: 0.05 }) }),
  standOff: optionalQuantity('m', { min: 0, max: 6, step: 0.1, example: null, tolerance: guess({ share: 0.1, least: 0.2 }, { least: 0.1 }) }),
  gripHeight: optionalQuantity('m', { min: 0, max: 1.6, step: 0.05, example: null, tolerance: guess({ least: 0.15 }, { least: 0.05 }) }),
};
type Given = InputsOf<typeof inputs>;

const needed = (given: Given): (keyof Given & string)[] => {
  if (given.method === 'pole') return ['poleOut', 'standOff', 'gripHeight'];
  return ['distance', given.scale === 'degrees' ? 'angleToCut' : 'percentToCut'];
};

type Sighting = { toCut: number; toBase: number | null };
const sighting = (i: Given): Sighting =>
  i.scale === 'degrees'
    ? { toCut: i.angleToCut!, toBase: i.angleToBase }
    : { toCut: fromPercent(i.percentToCut!), toBase: i.percentToBase === null ? null : fromPercent(i.percentToBase) };

const sight = (i: Given) => {
  const taped = i.distance!;
  const levelDistance = i.along === 'slope' ? levelPart(taped, i.slope) : taped;
  const { toCut, toBase } = sighting(i);
  const above = aboveEye(levelDistance, toCut);
  // Ground plumb under the cut, measured from the eye: sighted, or the eye's height and the slope between.
  const base = toBase === null ? levelDistance * tan(i.slope) - i.eyeHeight! : aboveEye(levelDistance, toBase);
  const height = above - base;
  if (height <= 0) return outside('belowBase');
  const working: RawStep[] = [
    ...(i.along === 'slope' ? [{ id: 'levelDistance', values: { distance: taped, slope: i.slope }, result: { name: 'levelDistance', value: levelDistance } }] : []),
    { id: 'aboveEye', values: { levelDistance, angleSeen: toCut }, result: { name: 'aboveEye', value: above } },
    toBase === null
      ? { id: 'baseByEye', values: { levelDistance, slope: i.slope, eyeHeight: i.eyeHeight! }, result: { name: 'baseFromEye', value: base } }
      : { id: 'baseFromEye', values: { levelDistance, angleToBaseSeen: toBase }, result: { name: 'baseFromEye', value: base } },
    { id: 'height', values: { aboveEye: above, baseFromEye: base }, result: { name: 'height', value: height } },
  ];
  return answer(
    { height, levelDistance, poleAngle: null },
    [
      toCut > fact('sighting-limit') && { id: 'stepBack', values: { angleSeen: toCut } },
      toBase === null && { id: 'baseNotSeen' },
      { id: 'plumb' },
    ],
    working,
  );
};

const touch = (i: Given) => {
  const [poleOut, standOff, gripHeight] = [i.poleOut!, i.standOff!, i.gripHeight!];
  const rise = poleRise(poleOut, standOff);
  if (rise === null) return outside('poleShort', { poleOut, standOff });
  const ground = standOff * tan(i.slope);
  const height = gripHeight + rise - ground;
  if (height <= 0) return outside('belowBase');
  const poleAngle = angleUp(rise, standOff);
  return answer(
    { height, levelDistance: standOff, poleAngle },
    [
      { id: 'wireFirst' },
      poleAngle > fact('angle-limit') && { id: 'steep', values: { poleAngle, limitAngle: fact('angle-limit') } },
    ],
    [
      { id: 'poleRise', values: { poleOut, standOff }, result: { name: 'poleRise', value: rise } },
      { id: 'poleHeight', values: { gripHeight, poleRise: rise, standOff, slope: i.slope }, result: { name: 'height', value: height } },
      { id: 'poleAngle', values: { poleRise: rise, standOff }, result: { name: 'poleAngle', value: poleAngle } },
    ],
  );
};

export const height = defineCalculator({
  id: 'height',
  inputs,
  outputs: {
    height: {
      kind: 'quantity', unit: 'm', protects: 'both',
      moves: {
        distance: 'bends', slope: 'bends', angleToCut: 'up', angleToBase: 'down', percentToCut: 'up', percentToBase: 'down',
        eyeHeight: 'up', poleOut: 'up', standOff: 'bends', gripHeight: 'up',
      },
    },
    levelDistance: { kind: 'quantity', unit: 'm', protects: 'both', moves: { distance: 'up', slope: 'bends', standOff: 'up' } },
    poleAngle: { kind: 'quantity', unit: 'deg', protects: 'up', moves: { poleOut: 'up', standOff: 'down' } },
  },
  lead: ['height', 'levelDistance'],
  exampleGot: { distance: 'measured', slope: 'exact' },
  middle: { aboveEye: 'm', baseFromEye: 'm', angleSeen: 'deg', angleToBaseSeen: 'deg', poleRise: 'm', limitAngle: 'deg' },
  findings: {
    wireFirst: { level: 'caution' },
    steep: { level: 'caution', at: 'poleAngle' },
    stepBack: { level: 'note' },
    baseNotSeen: { level: 'note' },
    plumb: { level: 'note' },
  },
  limits: ['belowBase', 'poleShort'],
  relate: (i): InputProblem[] => {
    const missing = needed(i).filter((name) => i[name] === null).map((input) => ({ input, problem: 'missing', values: {} }));
    if (missing.length > 0 || i.method === 'pole') return missing;
    const base = i.scale === 'degrees' ? 'angleToBase' : 'percentToBase';
    return i[base] === null && i.eyeHeight === null ? [{ input: base, problem: 'baseNeeded', values: {} }] : [];
  },
  compute: (i) => (i.method === 'sight' ? sight(i) : touch(i)),
});
