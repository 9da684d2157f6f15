/**
 * Points of the tolerance box, made straight from the definition of a calculator and the rules of tolerance, and
 * on purpose not with core/kit/tolerance.ts: what that says is measured against these.
 */
import type { AnyCalculator, AnyInput, Got, GotSet, SharedError, Tolerance } from '#core/kit/calculator.ts';
import type { Inputs } from '#core/kit/outcome.ts';
import { inputsOf } from './arbitrary.ts';

export const gotOf = (got: GotSet, name: string): Got => (typeof got === 'string' ? got : (got[name] ?? 'judged'));

const toleranceOf = (input: AnyInput, got: Got): Tolerance | null => {
  if (input.kind === 'choice' || !input.tolerance || got === 'exact') return null;
  return 'label' in input.tolerance ? input.tolerance.label : input.tolerance[got];
};

/** One place between −1 (least) and 1 (most): half the time an end, else anywhere. */
const placeBy = (random: () => number): number => {
  const r = random();
  return r < 0.25 ? -1 : r < 0.5 ? 1 : random() * 2 - 1;
};

const moved = (input: Exclude<AnyInput, { kind: 'choice' }>, tolerance: Tolerance, value: number, place: number): number => {
  if (value === 0 && tolerance.sureAtZero) return value;
  const width = Math.max(Math.abs(value) * (tolerance.share ?? 0), tolerance.least ?? 0);
  const by = place < 0 ? (tolerance.minus ?? width) : (tolerance.plus ?? width);
  return Math.min(input.ceiling, Math.max(input.floor, value + place * by));
};

/** One point of the box around `inputs`. */
export const pointIn = (calculator: AnyCalculator, inputs: Inputs, got: GotSet, random: () => number): Inputs => {
  const point: { [name: string]: Inputs[string] } = { ...inputs };
  for (const [name, input] of inputsOf(calculator)) {
    const tolerance = toleranceOf(input, gotOf(got, name));
    const value = inputs[name];
    if (!tolerance || input.kind === 'choice' || value === null || value === undefined) continue;
    const place = placeBy(random);
    point[name] = Array.isArray(value)
      ? value.map((item: number) => moved(input, tolerance, item, place))
      : moved(input, tolerance, value as number, place);
  }
  for (const error of Object.values(calculator.shared as { [name: string]: SharedError })) {
    const entered = error.inputs.filter((name) => inputs[name] !== null);
    const shares = entered.map((name) => ({ exact: 0, measured: error.measured, judged: error.judged })[gotOf(got, name)]);
    const together = placeBy(random);
    const common = shares.every((s) => s === shares[0]);
    entered.forEach((name, i) => {
      const input = calculator.inputs[name] as Exclude<AnyInput, { kind: 'choice' }>;
      const factor = 1 + (shares[i] as number) * (common ? together : placeBy(random));
      // A common factor is not held at the limits, as it is the eye that errs, not the thing.
      const of = (value: number): number => (common ? value * factor : Math.min(input.ceiling, value * factor));
      const value = point[name];
      point[name] = Array.isArray(value) ? value.map(of) : of(value as number);
    });
  }
  return point;
};
