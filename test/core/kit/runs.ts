/** What the properties of all calculators share: how many runs, what is computed, how near is the same. */
import type { AnyCalculator, AnyOutput, Computed } from '#core/kit/calculator.ts';
import type { Inputs } from '#core/kit/outcome.ts';

/** Runs are the same each time; SEED=n in the environment tries others, RUNS=n more of them. */
export const seed = Number(process.env['SEED'] ?? 60);
export const runs = Number(process.env['RUNS'] ?? 60);
export const settings = (numRuns = runs) => ({ seed, numRuns });
export const outputsOf = (calculator: AnyCalculator): [string, AnyOutput][] => Object.entries(calculator.outputs as { [name: string]: AnyOutput });
export const compute = (calculator: AnyCalculator, inputs: Inputs): Computed => calculator.compute(inputs) as Computed;
export const wide = (...figures: number[]): number => 1e-9 + 1e-9 * Math.max(...figures.map(Math.abs));
