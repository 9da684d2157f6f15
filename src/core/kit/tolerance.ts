/**
 * The tolerance box: each uncertain input is a variable with two ends; errors shared by several inputs are variables
 * of their own (a common factor). A corner gives every variable a number.
 */
import type { AnyCalculator, AnyInput, Got, Move, SharedError, Tolerance } from './calculator.ts';
import type { Inputs } from './outcome.ts';

/** `past`: the guess reaches past what the method covers. `own`: the value itself. `list`: −1 to 1, all items together between their ends. `shared`: a factor on its inputs. */
export type Variable = { name: string; kind: 'own' | 'list' | 'shared'; low: number; middle: number; high: number; items?: [number, number][]; past?: boolean };
export type Corner = { readonly [variable: string]: number };

/** The tolerance that applies, or null for none. */
const toleranceOf = (input: AnyInput, got: Got): Tolerance | null => {
  if (input.kind === 'choice' || input.tolerance === null || got === 'exact') return null;
  return 'label' in input.tolerance ? input.tolerance.label : input.tolerance[got];
};

/**
 * Both ends for a value, in its own unit, kept inside what is physically possible.
 * @param more the share of an error that it would share with others, had they been got as it was
 */
const endsOf = (input: Exclude<AnyInput, { kind: 'choice' }>, tolerance: Tolerance, value: number, more: number): [number, number] => {
  const even = Math.max((tolerance.share ?? 0) * Math.abs(value), tolerance.least ?? 0);
  return [
    Math.max(input.floor, value - (tolerance.minus ?? even)) * (1 - more),
    Math.min(input.ceiling, (value + (tolerance.plus ?? even)) * (1 + more)),
  ];
};

/** The share of a shared error that an input bears, got as it was. */
const shareOf = (error: SharedError, got: Got): number => ({ exact: 0, measured: error.measured, judged: error.judged })[got];

/** The uncertain variables of these inputs, got so. */
export const variablesOf = (calculator: AnyCalculator, inputs: Inputs, gotOf: (name: string) => Got): Variable[] => {
  const variables: Variable[] = [];
  const alone = new Map<string, number>();
  const common: Variable[] = [];
  for (const [name, error] of Object.entries(calculator.shared as { [name: string]: SharedError })) {
    const entered = error.inputs.filter((input) => inputs[input] !== null);
    const shares = entered.map((input) => shareOf(error, gotOf(input)));
    const share = Math.max(0, ...shares);
    if (shares.some((s) => s !== share)) entered.forEach((input, i) => alone.set(input, shares[i] as number));
    else if (share > 0) common.push({ name, kind: 'shared', low: 1 - share, middle: 1, high: 1 + share });
  }
  for (const [name, input] of Object.entries(calculator.inputs as { [name: string]: AnyInput })) {
    const more = alone.get(name) ?? 0;
    const tolerance = toleranceOf(input, gotOf(name)) ?? (more > 0 ? {} : null);
    const value = inputs[name];
    if (tolerance === null || input.kind === 'choice' || value === null) continue;
    if (value === 0 && tolerance.sureAtZero) continue;
    if (input.kind === 'list') {
      const items = (value as readonly number[]).map((item) => endsOf(input, tolerance, item, more));
      variables.push({ name, kind: 'list', low: -1, middle: 0, high: 1, items });
    } else {
      const [low, high] = endsOf(input, tolerance, value as number, more);
      const [least, most] = input.covers ?? [low, high];
      const past = low < least || high > most;
      if (low < high) variables.push({ name, kind: 'own', low: Math.max(low, least), middle: value as number, high: Math.min(high, most), past });
    }
  }
  return [...variables, ...common];
};

/** Every variable in its middle: the figures as entered. */
export const middle = (variables: readonly Variable[]): Corner => Object.fromEntries(variables.map((v) => [v.name, v.middle]));

const scaled = (value: Inputs[string] | undefined, by: number): Inputs[string] => {
  if (typeof value === 'number') return value * by;
  return Array.isArray(value) ? value.map((item: number) => item * by) : null;
};

/** The inputs at a corner of the box. */
export const atCorner = (calculator: AnyCalculator, variables: readonly Variable[], inputs: Inputs, corner: Corner): Inputs => {
  const at: { [name: string]: Inputs[string] } = { ...inputs };
  for (const { name, kind, items } of variables) {
    const place = corner[name] as number;
    if (kind === 'own') {
      at[name] = place;
    } else if (kind === 'list') {
      at[name] = (inputs[name] as readonly number[]).map((value, i) => {
        const [low, high] = (items as [number, number][])[i] as [number, number];
        return place < 0 ? value + (value - low) * place : value + (high - value) * place;
      });
    } else {
      for (const input of (calculator.shared[name] as SharedError).inputs) at[input] = scaled(at[input], place);
    }
  }
  return at;
};

/**
 * The corners at which an output may have its low or its high end: one where it is monotone, every combination of the
 * two ends of what it bends with.
 */
export const cornersOf = (
  variables: readonly Variable[], moves: { readonly [name: string]: Move | undefined }, end: 'low' | 'high',
): Corner[] => {
  const corners: { [name: string]: number }[] = [{}];
  for (const v of variables) {
    const move = moves[v.name];
    const ends =
      move === undefined ? [v.middle]
      : move === 'bends' ? [v.low, v.high]
      : [(move === 'up') === (end === 'high') ? v.high : v.low];
    const others = ends.slice(1).flatMap((at) => corners.map((corner) => ({ ...corner, [v.name]: at })));
    for (const corner of corners) corner[v.name] = ends[0] as number;
    corners.push(...others);
  }
  return corners;
};

const golden = (Math.sqrt(5) - 1) / 2;

/**
 * Where between its ends a variable may turn the output: the closed form where there is one, else a bracketed search.
 * `value` is NaN where there is none; the search turns away from there.
 */
export const turningPoints = (
  variable: Variable, end: 'low' | 'high', value: (at: number) => number, closed: (() => number | readonly number[]) | undefined,
): number[] => {
  if (closed) {
    const at = closed();
    return (typeof at === 'number' ? [at] : at).filter((x) => x > variable.low && x < variable.high);
  }
  let [a, b] = [variable.low, variable.high];
  const before = (x: number, y: number): boolean => Number.isNaN(y) || (end === 'low' ? x < y : x > y);
  // Golden section: of the two places inside one is kept from round to round.
  let [c, d] = [b - golden * (b - a), a + golden * (b - a)];
  let [atC, atD] = [value(c), value(d)];
  for (let i = 0; i < 24; i++) {
    if (before(atC, atD)) {
      [b, d, atD] = [d, c, atC];
      c = b - golden * (b - a);
      atC = value(c);
    } else {
      [a, c, atC] = [c, d, atD];
      d = a + golden * (b - a);
      atD = value(d);
    }
  }
  return [(a + b) / 2];
};
