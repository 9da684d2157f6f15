/** What do my hands carry at this angle? */
import { load as fact } from '../facts/load.ts';
import { holdSeconds } from '../formulas/endurance.ts';
import { alongPoleForce, frontHandForce, handsWeight, type Held, leverMoment, rearHandForce } from '../formulas/held-pole.ts';
import { answer, defineCalculator, type InputProblem, outside, type RawStep } from '../kit/calculator.ts';
import { guess, label, optionalQuantity, quantity } from '../kit/inputs.ts';

/** The middle of the published fit, shortened or lengthened by how far single people lie from it. */
const holds = (effort: number | null): { shortest: number; longest: number } | null => {
  if (effort === null || effort < fact('power-law-from')) return null;
  const middle = holdSeconds('shoulder', effort / 100);
  const band = fact('power-law-band') / 100;
  return { shortest: middle * (1 - band), longest: middle * (1 + band) };
};

/** Nowhere: the two ends are the extremes. */
const never = (): number => Number.NaN;
/** Where the rear hand neither lifts nor presses, by the balance and by the grips: mass cancels out. */
const balanceAtRest = ({ gripSpacing, strapShare, strapAt }: Held): number => (1 - strapShare / 100) * gripSpacing + (strapShare / 100) * strapAt;
const spacingAtRest = ({ balance, strapShare, strapAt }: Held): number => (balance - (strapShare / 100) * strapAt) / (1 - strapShare / 100);

export const poleLoad = defineCalculator({
  id: 'pole-load',
  inputs: {
    mass: quantity('kg', { min: 3, max: 12, step: 0.1, example: 7, tolerance: label({ share: 0.05 }) }),
    balance: quantity('m', { min: 0.2, max: 3, step: 0.05, example: 1.2, tolerance: guess({ share: 0.15 }, { least: 0.05 }) }),
    gripSpacing: quantity('m', { min: 0.4, max: 1.5, step: 0.05, example: 0.8, tolerance: guess({ least: 0.1 }, { least: 0.03 }), floor: 0.2 }),
    poleAngle: quantity('deg', { min: 0, max: 75, step: 1, example: 45, tolerance: guess({ least: 10 }, { least: 3 }), ceiling: 89 }),
    strapShare: quantity('%', { min: 0, max: 100, step: 5, example: 0 }),
    strapAt: quantity('m', { min: 0, max: 2, step: 0.05, example: 0.4 }),
    effort: optionalQuantity('%', { min: 1, max: 100, step: 1, example: 30, tolerance: guess({ least: 10 }, { least: 5 }), floor: 1, ceiling: 100 }),
  },
  outputs: {
    // Where a guess puts the balance behind the strap, the lever changes its sign: what scales it bends.
    frontHand: { kind: 'quantity', unit: 'N', protects: 'up', moves: { mass: 'bends', balance: 'up', gripSpacing: 'bends', poleAngle: 'bends', strapShare: 'down', strapAt: 'down' }, turns: { mass: never, gripSpacing: never, poleAngle: never } },
    rearHand: { kind: 'quantity', unit: 'N', protects: 'up', moves: { mass: 'up', balance: 'bends', gripSpacing: 'bends', poleAngle: 'down', strapShare: 'bends', strapAt: 'bends' }, turns: { balance: balanceAtRest, gripSpacing: spacingAtRest } },
    rearPush: { kind: 'choice', options: ['lifts', 'presses'], moves: { balance: 'bends', gripSpacing: 'bends', strapShare: 'bends', strapAt: 'bends' } },
    alongPole: { kind: 'quantity', unit: 'N', protects: 'up', moves: { mass: 'up', poleAngle: 'up', strapShare: 'down' } },
    lever: { kind: 'quantity', unit: 'Nm', protects: 'up', moves: { mass: 'bends', balance: 'up', poleAngle: 'bends', strapShare: 'down', strapAt: 'down' }, turns: { mass: never, poleAngle: never } },
    shortestHold: { kind: 'quantity', unit: 's', step: 1, protects: 'down', moves: { effort: 'down' } },
    longestHold: { kind: 'quantity', unit: 's', step: 1, protects: 'down', moves: { effort: 'down' } },
  },
  lead: ['frontHand', 'lever', 'alongPole'],
  exampleGot: { balance: 'measured', gripSpacing: 'measured' },
  middle: { weight: 'N', handsWeight: 'N', rear: 'N', from: '%', thin: '%' },
  findings: {
    effortThin: { level: 'caution', at: { effort: 'down' } },
    rearPresses: { level: 'note' },
    strapNotTip: { level: 'note' },
  },
  limits: ['lightHold'],
  relate: ({ strapShare, strapAt, balance }): InputProblem[] =>
    strapShare > 0 && strapAt > balance ? [{ input: 'strapAt', problem: 'strapBeyond', values: { balance } }] : [],
  compute: (i) => {
    const hands = handsWeight(i);
    const lever = leverMoment(i);
    const front = frontHandForce(i);
    const rear = rearHandForce(i);
    const along = alongPoleForce(i);
    const hold = holds(i.effort);
    const { mass, balance, gripSpacing, poleAngle, strapShare, strapAt, effort } = i;
    const weight = mass * fact('gravity');
    const unheld = effort === null ? null : outside('lightHold', { effort, from: fact('power-law-from') });
    const working: RawStep[] = [
      { id: 'weight', values: { mass }, result: { name: 'weight', value: weight } },
      { id: 'handsWeight', values: { weight, strapShare }, result: { name: 'handsWeight', value: hands } },
      { id: 'lever', values: { weight, balance, strapShare, strapAt, poleAngle }, result: { name: 'lever', value: lever } },
      { id: 'frontHand', values: { lever, gripSpacing }, result: { name: 'frontHand', value: front } },
      { id: 'rear', values: { handsWeight: hands, poleAngle, frontHand: front }, result: { name: 'rear', value: rear } },
      { id: 'alongPole', values: { handsWeight: hands, poleAngle }, result: { name: 'alongPole', value: along } },
      ...(hold && effort !== null ? [{ id: 'shortestHold', values: { effort }, result: { name: 'shortestHold', value: hold.shortest } }] : []),
    ];
    return answer(
      {
        frontHand: front, rearHand: Math.abs(rear), rearPush: rear < 0 ? 'presses' : 'lifts', alongPole: along, lever,
        shortestHold: hold?.shortest ?? unheld, longestHold: hold?.longest ?? unheld,
      },
      [
        hold !== null && effort !== null && effort < fact('power-law-thin') && { id: 'effortThin', values: { effort, thin: fact('power-law-thin') } },
        rear < 0 && { id: 'rearPresses', values: { rear } },
        strapShare > 0 && { id: 'strapNotTip', values: { lever } },
      ],
      working,
    );
  },
});
