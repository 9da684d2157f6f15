/** All calculators, for pages that list, tools and tests. No island imports it: a page carries only its own. */
import { approachDistance } from './calculators/approach-distance.ts';
import { barLength } from './calculators/bar-length.ts';
import { crownShare } from './calculators/crown-share.ts';
import { finalCut } from './calculators/final-cut.ts';
import { height } from './calculators/height.ts';
import { limbWeight } from './calculators/limb-weight.ts';
import { lineClearance } from './calculators/line-clearance.ts';
import { reduction } from './calculators/reduction.ts';
import { stance } from './calculators/stance.ts';
import { fuelMix } from './calculators/fuel-mix.ts';
import { noise } from './calculators/noise.ts';
import { poleLoad } from './calculators/pole-load.ts';
import { vibration } from './calculators/vibration.ts';
import { weather } from './calculators/weather.ts';
import { cutOrder } from './calculators/cut-order.ts';
import { dropZone } from './calculators/drop-zone.ts';
import type { AnyCalculator, AnyInput, GotSet } from './kit/calculator.ts';
import { evaluate as evaluateOne, type Inputs, type Outcome } from './kit/outcome.ts';

/** In handbook order. */
export const calculators: readonly AnyCalculator[] = [
  stance, dropZone, barLength, reduction, limbWeight, cutOrder, height, finalCut, crownShare, approachDistance, lineClearance, poleLoad, vibration, noise, fuelMix, weather,
];

export const calculator = (id: string): AnyCalculator | undefined => calculators.find((c) => c.id === id);

/** A full, valid, illustrative set of inputs. Throws for an unknown id: the ids are ours. */
export const example = (id: string): Inputs => {
  const found = calculator(id);
  if (!found) throw new Error(`no calculator "${id}"; there are: ${calculators.map((c) => c.id).join(', ')}`);
  return exampleOf(found);
};

export const exampleOf = (of: AnyCalculator): Inputs =>
  Object.fromEntries(Object.entries(of.inputs as { [name: string]: AnyInput }).map(([name, input]) => [name, input.example]));

/** Evaluates by id; an unknown id is a problem, as it may come from outside. */
export const evaluate = (id: string, inputs: Inputs, got: GotSet = 'judged'): Outcome => {
  const found = calculator(id);
  if (!found) return { kind: 'problems', problems: [{ input: 'calculator', problem: 'unknownCalculator', values: { calculator: id } }] };
  return evaluateOne(found, inputs, got);
};
