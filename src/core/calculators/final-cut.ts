/** Where exactly does the last cut go? */
import { noProtectionFrom, union as fact } from '../facts/union.ts';
import { wounds } from '../facts/wounds.ts';
import { circleArea, cutArea } from '../formulas/section.ts';
import { alongInPlane, cutToBranch, fromHorizontal, levelAngle, levelTurnsAt, mirrorAngle, squareAngle } from '../formulas/union.ts';
import { sin } from '../formulas/angles.ts';
import { answer, defineCalculator, type InputProblem, outside } from '../kit/calculator.ts';
import { choice, guess, label, optionalQuantity, quantity } from '../kit/inputs.ts';

const angle = guess({ least: 10 }, { least: 3 });
const size = guess({ share: 0.2 }, { share: 0.02, least: 3 });
type At = { branchAngle: number; ridgeAngle: number; ridgeLength: number; branchDiameter: number };

export const finalCut = defineCalculator({
  id: 'final-cut',
  inputs: {
    union: choice(['collar', 'noCollar', 'codominant', 'dead'], 'noCollar'),
    branchAngle: quantity('deg', { min: 15, max: 120, step: 5, example: 50, tolerance: angle, floor: 5 }),
    ridgeAngle: quantity('deg', { min: 10, max: 80, step: 5, example: 35, tolerance: angle, floor: 0, ceiling: 89 }),
    ridgeLength: quantity('mm', { min: 10, max: 500, step: 5, example: 120, tolerance: size }),
    stemLean: quantity('deg', { min: -45, max: 45, step: 5, example: 0, tolerance: guess({ least: 5 }, { least: 2 }) }),
    branchDiameter: quantity('mm', { min: 20, max: 400, step: 1, example: 80, tolerance: size, girth: true }),
    stemDiameter: optionalQuantity('mm', { min: 20, max: 1500, step: 5, example: 220, tolerance: guess({ share: 0.15 }, { least: 5 }), girth: true }),
    collarSwell: quantity('ratio', { min: 1, max: 2, step: 0.1, example: 1.3, tolerance: guess({ least: 0.2 }, { least: 0.1 }), floor: 1 }),
    poleLength: quantity('m', { min: 1.2, max: 6, step: 0.1, example: 2.8, tolerance: label({ least: 0.05 }) }),
    poleAngle: quantity('deg', { min: 0, max: 75, step: 5, example: 40, tolerance: guess({ least: 5 }, { least: 2 }), floor: 0, ceiling: 80 }),
  },
  exampleGot: {
    branchAngle: 'measured', ridgeAngle: 'measured', ridgeLength: 'measured', stemLean: 'measured', branchDiameter: 'measured',
    stemDiameter: 'measured', collarSwell: 'measured', poleAngle: 'measured',
  },
  outputs: {
    cutAngle: { kind: 'quantity', unit: 'deg', protects: 'both', moves: { ridgeAngle: 'up', branchAngle: 'down' } },
    cutFromHorizontal: { kind: 'quantity', unit: 'deg', protects: 'both', moves: { ridgeAngle: 'down', branchAngle: 'up', stemLean: 'up' } },
    cutToBranch: { kind: 'quantity', unit: 'deg', protects: 'both', moves: { ridgeAngle: 'down', branchAngle: 'down' } },
    otherAngle: {
      kind: 'quantity', unit: 'deg', protects: 'both',
      moves: { branchAngle: 'bends', ridgeAngle: 'up', ridgeLength: 'down', branchDiameter: 'up' },
      turns: { branchAngle: ({ branchDiameter, ridgeAngle, ridgeLength }: At) => levelTurnsAt(branchDiameter, ridgeAngle, ridgeLength) },
    },
    woundLength: {
      kind: 'quantity', unit: 'mm', protects: 'up', moves: { ridgeAngle: 'bends', branchAngle: 'bends', branchDiameter: 'up' },
      turns: { ridgeAngle: ({ branchAngle }: At) => 90 - branchAngle, branchAngle: ({ ridgeAngle }: At) => 90 - ridgeAngle },
    },
    woundWidth: { kind: 'quantity', unit: 'mm', protects: 'up', moves: { branchDiameter: 'up' } },
    woundArea: {
      kind: 'quantity', unit: 'mm2', protects: 'up', moves: { ridgeAngle: 'bends', branchAngle: 'bends', branchDiameter: 'up' },
      turns: { ridgeAngle: ({ branchAngle }: At) => 90 - branchAngle, branchAngle: ({ ridgeAngle }: At) => 90 - ridgeAngle },
    },
    flushArea: {
      kind: 'quantity', unit: 'mm2', protects: 'up', moves: { branchAngle: 'bends', branchDiameter: 'up', collarSwell: 'up' },
      turns: { branchAngle: () => 90 },
    },
    stemShare: { kind: 'quantity', unit: 'ratio', protects: 'up', moves: { branchDiameter: 'up', stemDiameter: 'down' } },
    barLies: { kind: 'choice', options: ['inPlane', 'tooSteep', 'cutRises'], moves: { ridgeAngle: 'bends', branchAngle: 'bends', stemLean: 'bends', poleAngle: 'bends' } },
    shiftAlong: {
      kind: 'quantity', unit: 'm', protects: 'both',
      moves: { ridgeAngle: 'up', branchAngle: 'down', stemLean: 'down', poleLength: 'bends', poleAngle: 'bends' },
      // It grows or shrinks with the pole as the plane falls outwards or inwards; neither turns it.
      turns: { poleLength: () => Number.NaN, poleAngle: () => Number.NaN },
    },
  },
  lead: ['cutFromHorizontal', 'cutToBranch', 'woundArea'],
  middle: { squareArea: 'mm2', otherToBranch: 'deg', otherArea: 'mm2', rulesApart: 'deg' },
  findings: {
    barOffPlane: { level: 'caution', at: 'shiftAlong' },
    deadOutside: { level: 'caution' },
    rulesApart: { level: 'caution', at: 'cutToBranch' },
    nearlyFlush: { level: 'caution', at: { ridgeAngle: 'down' } },
    tooMuchOfStem: { level: 'caution', at: 'stemShare' },
    overThird: { level: 'note', at: 'stemShare' },
    collarLeads: { level: 'note' },
    twoRules: { level: 'note' },
    narrowFork: { level: 'note', at: { branchAngle: 'down' } },
  },
  limits: ['alongBranch', 'noFork'],
  relate: ({ branchDiameter, stemDiameter }): InputProblem[] =>
    stemDiameter !== null && branchDiameter > stemDiameter ? [{ input: 'branchDiameter', problem: 'branchLarger', values: { stemDiameter } }] : [],
  compute: ({ union, branchAngle, ridgeAngle, ridgeLength, stemLean, branchDiameter, stemDiameter, collarSwell, poleLength, poleAngle }) => {
    const mirrored = union === 'collar' || union === 'noCollar';
    const square = squareAngle(branchAngle);
    const cutAngle = mirrored ? mirrorAngle(ridgeAngle) : square;
    const toBranch = cutToBranch(cutAngle, branchAngle);
    const flattest = fact('flattest-cut');
    if (union === 'codominant' && branchAngle > fact('widest-fork')) return outside('noFork', { branchAngle });
    if (toBranch < flattest || toBranch > 180 - flattest) return outside('alongBranch', { cutToBranch: toBranch });

    const plane = fromHorizontal(cutAngle, stemLean);
    const woundLength = branchDiameter / sin(toBranch);
    const woundArea = cutArea(branchDiameter, toBranch);
    const squareArea = circleArea(branchDiameter);
    const flushArea = cutArea(collarSwell * branchDiameter, branchAngle);
    const otherAngle =
      mirrored ? square : union === 'codominant' ? levelAngle(branchDiameter, branchAngle, ridgeAngle, ridgeLength) : null;
    const otherToBranch = otherAngle === null ? null : cutToBranch(otherAngle, branchAngle);
    const rises = plane <= 0 || plane >= 180;
    const shiftAlong = rises ? null : alongInPlane(poleLength, poleAngle, plane);
    const stemShare = stemDiameter === null ? null : branchDiameter / stemDiameter;
    const tooMuch = stemShare !== null && stemShare >= noProtectionFrom();
    const apart = Math.abs(90 - toBranch);
    return answer(
      {
        cutAngle, cutFromHorizontal: plane, cutToBranch: toBranch, otherAngle, woundLength, woundWidth: branchDiameter, woundArea, flushArea,
        stemShare, barLies: rises ? 'cutRises' : shiftAlong === null ? 'tooSteep' : 'inPlane', shiftAlong,
      },
      [
        shiftAlong === null && { id: 'barOffPlane', values: { poleAngle, cutFromHorizontal: plane } },
        union === 'dead' && { id: 'deadOutside' },
        union === 'noCollar' && apart > fact('rules-apart') && { id: 'rulesApart', values: { rulesApart: apart } },
        mirrored && cutAngle < fact('nearly-flush') && { id: 'nearlyFlush', values: { cutAngle } },
        tooMuch && { id: 'tooMuchOfStem', values: { stemShare } },
        stemShare !== null && !tooMuch && stemShare > wounds('parent-share') && { id: 'overThird', values: { stemShare } },
        union === 'collar' && { id: 'collarLeads' },
        union === 'codominant' && { id: 'twoRules' },
        branchAngle < fact('narrow-fork') && { id: 'narrowFork', values: { branchAngle } },
      ],
      [
        mirrored
          ? { id: 'mirror', values: { ridgeAngle }, result: { name: 'cutAngle', value: cutAngle } }
          : { id: 'square', values: { branchAngle }, result: { name: 'cutAngle', value: cutAngle } },
        { id: 'cutFromHorizontal', values: { cutAngle, stemLean }, result: { name: 'cutFromHorizontal', value: plane } },
        { id: 'cutToBranch', values: { cutAngle, branchAngle }, result: { name: 'cutToBranch', value: toBranch } },
        { id: 'woundLength', values: { branchDiameter, cutToBranch: toBranch }, result: { name: 'woundLength', value: woundLength } },
        { id: 'woundArea', values: { woundLength, woundWidth: branchDiameter }, result: { name: 'woundArea', value: woundArea } },
        ...(otherAngle === null || otherToBranch === null ? [] : [
          mirrored
            ? { id: 'otherSquare', values: { branchAngle }, result: { name: 'otherAngle', value: otherAngle } }
            : { id: 'otherLevel', values: { ridgeLength, ridgeAngle, branchDiameter, branchAngle }, result: { name: 'otherAngle', value: otherAngle } },
          { id: 'otherArea', values: { branchDiameter, otherToBranch }, result: { name: 'otherArea', value: cutArea(branchDiameter, otherToBranch) } },
        ]),
        { id: 'squareArea', values: { branchDiameter }, result: { name: 'squareArea', value: squareArea } },
        { id: 'flushArea', values: { collarSwell, branchDiameter, branchAngle }, result: { name: 'flushArea', value: flushArea } },
        ...(shiftAlong === null ? [] : [
          { id: 'shiftAlong', values: { poleLength, poleAngle, cutFromHorizontal: plane }, result: { name: 'shiftAlong', value: shiftAlong } },
        ]),
      ],
    );
  },
});
