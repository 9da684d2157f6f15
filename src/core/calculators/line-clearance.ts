/** Does my reach, or the limb, come too near? */
import { lines as fact } from '../facts/lines.ts';
import { comesOver, feetBetween, heldOutline, limbGap, reachGap, type Setting, turningOffsets, workingGap } from '../formulas/line-gaps.ts';
import { limbTop } from '../formulas/limb-reach.ts';
import { answer, defineCalculator, type InputProblem, type RawStep } from '../kit/calculator.ts';
import { choice, guess, label, quantity } from '../kit/inputs.ts';

const inputs = {
  lineHeight: quantity('m', { min: 3, max: 60, step: 0.1, example: 9, tolerance: guess({ share: 0.25, least: 1 }, { least: 0.3 }) }),
  lineOffset: quantity('m', { min: -60, max: 60, step: 0.1, example: 8, tolerance: guess({ share: 0.2, least: 0.5 }, { least: 0.2 }) }),
  lineRuns: choice(['across', 'along', 'aslant'], 'aslant'),
  requiredDistance: quantity('m', { min: 0.3, max: 100, step: 0.01, example: 3 }),
  movement: quantity('m', { min: 0, max: 10, step: 0.1, example: 1 }),
  workingFrom: choice(['ground', 'platform'], 'ground'),
  platformHeight: quantity('m', { min: 0, max: 40, step: 0.1, example: 0, tolerance: guess({ least: 0.5 }, { least: 0.1 }) }),
  boomReach: quantity('m', { min: 0, max: 30, step: 0.1, example: 4 }),
  handHeight: quantity('m', { min: 1.2, max: 2.4, step: 0.05, example: 2 }),
  poleLength: quantity('m', { min: 1.2, max: 6, step: 0.1, example: 3.4, tolerance: label({ least: 0.05 }) }),
  barTip: quantity('m', { min: 0, max: 0.5, step: 0.01, example: 0.2 }),
  stumble: quantity('m', { min: 0, max: 2, step: 0.1, example: 1 }),
  poleAngle: quantity('deg', { min: -60, max: 90, step: 1, example: 45 }),
  standOff: quantity('m', { min: 0, max: 15, step: 0.1, example: 2.4 }),
  cutHeight: quantity('m', { min: 0.5, max: 40, step: 0.1, example: 4.4, tolerance: guess({ share: 0.15, least: 0.3 }, { least: 0.1 }) }),
  limbLength: quantity('m', { min: 0.3, max: 8, step: 0.1, example: 2, tolerance: guess({ share: 0.2 }, { least: 0.1 }) }),
  limbAngle: quantity('deg', { min: -60, max: 85, step: 1, example: 20, floor: -90, ceiling: 90, tolerance: guess({ least: 10 }, { least: 3 }) }),
  springUp: quantity('m', { min: 0, max: 5, step: 0.1, example: 0.5 }),
} as const;
type Inputs = { readonly [K in keyof typeof inputs]: (typeof inputs)[K] extends { kind: 'choice' } ? string : number };

/** The figures as the geometry wants them. From the ground the platform's own figures count for nothing. */
export const settingOf = (given: object): Setting => {
  const i = given as Inputs;
  const onPlatform = i.workingFrom === 'platform';
  return {
    lineHeight: i.lineHeight,
    lineOffset: i.lineOffset,
    lineRuns: i.lineRuns as Setting['lineRuns'],
    floor: onPlatform ? i.platformHeight : 0,
    handHeight: i.handHeight,
    reach: i.poleLength + i.barTip,
    poleAngle: i.poleAngle,
    standOff: i.standOff,
    stumble: i.stumble,
    cutHeight: i.cutHeight + i.springUp,
    limbLength: i.limbLength,
    limbAngle: i.limbAngle,
    platform: onPlatform
      ? { boomReach: i.boomReach, halfLength: fact('basket-half-length'), rail: fact('basket-rail'), machineHeight: fact('machine-height') }
      : null,
  };
};

const gap = { kind: 'quantity', unit: 'm', step: 0.1, protects: 'down' } as const;
/** What brings body, pole and platform nearer. */
const reaching = { platformHeight: 'down', boomReach: 'down', handHeight: 'down', poleLength: 'down', barTip: 'down' } as const;
const limb = { cutHeight: 'down', limbLength: 'down', limbAngle: 'down', springUp: 'down' } as const;
const line = { lineHeight: 'up', lineOffset: 'bends' } as const;
const all = { ...line, ...reaching, stumble: 'down', standOff: 'bends', ...limb } as const;
const overFeet = (i: object): number[] => feetBetween(settingOf(i));
const turns = { lineOffset: (i: object) => turningOffsets(settingOf(i)) };

