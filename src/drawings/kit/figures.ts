/** Figures as a drawing says them: rounded by core's `showValue` alone, in both unit systems; and figures out of an outcome. */
import type { Outcome, Quantity, Step } from '#core/kit/outcome.ts';
import { showValue, type Direction } from '#core/kit/show.ts';
import type { Unit } from '#core/kit/units.ts';
import type { Said } from './say.ts';

export const said = (unit: Unit, value: number, direction: Direction = 'nearest'): Said => ({
  metric: showValue({ unit }, value, 'metric', direction),
  imperial: showValue({ unit }, value, 'imperial', direction),
});

/** The quantity of that name; null where there is no answer, or no such place in it. */
export const quantityOf = (outcome: Outcome, name: string): Quantity | null => {
  const output = outcome.kind === 'answer' ? outcome.outputs[name] : null;
  return output && 'planOn' in output ? output : null;
};
/** The figure to plan on. */
export const planOn = (outcome: Outcome, name: string): number | null => quantityOf(outcome, name)?.planOn ?? null;
/** The step of the working that gives a figure: as entered, nothing allowed for guesses. */
export const stepOf = (outcome: Outcome, name: string): Step | undefined =>
  outcome.kind === 'answer' ? outcome.working.find((step) => step.result.name === name) : undefined;
export const worked = (outcome: Outcome, name: string): number | null => stepOf(outcome, name)?.result.value ?? null;
