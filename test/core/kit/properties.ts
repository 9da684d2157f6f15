/**
 * What holds for every calculator, whatever it works out. `holdsForAll(calculator)` declares the tests.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AnyCalculator, AnyOutput, Computed, GotSet, SharedError } from '#core/kit/calculator.ts';
import { readLink, reserved, writeLink } from '#core/kit/link.ts';
import { type Answer, evaluate, type Inputs, type Outcome, type Quantity } from '#core/kit/outcome.ts';
import { checkInputs } from '#core/kit/problems.ts';
import { exampleOf } from '#core/registry.ts';
import { gotSets, inputsOf, validInputs } from './arbitrary.ts';
import { pointIn } from './box.ts';
import { directions } from './directions.ts';
import { randomFrom } from './random.ts';
import { compute, outputsOf, runs, seed, settings, wide } from './runs.ts';

/** Points of the box for each set of inputs. */
const dense = 100;

const isQuantity = (figure: Answer['outputs'][string] | undefined): figure is Quantity => !!figure && 'low' in figure;

/** Every number in it is finite and nothing is undefined: what JSON would lose is not there. */
const wholeInJson = (value: unknown, path = 'outcome'): void => {
  if (typeof value === 'number') expect(Number.isFinite(value), path).toBe(true);
  else if (value !== null && typeof value === 'object') for (const [key, inner] of Object.entries(value)) wholeInJson(inner, `${path}.${key}`);
  else expect(['string', 'boolean', 'object'], path).toContain(typeof value);
};

/** Findings, limits and steps are declared, and their figures carry names that words can be found for. */
const namesOf = (calculator: AnyCalculator, computed: Computed): void => {
  const figures = new Set([...Object.keys(calculator.inputs), ...Object.keys(calculator.outputs), ...Object.keys(calculator.middle)]);
  const known = (names: string[]): void => expect(names.filter((n) => !figures.has(n))).toEqual([]);
  if (computed.kind === 'outside') {
    expect(calculator.limits).toContain(computed.limit);
    known(Object.keys(computed.values));
    return;
  }
  expect(Object.keys(computed.outputs).sort()).toEqual(Object.keys(calculator.outputs).sort());
  for (const { id, values } of computed.findings) {
    expect(Object.keys(calculator.findings)).toContain(id);
    known(Object.keys(values ?? {}));
  }
  for (const step of computed.working) known([...Object.keys(step.values), step.result.name]);
};

