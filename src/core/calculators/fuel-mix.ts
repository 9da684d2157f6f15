/** How much oil, and how long will the battery last? */
import { oilFor, runMinutes } from '../formulas/fuel.ts';
import { answer, defineCalculator, type InputProblem, type RawStep } from '../kit/calculator.ts';
import { guess, optionalQuantity, quantity } from '../kit/inputs.ts';

export const fuelMix = defineCalculator({
  id: 'fuel-mix',
  inputs: {
    fuel: quantity('L', { min: 0.1, max: 50, step: 0.1, example: 5 }),
    ratio: quantity('to one', { min: 20, max: 100, step: 1, example: 50 }),
    battery: optionalQuantity('Wh', { min: 20, max: 3000, step: 1, example: 216 }),
    charge: optionalQuantity('%', { min: 1, max: 100, step: 5, example: 100, tolerance: guess({ least: 20 }, { least: 5 }), floor: 1, ceiling: 100 }),
    load: optionalQuantity('W', { min: 50, max: 5000, step: 10, example: 600, tolerance: guess({ share: 0.3 }, { share: 0.1 }) }),
  },
  outputs: {
    oil: { kind: 'quantity', unit: 'mL', step: 1, imperialStep: 0.01, protects: 'both', moves: { fuel: 'up', ratio: 'down' } },
    mixture: { kind: 'quantity', unit: 'L', step: 0.01, imperialStep: 0.01, protects: 'both', moves: { fuel: 'up', ratio: 'down' } },
    runTime: { kind: 'quantity', unit: 'min', protects: 'down', moves: { battery: 'up', charge: 'up', load: 'down' } },
  },
  lead: ['oil', 'runTime'],
  exampleGot: 'measured',
  findings: {
    labelLeads: { level: 'note' },
    batteryCold: { level: 'note' },
  },
  relate: ({ battery, charge, load }): InputProblem[] => {
    const given = { battery, charge, load };
    const empty = Object.entries(given).filter(([, value]) => value === null);
    return empty.length === 0 || empty.length === 3 ? [] : empty.map(([input]) => ({ input, problem: 'needsBattery', values: {} }));
  },
  compute: ({ fuel, ratio, battery, charge, load }) => {
    const oil = oilFor(fuel, ratio);
    const mixture = fuel + oil / 1000;
    const run = battery === null || charge === null || load === null ? null : { battery, charge, load };
    const runTime = run && runMinutes(run.battery, run.charge, run.load);
    const working: RawStep[] = [
      { id: 'oil', values: { fuel, ratio }, result: { name: 'oil', value: oil } },
      { id: 'mixture', values: { fuel, oil }, result: { name: 'mixture', value: mixture } },
      ...(run && runTime !== null ? [{ id: 'runTime', values: run, result: { name: 'runTime', value: runTime } }] : []),
    ];
    return answer({ oil, mixture, runTime }, [{ id: 'labelLeads' }, run !== null && { id: 'batteryCold' }], working);
  },
});
