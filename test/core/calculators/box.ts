/** Helpers for the properties every calculator is held to: random inputs, random points of a tolerance box, checks from outside. */
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import type { AnyCalculator, AnyInput, Got, GotSet } from '#core/kit/calculator.ts';
import { evaluate, type Answer, type Inputs, type Outcome, type Quantity } from '#core/kit/outcome.ts';
import { atCorner, type Corner, variablesOf } from '#core/kit/tolerance.ts';
import { exampleOf } from '#core/registry.ts';
import { checks } from '#src/schemas.ts';

const arbitraryOf = (input: AnyInput): fc.Arbitrary<Inputs[string]> => {
  const one = (): fc.Arbitrary<number> => {
    const { min, max } = input as { min: number; max: number };
    return fc.oneof(
      { weight: 8, arbitrary: fc.double({ min, max, noNaN: true }) },
      { weight: 1, arbitrary: fc.constantFrom(min, max, Math.min(max, Math.max(min, 0))) },
    );
  };
  const value =
    input.kind === 'choice' ? fc.constantFrom(...input.options)
    : input.kind === 'quantity' ? one()
    : fc.array(one(), { minLength: input.shortest, maxLength: input.longest });
  return input.optional ? fc.option(value as fc.Arbitrary<number>, { nil: null }) : (value as fc.Arbitrary<number>);
};

/** Any inputs the fields of a calculator let through, its problems between inputs included. */
export const anyInputs = (calculator: AnyCalculator, fixed: Inputs = {}): fc.Arbitrary<Inputs> =>
  fc.record(Object.fromEntries(Object.entries(calculator.inputs as { [name: string]: AnyInput })
    .map(([name, input]) => [name, name in fixed ? fc.constant(fixed[name]) : arbitraryOf(input)]))) as fc.Arbitrary<Inputs>;
export const anyGot: fc.Arbitrary<Got> = fc.constantFrom('judged', 'measured', 'exact');

/** Every figure of an outcome finite, and the outcome the same after being written and read. */
export const expectSound = (outcome: Outcome): void => {
  const walk = (value: unknown): void => {
    if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
    else if (value !== null && typeof value === 'object') Object.values(value).forEach(walk);
  };
  walk(outcome);
  const text = JSON.stringify(outcome);
  expect(JSON.stringify(JSON.parse(text))).toBe(text);
};

const gotOf = (got: GotSet) => (name: string): Got => (typeof got === 'string' ? got : (got[name] ?? 'judged'));

/** Inputs at random points of the tolerance box, `place(i)` between 0 and 1 for each variable of each point. */
export const pointsOf = (calculator: AnyCalculator, inputs: Inputs, got: GotSet, count: number, place: () => number): Inputs[] => {
  const variables = variablesOf(calculator, inputs, gotOf(got));
  return Array.from({ length: count }, () => {
    const corner: Corner = Object.fromEntries(variables.map((v) => [v.name, v.low + (v.high - v.low) * place()]));
    return atCorner(calculator, variables, inputs, corner);
  });
};

/** A seeded generator, 0 to under 1 (Park and Miller's minimal standard). */
export const seeded = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return (state - 1) / 2147483646;
  };
};

/**
 * Low and high of every quantity of an answer bound what the calculator says at points of its box, and what is planned
 * on stands at the protecting end. Returns how many figures were compared, so that a test can see that some were.
 */
export const expectBounded = (calculator: AnyCalculator, inputs: Inputs, got: GotSet, count: number, place: () => number, slack = 1e-9): number => {
  const outcome = evaluate(calculator, inputs, got);
  if (outcome.kind !== 'answer') return 0;
  let compared = 0;
  for (const at of pointsOf(calculator, inputs, got, count, place)) {
    const there = calculator.compute(at as never);
    if (there.kind !== 'answer') continue;
    for (const [name, figure] of Object.entries((outcome as Answer).outputs)) {
      const value = there.outputs[name];
      if (figure === null || 'also' in figure || typeof value !== 'number') continue;
      const { low, high, planOn, value: nominal } = figure as Quantity;
      const give = slack * Math.max(1, Math.abs(value));
      expect(value, `${name} at ${JSON.stringify(at)} of ${JSON.stringify(inputs)}`).toBeGreaterThanOrEqual(low - give);
      expect(value, `${name} at ${JSON.stringify(at)} of ${JSON.stringify(inputs)}`).toBeLessThanOrEqual(high + give);
      const { protects } = calculator.outputs[name];
      if (protects === 'up') expect(planOn).toBeGreaterThanOrEqual(nominal - give);
      else if (protects === 'down') expect(planOn).toBeLessThanOrEqual(nominal + give);
      else expect(planOn).toBeNull();
      compared++;
    }
  }
  return compared;
};

/** The worked examples from outside of `shared/checks/<id>.json`. */
export const checkRows = (id: string) => checks.parse(JSON.parse(readFileSync(`shared/checks/${id}.json`, 'utf8'))).rows;

export const expectCheck = (calculator: AnyCalculator, row: ReturnType<typeof checkRows>[number]): void => {
  const outcome = evaluate(calculator, { ...exampleOf(calculator), ...row.given } as Inputs, 'exact');
  expect(outcome).toMatchObject({ kind: 'answer' });
  for (const [name, expected] of Object.entries(row.expect)) {
    const figure = (outcome as Answer).outputs[name] as { value: number | string };
    if (typeof expected === 'string') expect(figure.value).toBe(expected);
    else expect(Math.abs((figure.value as number) - expected)).toBeLessThanOrEqual(row.tolerance);
  }
};
