/** The worked examples from outside, `shared/checks/<id>.json`, for every calculator there is. Their pages show the same. */
import { describe, expect, it } from 'vitest';
import { type Answer, evaluate, type Inputs } from '#core/kit/outcome.ts';
import { calculators } from '#core/registry.ts';
import { allChecks } from '../../shared/files.ts';

const files = new Map(allChecks().map((file) => [file.calculator, file]));

/** An output, or an intermediate figure of the working. */
const figureOf = (answer: Answer, name: string): number | string | undefined => {
  const output = answer.outputs[name];
  if (output) return output.value;
  return answer.working.find((step) => step.result.name === name)?.result.value;
};

describe.each(calculators)('$id', (calculator) => {
  const rows = files.get(calculator.id)?.rows ?? [];

  it('has examples from outside', () => expect(rows.length).toBeGreaterThanOrEqual(2));

  it.each(rows)('$title', (row) => {
    // Each input is written out, so that a changed example of ours changes nothing here.
    expect(Object.keys(row.given).sort()).toEqual(Object.keys(calculator.inputs).sort());
    const outcome = evaluate(calculator, row.given as Inputs, 'exact');
    if (outcome.kind !== 'answer') throw new Error(JSON.stringify(outcome));
    for (const [name, expected] of Object.entries(row.expect)) {
      const got = figureOf(outcome, name);
      if (typeof expected === 'string') expect(got, name).toBe(expected);
      else expect(Math.abs((got as number) - expected), `${name} is ${got}, ${expected} expected`).toBeLessThanOrEqual(row.tolerance);
    }
  });
});
