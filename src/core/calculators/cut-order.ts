/** Which side first, and when will it let go? */
import { cuts, cutsRange } from '../facts/cuts.ts';
import { cos } from '../formulas/angles.ts';
import { type Loads, moment, placeOfNoMoment, type Support } from '../formulas/beam.ts';
import { gravity } from '../formulas/gravity.ts';
import { releaseDepth, stressLeft, woodLeft } from '../formulas/wood-left.ts';
import { answer, defineCalculator, type InputProblem, type InputsOf, outside } from '../kit/calculator.ts';
import { choice, guess, quantity } from '../kit/inputs.ts';

const lengths = guess({ share: 0.2 }, { least: 0.05 });

const inputs = {
  support: choice(['free', 'tipResting', 'hungBoth', 'heldBoth'], 'free'),
  fault: choice(['none', 'sprung', 'twisted', 'cracked', 'sideways'], 'none'),
  length: quantity('m', { min: 0.3, max: 10, step: 0.1, example: 2.5, tolerance: lengths }),
  cutAt: quantity('m', { min: 0, max: 10, step: 0.05, example: 0.4, tolerance: lengths }),
  weight: quantity('kg', { min: 0.5, max: 1000, step: 0.5, example: 20, tolerance: guess({ share: 0.4 }, { share: 0.15 }) }),
  shape: choice(['whole', 'pole'], 'whole'),
  extraLoad: quantity('kg', { min: 0, max: 200, step: 1, example: 0, tolerance: guess({ share: 0.5 }, { share: 0.15 }) }),
  extraAt: quantity('m', { min: 0, max: 10, step: 0.1, example: 2, tolerance: lengths }),
  // Steeper, the weight bends it less: past the steepest that this covers nothing gets worse.
  limbAngle: quantity('deg', { min: -80, max: 80, step: 5, example: 15, tolerance: guess({ least: 10 }, { least: 3 }), floor: -90, ceiling: 90, covers: [-cuts('steepest-limb'), cuts('steepest-limb')] }),
  diameter: quantity('mm', { min: 20, max: 400, step: 1, example: 100, tolerance: guess({ share: 0.2 }, { share: 0.02, least: 3 }), girth: true }),
  strength: quantity('MPa', { min: 15, max: 100, step: 1, example: 40, tolerance: guess({ share: 0.5 }, { share: 0.15 }) }),
  undercut: quantity('%', { min: 0, max: 40, step: 5, example: 25 }),
};
type Given = InputsOf<typeof inputs>;

const beams = { free: 'free', tipResting: 'propped', hungBoth: 'hung', heldBoth: 'held' } as const satisfies Record<Given['support'], Support>;

/** The loads square to the limb, N. A load beyond the limb's end hangs on its end. */
const loadsOf = (i: Given): Loads => {
  const square = gravity * cos(i.limbAngle);
  return {
    length: i.length,
    spread: i.shape === 'whole' ? 'even' : 'taper',
    weight: i.weight * square,
    extraLoad: i.extraLoad * square,
    extraAt: Math.min(i.extraAt, i.length),
  };
};

/** Beyond the tip of a limb there is nothing to bend it. */
const momentAt = (loads: Loads, support: Support, x: number): number => (x >= loads.length && support !== 'held' ? 0 : moment(loads, support, x));

type Side = 'bottom' | 'top' | 'either';
const sideOf = (bending: number): Side => (bending < 0 ? 'bottom' : bending > 0 ? 'top' : 'either');

type Sequence = 'oneCut' | 'twoCuts' | 'threeCuts' | 'topFirst' | 'hungBoth' | 'either';
const sequenceOf = (support: Given['support'], side: Side, diameter: number): Sequence => {
  if (side === 'either') return 'either';
  if (support === 'hungBoth') return 'hungBoth';
  if (side === 'top') return 'topFirst';
  if (diameter <= cuts('csu-three-cut-over')) return 'oneCut';
  return diameter <= cuts('uc-three-cut-over') ? 'twoCuts' : 'threeCuts';
};

/** Where no load of one kind would leave no moment: there the size of the moment turns. */
const balance = (i: Given, of: 'weight' | 'extraLoad'): number => {
  const support = beams[i.support];
  const other = of === 'weight' ? 'extraLoad' : 'weight';
  const alone = (some: Partial<Given>): number => momentAt(loadsOf({ ...i, weight: 0, extraLoad: 0, ...some }), support, i.cutAt);
  return -alone({ [other]: i[other] }) / alone({ [of]: 1 });
};
const turns = {
  limbAngle: () => 0,
  weight: (i: Given) => balance(i, 'weight'),
  extraLoad: (i: Given) => balance(i, 'extraLoad'),
};
const bending = { length: 'bends', cutAt: 'bends', weight: 'bends', extraLoad: 'bends', extraAt: 'bends', limbAngle: 'bends' } as const;

