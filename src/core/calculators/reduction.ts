/** Is that lateral big enough to cut back to, and if there are several, to which? */
import { reduction as fact } from '../facts/reduction.ts';
import { halfwayCut, ridgeBetween } from '../formulas/lateral-cut.ts';
import { cutArea } from '../formulas/section.ts';
import { answer, defineCalculator, type InputProblem } from '../kit/calculator.ts';
import { choice, guess, optionalList, optionalQuantity, quantity } from '../kit/inputs.ts';

const own = guess({ share: 0.1 }, { least: 2 });
const shares = { third: 'least-share', half: 'half-share' } as const;
/** From the tip inwards. */
const places = ['first', 'second', 'third', 'fourth'] as const;
const further = { min: 5, max: 300, shortest: 1, longest: places.length - 1, example: null, tolerance: own, girth: true };
const ratioFurther = { kind: 'quantity', unit: 'ratio', protects: 'down', moves: { furtherLimbs: 'down', furtherLaterals: 'up' } } as const;

const wound = <const Angles extends { [name: string]: 'down' }>(angles: Angles) =>
  ({ kind: 'quantity', unit: 'mm2', protects: 'up', moves: { parentDiameter: 'up', eye: 'up', ...angles } }) as const;

export const reduction = defineCalculator({
  id: 'reduction',
  inputs: {
    parentDiameter: quantity('mm', { min: 15, max: 300, step: 1, example: 80, tolerance: own, girth: true }),
    lateralDiameter: quantity('mm', { min: 5, max: 300, step: 1, example: 30, tolerance: own, girth: true }),
    lateralAngle: quantity('deg', { min: 10, max: 90, step: 5, example: 45, tolerance: guess({ least: 10 }, { least: 5 }), floor: 5, ceiling: 90 }),
    ridgeAngle: optionalQuantity('deg', { min: 5, max: 80, step: 5, example: null, tolerance: guess({ least: 10 }, { least: 5 }), floor: 2, ceiling: 90 }),
    rule: choice(['third', 'half'], 'third'),
    furtherLimbs: optionalList('mm', further),
    furtherLaterals: optionalList('mm', further),
  },
  // One eye judged both: what it adds to one it adds to the other, and the ratio does not feel it.
  shared: {
    eye: { inputs: ['parentDiameter', 'lateralDiameter'], judged: 0.2, measured: 0 },
    furtherEye: { inputs: ['furtherLimbs', 'furtherLaterals'], judged: 0.2, measured: 0 },
  },
  outputs: {
    cutBackTo: {
      kind: 'choice', options: [...places, 'none'],
      moves: { parentDiameter: 'bends', lateralDiameter: 'bends', furtherLimbs: 'bends', furtherLaterals: 'bends' },
    },
    ratio: { kind: 'quantity', unit: 'ratio', protects: 'down', moves: { parentDiameter: 'down', lateralDiameter: 'up' } },
    smallestLateral: { kind: 'quantity', unit: 'mm', protects: 'up', moves: { parentDiameter: 'up', eye: 'up' } },
    largestParent: { kind: 'quantity', unit: 'mm', protects: 'down', moves: { lateralDiameter: 'up', eye: 'up' } },
    cutAngle: { kind: 'quantity', unit: 'deg', protects: 'both', moves: { lateralAngle: 'up', ridgeAngle: 'up' } },
    cutArea: wound({ lateralAngle: 'down', ridgeAngle: 'down' }),
    ridgeArea: wound({ lateralAngle: 'down', ridgeAngle: 'down' }),
    alongArea: wound({ lateralAngle: 'down' }),
    ratioSecond: ratioFurther,
    ratioThird: ratioFurther,
    ratioFourth: ratioFurther,
  },
  lead: ['ratio', 'smallestLateral'],
  middle: { share: 'ratio', ridge: 'deg' },
  findings: {
    lateralTooSmall: { level: 'caution', at: 'ratio' },
    noneBigEnough: { level: 'caution' },
    cutBackTo: { level: 'note' },
    angleRules: { level: 'note' },
  },
  relate: ({ parentDiameter, lateralDiameter, furtherLimbs, furtherLaterals }): InputProblem[] => {
    const [limbs, laterals] = [furtherLimbs ?? [], furtherLaterals ?? []];
    if (limbs.length !== laterals.length) return [{ input: 'furtherLaterals', problem: 'notPaired', values: {} }];
    if (laterals.some((lateral, i) => lateral > (limbs[i] as number))) return [{ input: 'furtherLaterals', problem: 'furtherLarger', values: {} }];
    return lateralDiameter > parentDiameter ? [{ input: 'lateralDiameter', problem: 'lateralLarger', values: { parentDiameter } }] : [];
  },
  compute: ({ parentDiameter, lateralDiameter, lateralAngle, ridgeAngle, rule, furtherLimbs, furtherLaterals }) => {
    const share = fact(shares[rule]);
    const laterals = [lateralDiameter, ...(furtherLaterals ?? [])];
    const ratios = [parentDiameter, ...(furtherLimbs ?? [])].map((limb, i) => (laterals[i] as number) / limb);
    const ratio = ratios[0] as number;
    // The outermost that can take over: it takes least off, through the thinnest wood.
    const found = ratios.findIndex((r) => r >= share);
    const cutBackTo = places[found] ?? 'none';
    const smallestLateral = share * parentDiameter;
    const largestParent = lateralDiameter / share;
    const ridge = ridgeAngle ?? ridgeBetween(lateralAngle);
    const cutAngle = halfwayCut(ridge);
    const area = cutArea(parentDiameter, cutAngle);
    const [ridgeArea, alongArea] = [cutArea(parentDiameter, ridge), cutArea(parentDiameter, lateralAngle)];
    return answer(
      {
        cutBackTo, ratio, smallestLateral, largestParent, cutAngle, cutArea: area, ridgeArea, alongArea,
        ratioSecond: ratios[1] ?? null, ratioThird: ratios[2] ?? null, ratioFourth: ratios[3] ?? null,
      },
      [
        ratio < share && { id: 'lateralTooSmall', values: { ratio, share } },
        ratios.length > 1 && cutBackTo === 'none' && { id: 'noneBigEnough', values: { share } },
        ratios.length > 1 && cutBackTo !== 'none' && { id: 'cutBackTo', values: { cutBackTo } },
        { id: 'angleRules', values: { cutAngle, ridge, lateralAngle } },
      ],
      [
        { id: 'ratio', values: { lateralDiameter, parentDiameter }, result: { name: 'ratio', value: ratio } },
        { id: 'smallestLateral', values: { share, parentDiameter }, result: { name: 'smallestLateral', value: smallestLateral } },
        { id: 'largestParent', values: { share, lateralDiameter }, result: { name: 'largestParent', value: largestParent } },
        ...(ridgeAngle === null ? [{ id: 'ridge', values: { lateralAngle }, result: { name: 'ridge', value: ridge } }] : []),
        { id: 'cutAngle', values: { ridge }, result: { name: 'cutAngle', value: cutAngle } },
        { id: 'cutArea', values: { parentDiameter, cutAngle }, result: { name: 'cutArea', value: area } },
        { id: 'ridgeArea', values: { parentDiameter, ridge }, result: { name: 'ridgeArea', value: ridgeArea } },
        { id: 'alongArea', values: { parentDiameter, lateralAngle }, result: { name: 'alongArea', value: alongArea } },
      ],
    );
  },
});
