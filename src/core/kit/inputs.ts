/** Short ways to write an input in a definition. */
import type { ChoiceInput, ListInput, QuantityInput, Tolerance } from './calculator.ts';
import type { Unit } from './units.ts';

type QuantityOptions<Example = number> = {
  min: number;
  max: number;
  step: number;
  example: Example;
  tolerance?: QuantityInput['tolerance'];
  floor?: number;
  ceiling?: number;
  covers?: readonly [number, number];
  girth?: boolean;
};

const quantityOf = <Example>(unit: Unit, o: QuantityOptions<Example>) => ({
  kind: 'quantity' as const,
  unit,
  min: o.min,
  max: o.max,
  step: o.step,
  example: o.example,
  tolerance: o.tolerance ?? null,
  floor: o.floor ?? (o.min >= 0 ? 0 : -Infinity),
  ceiling: o.ceiling ?? Infinity,
  covers: o.covers ?? null,
  girth: o.girth ?? false,
});

/** A number in one fixed unit. */
export const quantity = (unit: Unit, o: QuantityOptions) => ({ ...quantityOf(unit, o), optional: false as const });
/** The same, where nothing may be entered: its value is then null. The example may leave it out too. */
export const optionalQuantity = (unit: Unit, o: QuantityOptions<number | null>) => ({ ...quantityOf(unit, o), optional: true as const });

/** One of a few named options. */
export const choice = <const Option extends string>(options: readonly Option[], example: NoInfer<Option>) => ({
  kind: 'choice' as const,
  options,
  example,
  optional: false as const,
}) satisfies ChoiceInput<Option>;

type ListOptions<Example> = Pick<ListInput, 'min' | 'max' | 'shortest' | 'longest'> & { example: Example } & Partial<Pick<ListInput, 'tolerance' | 'girth'>>;

const listOf = <Example>(unit: Unit, o: ListOptions<Example>) => ({
  kind: 'list' as const,
  unit,
  floor: 0,
  ceiling: Infinity,
  girth: false,
  ...o,
  tolerance: o.tolerance ?? null,
});

/** A short list of numbers in one unit. Its errors are taken as one: all too large, or all too small, together. */
export const list = (unit: Unit, o: ListOptions<readonly number[]>) => ({ ...listOf(unit, o), optional: false as const });
/** The same, where nothing may be entered: its value is then null. The example may leave it out too. */
export const optionalList = (unit: Unit, o: ListOptions<readonly number[] | null>) => ({ ...listOf(unit, o), optional: true as const });

/** Judged by eye, and measured. */
export const guess = (judged: Tolerance, measured: Tolerance) => ({ judged, measured });
/** Data off a label or plate. */
export const label = (tolerance: Tolerance) => ({ label: tolerance });