export const cutOrder = defineCalculator({
  id: 'cut-order',
  inputs,
  outputs: {
    firstCutSide: { kind: 'choice', options: ['bottom', 'top', 'either'], moves: { length: 'bends', cutAt: 'bends', weight: 'bends', extraLoad: 'bends', extraAt: 'bends' } },
    firstCutDepth: { kind: 'quantity', unit: 'mm', protects: 'both', moves: { diameter: 'up', undercut: 'up' } },
    readyAt: { kind: 'quantity', unit: 'mm', protects: 'down', moves: { ...bending, diameter: 'up', strength: 'up', undercut: 'bends' }, turns },
    stepOffset: { kind: 'quantity', unit: 'mm', protects: 'both', moves: {} },
    moment: { kind: 'quantity', unit: 'Nm', protects: 'both', moves: bending, turns },
    sequence: { kind: 'choice', options: ['oneCut', 'twoCuts', 'threeCuts', 'topFirst', 'hungBoth', 'either'], moves: { length: 'bends', cutAt: 'bends', weight: 'bends', extraLoad: 'bends', extraAt: 'bends', diameter: 'bends' } },
  },
  lead: ['firstCutSide', 'firstCutDepth', 'readyAt'],
  middle: { square: 'N', size: 'Nm', freeMoment: 'Nm', stress: 'MPa', noMoment: 'm', thin: 'mm' },
  findings: {
    overAlready: { level: 'stop', at: 'readyAt' },
    eitherSide: { level: 'caution' },
    mayTurn: { level: 'caution' },
    nearTurn: { level: 'caution' },
    bothSwing: { level: 'caution' },
    undercutDeep: { level: 'caution' },
    undercutShallow: { level: 'caution' },
    expect: { level: 'caution', at: 'readyAt' },
    oneCutDoes: { level: 'note' },
    readKerf: { level: 'note' },
  },
  limits: ['sprung', 'twisted', 'cracked', 'sideways', 'top', 'beyondEnd'],
  relate: (i): InputProblem[] => [
    ...(i.cutAt > i.length ? [{ input: 'cutAt', problem: 'beyondTip', values: { length: i.length } }] : []),
    ...(i.extraLoad > 0 && i.extraAt > i.length ? [{ input: 'extraAt', problem: 'beyondTip', values: { length: i.length } }] : []),
  ],
  compute: (i) => {
    if (i.fault !== 'none') return outside(i.fault);
    const steepest = cuts('steepest-limb');
    if (Math.abs(i.limbAngle) > steepest) return outside('top', { limbAngle: i.limbAngle });
    const support = beams[i.support];
    if (support === 'held' && i.cutAt > i.length) return outside('beyondEnd', { cutAt: i.cutAt, length: i.length });
    const loads = loadsOf(i);
    const here = momentAt(loads, support, i.cutAt);
    // A tip that rests is no rigid prop: the truth lies between no prop and a full one.
    const free = momentAt(loads, 'free', i.cutAt);
    const side: Side = support === 'propped' && here >= 0 ? 'either' : sideOf(here);
    const size = support === 'propped' ? Math.max(Math.abs(here), Math.abs(free)) : Math.abs(here);

    const firstCutDepth = (i.undercut / 100) * i.diameter;
    const section = woodLeft(i.diameter, firstCutDepth, 0);
    const stress = stressLeft(size, section);
    const readyAt = releaseDepth(size, i.diameter, firstCutDepth, i.strength);
    const [stepOffset] = cutsRange('step-offset');
    const [shallow, deep] = cutsRange('undercut-depth');
    const near = cuts('near-no-moment') * i.length;
    const noMoment = placeOfNoMoment(loads, support, Math.max(0, i.cutAt - near), Math.min(i.length, i.cutAt + near));
    const thin = cuts('csu-three-cut-over');
    const large = i.diameter > thin;
    const sequence = sequenceOf(i.support, side, i.diameter);
    return answer(
      { firstCutSide: side, firstCutDepth, readyAt, stepOffset, moment: here, sequence },
      [
        stress >= i.strength && { id: 'overAlready', values: { stress, strength: i.strength } },
        side === 'either' && { id: 'eitherSide' },
        side !== 'either' && support === 'propped' && { id: 'mayTurn' },
        noMoment !== null && { id: 'nearTurn', values: { noMoment } },
        support === 'hung' && { id: 'bothSwing' },
        i.undercut / 100 > deep && { id: 'undercutDeep', values: { firstCutDepth } },
        large && i.undercut / 100 < shallow && { id: 'undercutShallow', values: { firstCutDepth } },
        stress < i.strength && { id: 'expect', values: { readyAt } },
        stress < i.strength && sequence === 'oneCut' && { id: 'oneCutDoes', values: { thin } },
        { id: 'readKerf' },
      ],
      [
        { id: 'square', values: { weight: i.weight, limbAngle: i.limbAngle }, result: { name: 'square', value: loads.weight } },
        { id: i.support, values: { square: loads.weight, length: i.length, cutAt: i.cutAt, extraLoad: i.extraLoad, extraAt: i.extraAt }, result: { name: 'moment', value: here } },
        ...(support === 'propped' ? [{ id: 'freeMoment', values: { length: i.length, cutAt: i.cutAt }, result: { name: 'freeMoment', value: free } }] : []),
        { id: 'firstCutDepth', values: { undercut: i.undercut, diameter: i.diameter }, result: { name: 'firstCutDepth', value: firstCutDepth } },
        { id: 'stress', values: { size, diameter: i.diameter, firstCutDepth }, result: { name: 'stress', value: stress } },
        { id: 'readyAt', values: { strength: i.strength, size }, result: { name: 'readyAt', value: readyAt } },
      ],
    );
  },
});
