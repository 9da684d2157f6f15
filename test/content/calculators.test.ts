/**
 * The words of each calculator fit what core says: every name has its words, no words stand without a name, and every
 * `{name}` in them is filled. What core says is met by running it over inputs of all kinds.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import words from '#content/interface.json' with { type: 'json' };
import type { AnyCalculator, AnyInput, AnyOutput, Computed } from '#core/kit/calculator.ts';
import { evaluate } from '#core/kit/outcome.ts';
import { calculator as find, calculators, exampleOf } from '#core/registry.ts';
import { type CalculatorWords, calculatorWords } from '#src/schemas.ts';
import { anyInputs } from '../core/calculators/box.ts';
import { gotSets, validInputs } from '../core/kit/arbitrary.ts';
import { documents } from './words.ts';

const sheets = new Map(documents('calculators', '.mdx').map((d) => [d.slug, d]));
const sheetOf = (id: string): CalculatorWords => calculatorWords.parse(sheets.get(id)?.front);

/** Names in `{…}`, but facts (`{topic.key}`), which another test follows. */
const namesIn = (text: string): string[] => [...text.matchAll(/\{([A-Za-z0-9]+)\}/g)].map((m) => m[1] as string);
type Said = { findings: Map<string, Set<string>>; outside: Map<string, Set<string>>; working: Map<string, Set<string>>; problems: Map<string, Set<string>> };

const note = (said: Map<string, Set<string>>, id: string, values: object): void => {
  const names = new Set(Object.keys(values));
  // A name that is missing once may not be counted on.
  said.set(id, said.has(id) ? new Set([...(said.get(id) as Set<string>)].filter((n) => names.has(n))) : names);
};

/** All that a calculator says over a few thousand inputs, and the names of the figures that always come with it. */
const saidBy = (calculator: AnyCalculator): Said => {
  const said: Said = { findings: new Map(), outside: new Map(), working: new Map(), problems: new Map() };
  const hear = (computed: Computed): void => {
    if (computed.kind === 'outside') return note(said.outside, computed.limit, computed.values);
    for (const passed of Object.values(computed.outside)) if (passed) note(said.outside, passed.limit, passed.values);
    for (const { id, values } of computed.findings) note(said.findings, id, values ?? {});
    for (const { id, values, result } of computed.working) note(said.working, id, { ...values, [result.name]: result.value });
  };
  fc.assert(fc.property(validInputs(calculator), (inputs) => hear(calculator.compute(inputs) as Computed)), { seed: 5, numRuns: 1500 });
  fc.assert(fc.property(anyInputs(calculator), (inputs) => {
    const outcome = evaluate(calculator, inputs, 'exact');
    if (outcome.kind === 'problems') for (const { problem, values } of outcome.problems) note(said.problems, problem, values);
  }), { seed: 6, numRuns: 500 });
  fc.assert(fc.property(validInputs(calculator), gotSets(calculator), (inputs, got) => {
    const outcome = evaluate(calculator, inputs, got);
    if (outcome.kind === 'answer') for (const { id, values } of outcome.findings) if (id !== 'beyondGuess') note(said.findings, id, values);
  }), { seed: 7, numRuns: 100 });
  return said;
};

describe.each(calculators)('the words of $id', (calculator) => {
  const sheet = sheetOf(calculator.id);
  const inputs = Object.entries(calculator.inputs as { [name: string]: AnyInput });
  const outputs = Object.entries(calculator.outputs as { [name: string]: AnyOutput });
  const said = saidBy(calculator);
  const sorted = (names: Iterable<string>): string[] => [...names].sort();

  it('name every input and its choices, and no other', () => {
    expect(sorted(Object.keys(sheet.inputs))).toEqual(sorted(inputs.map(([n]) => n)));
    for (const [name, input] of inputs) {
      const choices = sheet.inputs[name]?.choices;
      // A list too long to be written twice is named at build.
      if (input.kind === 'choice' && choices) expect(sorted(Object.keys(choices)), name).toEqual(sorted(input.options));
      if (input.kind === 'choice' && !choices) expect(input.options.length, name).toBeGreaterThan(20);
      if (input.kind !== 'choice') expect(choices, name).toBeUndefined();
    }
  });

  it('name every output and its choices, and no other', () => {
    expect(sorted(Object.keys(sheet.outputs))).toEqual(sorted(outputs.map(([n]) => n)));
    for (const [name, output] of outputs) {
      if (output.kind === 'choice') expect(sorted(Object.keys(sheet.outputs[name]?.choices ?? {})), name).toEqual(sorted(output.options));
    }
  });

  it('name every intermediate figure, and no other', () => expect(sorted(Object.keys(sheet.middle))).toEqual(sorted(Object.keys(calculator.middle))));

  it('say every finding, and no other, with figures that come with it', () => {
    expect(sorted(Object.keys(sheet.findings))).toEqual(sorted(Object.keys(calculator.findings)));
    for (const [id, names] of said.findings) expect(namesIn(sheet.findings[id] as string).filter((n) => !names.has(n)), id).toEqual([]);
  });

  it('say every limit, and no other, with figures that come with it', () => {
    expect(sorted(Object.keys(sheet.outside))).toEqual(sorted(calculator.limits));
    for (const [id, names] of said.outside) expect(namesIn(sheet.outside[id] as string).filter((n) => !names.has(n)), id).toEqual([]);
  });

  it('say every step of the working, with figures that come with it', () => {
    for (const [id, names] of said.working) {
      const step = sheet.working[id];
      expect(step, id).toBeDefined();
      expect(namesIn(`${step?.title} ${step?.formula} ${step?.numbers}`).filter((n) => !names.has(n)), id).toEqual([]);
    }
  });

  it('say every problem, with figures that come with it', () => {
    for (const [id, names] of said.problems) {
      const text = sheet.problems[id] ?? (words.problems as { [id: string]: string })[id];
      expect(text, id).toBeDefined();
      expect(namesIn(text as string).filter((n) => !names.has(n) && !['label', 'text', 'example'].includes(n)), id).toEqual([]);
    }
  });

  it('carry on to inputs that there are, from outputs that there are', () => {
    for (const [to, fills] of Object.entries(sheet.carries)) {
      const target = find(to);
      expect(target, to).toBeDefined();
      expect(Object.keys(fills).filter((n) => !(n in exampleOf(target as AnyCalculator))), to).toEqual([]);
      const ours = [...inputs, ...outputs].map(([n]) => n);
      expect(Object.values(fills).flatMap((sum) => sum.split('+')).filter((n) => !ours.includes(n)), to).toEqual([]);
    }
  });
});
