/** Will this bar cross that limb? */
import { cos } from '../formulas/angles.ts';
import { massPerMetre, unknownDensity } from '../formulas/density.ts';
import { cutWidth } from '../formulas/section.ts';
import { answer, defineCalculator } from '../kit/calculator.ts';
import { guess, label, quantity } from '../kit/inputs.ts';

export const barLength = defineCalculator({
  id: 'bar-length',
  inputs: {
    limbDiameter: quantity('mm', { min: 10, max: 400, step: 1, example: 100, tolerance: guess({ share: 0.2 }, { share: 0.02, least: 3 }), girth: true }),
    // The label names the length class; what cuts may be shorter.
    barLength: quantity('mm', { min: 150, max: 400, step: 10, example: 250, tolerance: label({ plus: 0, minus: 10 }) }),
    offSquare: quantity('deg', { min: 0, max: 60, step: 5, example: 15, tolerance: guess({ least: 10 }, { least: 5 }), ceiling: 80 }),
    margin: quantity('mm', { min: 0, max: 100, step: 5, example: 50 }),
  },
  outputs: {
    cutWidth: { kind: 'quantity', unit: 'mm', protects: 'up', moves: { limbDiameter: 'up', offSquare: 'up' } },
    barNeeded: { kind: 'quantity', unit: 'mm', protects: 'up', moves: { limbDiameter: 'up', offSquare: 'up', margin: 'up' } },
    largestLimb: { kind: 'quantity', unit: 'mm', protects: 'down', moves: { barLength: 'up', offSquare: 'down', margin: 'down' } },
    weightPerMetre: { kind: 'quantity', unit: 'kg/m', protects: 'up', moves: { limbDiameter: 'up' } },
  },
  lead: ['barNeeded', 'largestLimb', 'weightPerMetre'],
  middle: { density: 'kg/m3' },
  findings: {
    barTooShort: { level: 'stop', at: { limbDiameter: 'up', offSquare: 'up', barLength: 'down' } },
    heavy: { level: 'note', at: 'weightPerMetre' },
  },
  compute: ({ limbDiameter, barLength: bar, offSquare, margin }) => {
    const width = cutWidth(limbDiameter, offSquare);
    const barNeeded = width + margin;
    const largestLimb = (bar - margin) * cos(offSquare);
    const density = unknownDensity();
    const weightPerMetre = massPerMetre(limbDiameter, density);
    return answer(
      { cutWidth: width, barNeeded, largestLimb, weightPerMetre },
      [
        barNeeded > bar && { id: 'barTooShort', values: { barNeeded, barLength: bar } },
        { id: 'heavy', values: { weightPerMetre } },
      ],
      [
        { id: 'cutWidth', values: { limbDiameter, offSquare }, result: { name: 'cutWidth', value: width } },
        { id: 'barNeeded', values: { cutWidth: width, margin }, result: { name: 'barNeeded', value: barNeeded } },
        { id: 'largestLimb', values: { barLength: bar, margin, offSquare }, result: { name: 'largestLimb', value: largestLimb } },
        { id: 'weightPerMetre', values: { limbDiameter, density }, result: { name: 'weightPerMetre', value: weightPerMetre } },
      ],
    );
  },
});