const definition = (calculator: AnyCalculator): void => {
  const inputs = Object.keys(calculator.inputs);
  const movers = [...inputs, ...Object.keys(calculator.shared)];
  it('names its parts well', () => {
    expect(calculator.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    for (const name of [...movers, ...Object.keys(calculator.outputs), ...Object.keys(calculator.findings), ...calculator.limits, ...Object.keys(calculator.middle)]) {
      expect(name).toMatch(/^[a-z][A-Za-z0-9]*$/);
    }
    expect(inputs.filter((n) => (reserved as readonly string[]).includes(n))).toEqual([]);
    expect(new Set([...inputs, ...Object.keys(calculator.outputs), ...Object.keys(calculator.middle)]).size)
      .toBe(inputs.length + Object.keys(calculator.outputs).length + Object.keys(calculator.middle).length);
  });
  it('refers to what is there', () => {
    expect(calculator.lead.length).toBeGreaterThan(0);
    for (const name of calculator.lead) expect(Object.keys(calculator.outputs)).toContain(name);
    for (const [, output] of outputsOf(calculator)) for (const mover of Object.keys(output.moves)) expect(movers).toContain(mover);
    for (const { at } of Object.values(calculator.findings as AnyCalculator['findings'])) {
      if (typeof at === 'string') expect(Object.keys(calculator.outputs)).toContain(at);
      else for (const name of Object.keys(at ?? {})) expect(movers).toContain(name);
    }
    for (const error of Object.values(calculator.shared as { [name: string]: SharedError })) {
      for (const name of error.inputs) expect(['quantity', 'list']).toContain(calculator.inputs[name]?.kind);
    }
    if (typeof calculator.exampleGot !== 'string') for (const name of Object.keys(calculator.exampleGot)) expect(inputs).toContain(name);
  });
  it('has an example that is whole, good and answered', () => {
    const example = exampleOf(calculator);
    expect(checkInputs(calculator, example)).toEqual([]);
    expect(evaluate(calculator, example, calculator.exampleGot).kind).toBe('answer');
    for (const [, input] of inputsOf(calculator)) if (input.kind === 'quantity') expect(input.max).toBeGreaterThan(input.min);
  });
};

/** Outcomes over all inputs and every way of getting them. */
const outcomes = (calculator: AnyCalculator, name: string, holds: (inputs: Inputs, got: GotSet, outcome: Outcome) => void, numRuns = runs): void => {
  it(name, () => {
    fc.assert(fc.property(validInputs(calculator), gotSets(calculator), (inputs, got) => holds(inputs, got, evaluate(calculator, inputs, got))), settings(numRuns));
  });
};

const kinds = (calculator: AnyCalculator): void => {
  outcomes(calculator, 'gives a finite answer or says outside, with declared names, and survives JSON', (inputs, _got, outcome) => {
    expect(['answer', 'outside']).toContain(outcome.kind);
    wholeInJson(outcome);
    const text = JSON.stringify(outcome);
    expect(JSON.stringify(JSON.parse(text))).toBe(text);
    namesOf(calculator, compute(calculator, inputs));
  }, 4 * runs);

  it('bad inputs are problems at known fields, never more', () => {
    const bad = fc.oneof(fc.constantFrom<unknown>(null, undefined, Number.NaN, Infinity, -Infinity, '', 'x', '5', [], [Number.NaN], {}, true, 1e300, -1e300), fc.double());
    const names = inputsOf(calculator).map(([n]) => n);
    fc.assert(fc.property(validInputs(calculator), fc.constantFrom(...names), bad, (inputs, name, value) => {
      const outcome = evaluate(calculator, { ...inputs, [name]: value } as Inputs, 'judged');
      wholeInJson(outcome);
      if (outcome.kind === 'problems') for (const p of outcome.problems) expect(names).toContain(p.input);
    }), settings());
  });
};

/** Every way a figure may stand in a link or a file leads back to it. */
const links = (calculator: AnyCalculator): void => {
  it('comes back from its link with the same outcome', () => {
    fc.assert(fc.property(validInputs(calculator), gotSets(calculator), (inputs, got) => {
      const read = readLink(calculator, writeLink(calculator, inputs, got));
      if (read.kind === 'example') throw new Error('read as the example');
      expect(read.problems).toEqual([]);
      expect(JSON.stringify(evaluate(calculator, read.inputs, read.got))).toBe(JSON.stringify(evaluate(calculator, inputs, got)));
    }), settings());
  });
};

/**
 * A calculator with ranges of its own gives edges that no case passes, not the worst case itself: the inputs told lead
 * up to the edge, never over it. Two edges of one case may differ by what a cell is wide.
 */
const cellWide = (calculator: AnyCalculator, value: number): number => (calculator.ranges ? 0.005 * Math.max(1, Math.abs(value)) : 0);

const protects = (calculator: AnyCalculator): void => {
  outcomes(calculator, 'plans on the end that protects, and the inputs there lead to it', (_inputs, _got, outcome) => {
    if (outcome.kind !== 'answer') return;
    for (const [name, output] of outputsOf(calculator)) {
      const figure = outcome.outputs[name];
      if (output.kind === 'choice' || !isQuantity(figure)) continue;
      expect(figure.low, name).toBeLessThanOrEqual(figure.value + wide(figure.value));
      expect(figure.high, name).toBeGreaterThanOrEqual(figure.value - wide(figure.value));
      expect(figure.planOn, name).toBe({ up: figure.high, down: figure.low, both: null }[output.protects]);
      if (figure.planOn === null) {
        expect(figure.planAt).toBeNull();
        continue;
      }
      const there = compute(calculator, figure.planAt as Inputs);
      const again = (there.kind === 'answer' ? there.outputs[name] : null) as number;
      if (!calculator.ranges) expect(Math.abs(again - figure.planOn), name).toBeLessThanOrEqual(wide(figure.planOn));
      else expect(output.protects === 'up' ? again - figure.planOn : figure.planOn - again, name).toBeLessThanOrEqual(cellWide(calculator, again));
    }
  });
};

/** How far a range may fall short of a sample: a search for a turn stops at about 10⁻⁵ of the tolerance, at a kink too. */
const searched = (output: AnyOutput, figure: Quantity): number =>
  Object.values(output.moves).includes('bends') ? 2e-4 * (figure.high - figure.low) : 0;

/** Findings raised from a corner of the box (not from the figures as entered alone). */
const cornered = (calculator: AnyCalculator, level: string): Set<string> =>
  new Set(Object.entries(calculator.findings as AnyCalculator['findings']).filter(([, f]) => f.level === level && f.at !== undefined).map(([id]) => id));

const bounds = (calculator: AnyCalculator): void => {
  const stops = cornered(calculator, 'stop');
  outcomes(calculator, 'its ranges hold every point of the tolerance; what the points meet is said', (inputs, got, outcome) => {
    if (outcome.kind !== 'answer') return;
    const random = randomFrom(JSON.stringify([inputs, got]).length * 7919 + seed);
    const beyond = outcome.findings.some((f) => f.id === 'beyondGuess');
    for (let i = 0; i < dense; i++) {
      const point = pointIn(calculator, inputs, got, random);
      const there = compute(calculator, point);
      if (there.kind === 'outside') {
        expect(beyond, `outside (${there.limit}) at ${JSON.stringify(point)} and not said`).toBe(true);
        continue;
      }
      if (there.findings.some((f) => stops.has(f.id))) {
        expect(outcome.findings.some((f) => f.level === 'stop'), `a stop at ${JSON.stringify(point)} and none said`).toBe(true);
      }
      for (const [name, output] of outputsOf(calculator)) {
        const [figure, value] = [outcome.outputs[name], there.outputs[name]];
        const where = `${name} = ${value} at ${JSON.stringify(point)}`;
        if (output.kind === 'choice' || !isQuantity(figure) || typeof value !== 'number') continue;
        const slack = wide(value) + searched(output, figure) + cellWide(calculator, value);
        // An end that does not protect is unknown where it lies outside.
        if (output.protects !== 'up' || !beyond) expect(value, where).toBeGreaterThanOrEqual(figure.low - slack);
        if (output.protects !== 'down' || !beyond) expect(value, where).toBeLessThanOrEqual(figure.high + slack);
      }
    }
  });
};

/** Declares the tests for one calculator. */
export const holdsForAll = (calculator: AnyCalculator): void => {
  describe(calculator.id, () => {
    definition(calculator);
    kinds(calculator);
    links(calculator);
    protects(calculator);
    bounds(calculator);
    directions(calculator);
  });
};

