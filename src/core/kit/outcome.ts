/**
 * From one set of field figures to an outcome: an answer whose every output carries the range its inputs' tolerances
 * allow and the end of it that protects; `outside`; or problems at named inputs. Nothing else, and never NaN.
 */
import type {
  AnyCalculator, AnyOutput, Computed, Got, GotSet, InputProblem, Level, Outside, Protects, Range, RawFinding, Values,
} from './calculator.ts';
import { checkInputs } from './problems.ts';
import { atCorner, type Corner, cornersOf, middle, turningPoints, variablesOf, type Variable } from './tolerance.ts';

export type Inputs = { readonly [name: string]: number | string | readonly number[] | null };
/** `planOn` and `planAt` (the inputs at the protecting corner) are null where both ends matter. */
export type Quantity = { value: number; low: number; high: number; planOn: number | null; planAt: Inputs | null };
export type Choice = { value: string; also: string[] };
/** `guess`: raised only by what the tolerance allows, not by the figures as entered. */
export type Finding = { id: string; level: Level; values: Values; guess: boolean };
export type Step = { id: string; values: Values; result: { name: string; value: number } };
export type Answer = {
  kind: 'answer';
  outputs: { readonly [name: string]: Quantity | Choice | null };
  /** Of those that are null: the limit that the figures, or the guesses on the protecting side, have passed. */
  outside: { readonly [name: string]: Outside };
  findings: Finding[];
  working: Step[];
};
export type Outcome =
  | Answer
  | Outside
  | { kind: 'problems'; problems: InputProblem[] };

type Run = (corner: Corner) => { inputs: Inputs; computed: Computed };
/** `beyond`: part of the box lay past a limit that another way of working takes over from (`upTo`). */
type Inside = { inputs: Inputs; value: number | string | null; passed: Outside | undefined; beyond: Outside | null };
type End = Inside | { outside: Outside };

const levels: readonly Level[] = ['stop', 'caution', 'note'];
/** The order of findings: the worst first. */
export const worstFirst = (a: { readonly level: Level }, b: { readonly level: Level }): number => levels.indexOf(a.level) - levels.indexOf(b.level);

/** The finding that says the guesses reach where the method does not. */
export const beyondGuess = 'beyondGuess';
/** The step that says what the guesses add. */
export const allowing = 'allowing';

const outputAt = (run: Run, corner: Corner, name: string): End => {
  const { inputs, computed } = run(corner);
  if (computed.kind === 'outside') return { outside: computed };
  return { inputs, value: computed.outputs[name] ?? null, passed: computed.outside[name], beyond: null };
};

/** From a corner past a limit of `upTo`: where the limit cuts the edges of the box that meet there. */
const broughtBack = (run: Run, variables: readonly Variable[], upTo: AnyCalculator['upTo'], corner: Corner): Corner[] => {
  const { inputs, computed } = run(corner);
  const ways = (computed.kind === 'outside' && upTo[computed.limit]) || {};
  return variables.flatMap(({ name, low, high }) => {
    const at = ways[name]?.(inputs as never) ?? Number.NaN;
    return at >= low && at <= high ? [{ ...corner, [name]: at }] : [];
  });
};

/** The least or greatest value of a quantity over the tolerance box, as far as `upTo`, and the inputs there. */
const extreme = (
  run: Run, variables: readonly Variable[], upTo: AnyCalculator['upTo'], name: string, output: Extract<AnyOutput, { kind: 'quantity' }>, end: 'low' | 'high',
): End => {
  let best: End | null = null;
  let beyond: Outside | null = null;
  const better = (a: End): boolean => {
    if (best === null || 'outside' in a) return true;
    if ('outside' in best || best.value === null) return false;
    if (a.value === null) return true;
    return end === 'low' ? a.value < best.value : a.value > best.value;
  };
  let corners = cornersOf(variables, output.moves, end);
  const consider = (corner: Corner): boolean => {
    const found = outputAt(run, corner, name);
    if ('outside' in found && found.outside.limit in upTo) {
      beyond ??= found.outside;
      return false;
    }
    const won = better(found);
    if (won) best = found;
    return won;
  };
  let bestCorner = corners[0] as Corner;
  for (const corner of corners) for (const at of [corner, ...broughtBack(run, variables, upTo, corner)]) if (consider(at)) bestCorner = at;
  const bending = variables.filter((v) => output.moves[v.name] === 'bends');
  if (bending.length > 0) {
    // What bends may have its best just where the figures were entered.
    const straight = Object.fromEntries(Object.entries(output.moves).filter(([, move]) => move !== 'bends'));
    const between = cornersOf(variables, straight, end)[0] as Corner;
    if (consider(between)) bestCorner = between;
  }
  for (const variable of bending) {
    const value = (at: number): number => {
      const found = outputAt(run, { ...bestCorner, [variable.name]: at }, name);
      return 'outside' in found || typeof found.value !== 'number' ? Number.NaN : found.value;
    };
    const turn = output.turns?.[variable.name] as ((inputs: Inputs) => number | readonly number[]) | undefined;
    corners = turningPoints(variable, end, value, turn && (() => turn(run(bestCorner).inputs)))
      .map((at) => ({ ...bestCorner, [variable.name]: at }));
    for (const corner of corners) if (consider(corner)) bestCorner = corner;
  }
  const found = best as End | null;
  if (found === null) return { outside: beyond as unknown as Outside };
  return 'outside' in found ? found : { ...found, beyond };
};