export const lineClearance = defineCalculator({
  id: 'line-clearance',
  inputs,
  outputs: {
    margin: { ...gap, moves: { ...all, requiredDistance: 'down', movement: 'down' }, turns },
    leastGap: { ...gap, moves: all, turns },
    workingGap: {
      ...gap,
      moves: { ...line, ...reaching, poleAngle: 'bends', standOff: 'bends' },
      turns: { lineOffset: (i: object) => heldOutline(settingOf(i)).map(({ x }) => x) },
    },
    reachGap: { ...gap, moves: { ...line, ...reaching, stumble: 'down', standOff: 'bends' }, turns: { lineOffset: overFeet } },
    limbGap: { ...gap, moves: { ...line, ...limb }, turns: { lineOffset: () => 0 } },
  },
  lead: ['margin', 'leastGap'],
  exampleGot: { lineHeight: 'measured', lineOffset: 'measured', cutHeight: 'measured' },
  middle: { needed: { unit: 'm', protects: 'up' }, raisedHands: 'm', poleReach: 'm', springHeight: 'm', highestOfLimb: 'm' },
  findings: {
    tooNear: { level: 'stop', at: 'margin' },
    over: { level: 'stop', at: 'margin' },
    heldNear: { level: 'stop', at: 'workingGap' },
    limbNear: { level: 'stop', at: 'limbGap' },
    notIfYouStumble: { level: 'caution', at: 'margin' },
    parentSprings: { level: 'caution', at: 'limbGap' },
    noMovement: { level: 'caution' },
    askFirst: { level: 'note', at: 'limbGap' },
  },
  relate: ({ workingFrom, platformHeight }): InputProblem[] =>
    workingFrom === 'platform' && platformHeight === 0 ? [{ input: 'platformHeight', problem: 'noPlatform', values: {} }] : [],
  compute: (i) => {
    const s = settingOf(i);
    const [held, reached, branch] = [workingGap(s), reachGap(s), limbGap(s)];
    const least = Math.min(held, reached, branch);
    const { requiredDistance, movement } = i;
    const needed = requiredDistance + movement;
    const margin = least - needed;
    const raisedHands = s.floor + s.handHeight;
    const springHeight = s.cutHeight;
    const highestOfLimb = springHeight + limbTop(s.limbLength, s.limbAngle);
    const working: RawStep[] = [
      { id: 'needed', values: { requiredDistance, movement }, result: { name: 'needed', value: needed } },
      { id: 'raisedHands', values: { platformHeight: s.floor, handHeight: s.handHeight }, result: { name: 'raisedHands', value: raisedHands } },
      { id: 'poleReach', values: { poleLength: i.poleLength, barTip: i.barTip }, result: { name: 'poleReach', value: s.reach } },
      { id: 'workingGap', values: { raisedHands, poleReach: s.reach, poleAngle: i.poleAngle }, result: { name: 'workingGap', value: held } },
      { id: 'reachGap', values: { raisedHands, poleReach: s.reach, stumble: i.stumble }, result: { name: 'reachGap', value: reached } },
      { id: 'springHeight', values: { cutHeight: i.cutHeight, springUp: i.springUp }, result: { name: 'springHeight', value: springHeight } },
      { id: 'highestOfLimb', values: { springHeight, limbLength: i.limbLength, limbAngle: i.limbAngle }, result: { name: 'highestOfLimb', value: highestOfLimb } },
      { id: 'limbGap', values: { lineHeight: i.lineHeight, lineOffset: i.lineOffset, springHeight }, result: { name: 'limbGap', value: branch } },
      { id: 'leastGap', values: { workingGap: held, reachGap: reached, limbGap: branch }, result: { name: 'leastGap', value: least } },
      { id: 'margin', values: { leastGap: least, requiredDistance, movement }, result: { name: 'margin', value: margin } },
    ];
    return answer(
      { margin, leastGap: least, workingGap: held, reachGap: reached, limbGap: branch },
      [
        margin < 0 && { id: 'tooNear', values: { leastGap: least, requiredDistance, movement } },
        comesOver(s, needed) && { id: 'over', values: { needed } },
        held < needed && { id: 'heldNear', values: { workingGap: held, needed } },
        branch < needed && { id: 'limbNear', values: { limbGap: branch, needed } },
        held >= needed && reached < needed && { id: 'notIfYouStumble', values: { reachGap: reached, needed } },
        i.lineHeight > i.cutHeight && Math.abs(i.lineOffset) < needed && { id: 'parentSprings', values: { springUp: i.springUp } },
        movement === 0 && { id: 'noMovement' },
        branch < fact('branch-lengths') * i.limbLength && { id: 'askFirst', values: { limbGap: branch, limbLength: i.limbLength } },
      ],
      working,
    );
  },
});
