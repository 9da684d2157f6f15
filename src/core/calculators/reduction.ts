/** Is that lateral big enough to cut back to? */
import { reduction as fact } from '../facts/reduction.ts';
import { cutArea } from '../formulas/section.ts';
import { answer, defineCalculator, type InputProblem } from '../kit/calculator.ts';
import { choice, guess, quantity } from '../kit/inputs.ts';

const own = guess({ share: 0.1 }, { least: 2 });
const shares = { third: 'least-share', half: 'half-share' } as const;

export const reduction = defineCalculator({
  id: 'reduction',
  inputs: {
    parentDiameter: quantity('mm', { min: 15, max: 300, step: 1, example: 80, tolerance: own, girth: true }),
    lateralDiameter: quantity('mm', { min: 5, max: 300, step: 1, example: 30, tolerance: own, girth: true }),
    lateralAngle: quantity('deg', { min: 10, max: 90, step: 5, example: 45, tolerance: guess({ least: 10 }, { least: 5 }), floor: 5, ceiling: 90 }),
    rule: choice(['third', 'half'], 'third'),
  },
  // One eye judged both: what it adds to one it adds to the other, and the ratio does not feel it.
  shared: { eye: { inputs: ['parentDiameter', 'lateralDiameter'], judged: 0.2, measured: 0 } },
  outputs: {
    ratio: { kind: 'quantity', unit: 'ratio', protects: 'down', moves: { parentDiameter: 'down', lateralDiameter: 'up' } },
    smallestLateral: { kind: 'quantity', unit: 'mm', protects: 'up', moves: { parentDiameter: 'up', eye: 'up' } },
    largestParent: { kind: 'quantity', unit: 'mm', protects: 'down', moves: { lateralDiameter: 'up', eye: 'up' } },
    cutArea: { kind: 'quantity', unit: 'mm2', protects: 'up', moves: { parentDiameter: 'up', eye: 'up', lateralAngle: 'down' } },
  },
  lead: ['ratio', 'smallestLateral'],
  middle: { share: 'ratio' },
  findings: { lateralTooSmall: { level: 'caution', at: 'ratio' } },
  relate: ({ parentDiameter, lateralDiameter }): InputProblem[] =>
    lateralDiameter > parentDiameter
      ? [{ input: 'lateralDiameter', problem: 'lateralLarger', values: { parentDiameter } }]
      : [],
  compute: ({ parentDiameter, lateralDiameter, lateralAngle, rule }) => {
    const share = fact(shares[rule]);
    const ratio = lateralDiameter / parentDiameter;
    const smallestLateral = share * parentDiameter;
    const largestParent = lateralDiameter / share;
    const area = cutArea(parentDiameter, lateralAngle);
    return answer(
      { ratio, smallestLateral, largestParent, cutArea: area },
      [ratio < share && { id: 'lateralTooSmall', values: { ratio, share } }],
      [
        { id: 'ratio', values: { lateralDiameter, parentDiameter }, result: { name: 'ratio', value: ratio } },
        { id: 'smallestLateral', values: { share, parentDiameter }, result: { name: 'smallestLateral', value: smallestLateral } },
        { id: 'largestParent', values: { share, lateralDiameter }, result: { name: 'largestParent', value: largestParent } },
        { id: 'cutArea', values: { parentDiameter, lateralAngle }, result: { name: 'cutArea', value: area } },
      ],
    );
  },
});