/** What the ends of the tolerance allow a choice to be, and whether they reach outside. */
const choicesAt = (
  run: Run, variables: readonly Variable[], name: string, moves: AnyOutput['moves'],
): { found: Set<string>; beyond: Outside | null } => {
  const found = new Set<string>();
  let beyond: Outside | null = null;
  const asBends = Object.fromEntries(Object.keys(moves).map((key) => [key, 'bends' as const]));
  for (const corner of cornersOf(variables, asBends, 'low')) {
    const end = outputAt(run, corner, name);
    if ('outside' in end) beyond ??= end.outside;
    else if (typeof end.value === 'string') found.add(end.value);
  }
  return { found, beyond };
};

/** `passed`: the limit of its own method that the deciding end has passed. */
type Worked = { figure: Quantity | Choice | null; ends: Inputs[]; beyond: Outside | null; passed?: Outside | undefined };

/** An end of the range where the output does not exist. */
const noPlace: Outside = { kind: 'outside', limit: 'noPlace', values: {} };

const workOut = (
  run: Run, variables: readonly Variable[], upTo: AnyCalculator['upTo'], name: string, output: AnyOutput, nominal: number | string | null,
): Worked | Outside => {
  if (output.kind === 'choice') {
    const { found, beyond } = choicesAt(run, variables, name, output.moves);
    if (typeof nominal !== 'string') return { figure: null, ends: [], beyond };
    found.delete(nominal);
    return { figure: { value: nominal, also: [...found].sort() }, ends: [], beyond };
  }
  const low = extreme(run, variables, upTo, name, output, 'low');
  const high = extreme(run, variables, upTo, name, output, 'high');
  const needed = { up: [high], down: [low], both: [low, high] }[output.protects];
  const missing = needed.find((end) => 'outside' in end);
  if (missing) return missing.outside;
  const beyond = [low, high].map((end) => ('outside' in end ? end.outside : end.beyond)).find((end) => end !== null) ?? null;
  const deciding = needed as Inside[];
  const ends = deciding.map((end) => end.inputs);
  if (typeof nominal !== 'number' || deciding.some((end) => end.value === null)) {
    return { figure: null, ends, beyond, passed: deciding.find((end) => end.passed)?.passed };
  }
  // An end that does not protect may lie outside, or nowhere: then the range is shown from the figure as entered, and it is said.
  const nowhere = [low, high].some((end) => !('outside' in end) && end.value === null);
  const unsaid = beyond ?? (nowhere ? noPlace : null);
  const number = (end: End): number => ('outside' in end || typeof end.value !== 'number' ? nominal : end.value);
  const range = { value: nominal, low: number(low), high: number(high) };
  if (output.protects === 'both') return { figure: { ...range, planOn: null, planAt: null }, ends, beyond: unsaid };
  const planOn = output.protects === 'up' ? range.high : range.low;
  return { figure: { ...range, planOn, planAt: ends[0] as Inputs }, ends, beyond: unsaid };
};

/** An output whose ends the calculator has found by itself. */
const ranged = ({ low, high, at }: Range, inputs: Inputs, { protects }: AnyOutput & { protects?: Protects }, nominal: number | string | null): Worked => {
  const there: Inputs = { ...inputs, ...at };
  if (typeof nominal !== 'number') return { figure: null, ends: [there], beyond: null };
  const range = { value: nominal, low: Math.min(low, nominal), high: Math.max(high, nominal) };
  if (protects === 'both') return { figure: { ...range, planOn: null, planAt: null }, ends: [there], beyond: null };
  const planOn = protects === 'up' ? range.high : range.low;
  return { figure: { ...range, planOn, planAt: there }, ends: [there], beyond: null };
};

const same = (a: Inputs[string] | undefined, b: Inputs[string] | undefined): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What the guesses add: the inputs that moved, and the figure to plan on. */
const allowance = (name: string, figure: Quantity | Choice | null | undefined, inputs: Inputs): Step[] => {
  if (!figure || 'also' in figure || figure.planOn === null || figure.planOn === figure.value) return [];
  const at = figure.planAt as Inputs;
  const moved = Object.entries(at).filter(([key, value]) => (typeof value === 'number' || Array.isArray(value)) && !same(value, inputs[key]));
  return [{ id: allowing, values: Object.fromEntries(moved) as Values, result: { name, value: figure.planOn } }];
};

/**
 * @param calculator a definition
 * @param given the inputs by name, each in its own unit; null where an optional one is not entered
 * @param got how the figures were come by, for all or for each by name (unnamed ones: judged)
 * @returns an outcome that survives JSON.stringify; never throws on bad input
 */
export const evaluate = (calculator: AnyCalculator, given: Inputs, got: GotSet = 'judged'): Outcome => {
  const problems = checkInputs(calculator, given);
  if (problems.length > 0) return { kind: 'problems', problems };
  const inputs: Inputs = Object.fromEntries(Object.keys(calculator.inputs).map((key) => [key, given[key] ?? null]));
  const gotOf = (name: string): Got => {
    const how = typeof got === 'string' ? got : got[name];
    return how === 'exact' || how === 'measured' ? how : 'judged';
  };
  const variables = variablesOf(calculator, inputs, gotOf);

  const known = new Map<number, ReturnType<Run> & { corner: Corner }>();
  const run: Run = (corner) => {
    // One number for all of a corner's, which another may share: then it is looked at.
    const key = variables.reduce((sum, v) => sum * 1.618 + (corner[v.name] as number), 0);
    const before = known.get(key);
    if (before && variables.every((v) => before.corner[v.name] === corner[v.name])) return before;
    const there = atCorner(calculator, variables, inputs, corner);
    const result = { corner, inputs: there, computed: calculator.compute(there) as Computed };
    known.set(key, result);
    return result;
  };
  const nominal = run(middle(variables)).computed;
  if (nominal.kind === 'outside') return { ...nominal };

  const outputs: { [name: string]: Quantity | Choice | null } = {};
  const limits: { [name: string]: Outside } = {};
  const ends: { [name: string]: Inputs[] } = {};
  const own = calculator.ranges?.(inputs, Object.fromEntries(variables.map((v) => [v.name, [v.low, v.high] as const])));
  const past = variables.some((v) => v.past) ? noPlace : null;
  let beyond: Outside | null = own?.beyond ?? past;
  for (const [name, output] of Object.entries(calculator.outputs as { [name: string]: AnyOutput })) {
    const range = own?.outputs[name];
    const worked = range ? ranged(range, inputs, output, nominal.outputs[name] ?? null) : workOut(run, variables, calculator.upTo, name, output, nominal.outputs[name] ?? null);
    if ('kind' in worked) return { ...worked };
    outputs[name] = worked.figure;
    ends[name] = worked.ends;
    const passed = nominal.outside[name] ?? worked.passed;
    if (passed) limits[name] = passed;
    beyond ??= worked.beyond;
  }

  const findings: Finding[] = [];
  for (const [id, { level, at }] of Object.entries(calculator.findings as AnyCalculator['findings'])) {
    const decide =
      at === undefined || own ? []
      : typeof at === 'string' ? (ends[at] as Inputs[]).map((there) => calculator.compute(there) as Computed)
      : cornersOf(variables, at, 'high').map((corner) => run(corner).computed);
    const [entered, ...worse] = [nominal, ...decide].map((c) => (c.kind === 'answer' ? c.findings.find((f) => f.id === id) : undefined));
    const found = (own?.findings.find((f) => f !== false && f.id === id) as RawFinding | undefined) ?? worse.find((f) => f !== undefined) ?? entered;
    if (found) findings.push({ id, level, values: found.values ?? {}, guess: entered === undefined });
  }
  if (beyond) findings.push({ id: beyondGuess, level: 'caution', values: beyond.values, guess: true });
  findings.sort(worstFirst);

  const lead = calculator.lead as readonly string[];
  return {
    kind: 'answer',
    outputs,
    outside: limits,
    findings,
    working: [...nominal.working, ...lead.flatMap((name) => allowance(name, outputs[name], inputs))],
  };
};

