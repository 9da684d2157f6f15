/**
 * What a calculator is: one question, named inputs in, named outputs out.
 * Plain data and one pure function; nothing here knows a word or a page.
 */
import type { Unit } from './units.ts';

/**
 * How far a figure may be out: `max(share × |value|, least)` both ways, or unequal ways with `plus` and `minus`.
 * `sureAtZero`: nothing is no guess; who stands on the ground knows that there is no platform.
 */
export type Tolerance = { share?: number; least?: number; plus?: number; minus?: number; sureAtZero?: boolean };

/** The parameters of a link in their order, decoded. */
export type Pairs = [string, string][];

/** How a figure was come by. */
export type Got = 'exact' | 'measured' | 'judged';
export type GotSet<Name extends string = string> = Got | { readonly [K in Name]?: Got };

export type QuantityInput = {
  kind: 'quantity';
  unit: Unit;
  min: number;
  max: number;
  step: number;
  /** Null only where the input is optional and the example leaves it out. */
  example: number | null;
  /** Judged by eye and measured; `label` for data off a plate or specification; nothing for a carried or chosen figure. */
  tolerance: { judged: Tolerance; measured: Tolerance } | { label: Tolerance } | null;
  /** Physical limits that no error can pass, e.g. a length below nothing. */
  floor: number;
  ceiling: number;
  /** What the method covers of it, where past these ends nothing it works out gets worse: guesses reach up to them, and it is said that they reach further. */
  covers: readonly [number, number] | null;
  /** A diameter that may be given as girth. */
  girth: boolean;
  optional: boolean;
};
export type ChoiceInput<Option extends string = string> = {
  kind: 'choice';
  options: readonly Option[];
  example: Option;
  optional: boolean;
};
export type ListInput = {
  kind: 'list';
  unit: Unit;
  min: number;
  max: number;
  longest: number;
  shortest: number;
  /** Null only where the input is optional and the example leaves it out. */
  example: readonly number[] | null;
  tolerance: { judged: Tolerance; measured: Tolerance } | null;
  floor: number;
  ceiling: number;
  girth: boolean;
  optional: boolean;
};
export type AnyInput = QuantityInput | ChoiceInput | ListInput;
export type InputSet = { readonly [name: string]: AnyInput };

type Plain<I extends AnyInput> = I extends ChoiceInput<infer O> ? O : I extends ListInput ? readonly number[] : number;
export type ValueOf<I extends AnyInput> = I['optional'] extends true ? Plain<I> | null : Plain<I>;
export type InputsOf<S extends InputSet> = { readonly [K in keyof S]: ValueOf<S[K]> };

/** How an output answers to a growing input: `up` and `down` never turn; `bends` may. Unnamed inputs do not move it. */
export type Move = 'up' | 'down' | 'bends';
/** The end of the range that protects; `both` has no single figure to plan on. */
export type Protects = 'up' | 'down' | 'both';

export type QuantityOutput<Name extends string = string> = {
  kind: 'quantity';
  unit: Unit;
  /** What it is shown to, where that is not the unit's own step. */
  step?: number;
  imperialStep?: number;
  protects: Protects;
  moves: { readonly [K in Name]?: Move };
  /**
   * Closed form of where a `bends` input turns the output, the others standing as given, one place or several; without
   * one a search is made.
   * A value outside the tolerance is ignored.
   */
  turns?: { readonly [K in Name]?: (inputs: never) => number | readonly number[] };
};
export type ChoiceOutput<Name extends string = string> = {
  kind: 'choice';
  options: readonly string[];
  /** Inputs whose error may change the choice. */
  moves: { readonly [K in Name]?: Move };
};
export type AnyOutput = QuantityOutput | ChoiceOutput;
export type OutputSet<Name extends string = string> = { readonly [name: string]: QuantityOutput<Name> | ChoiceOutput<Name> };

/** An intermediate figure: its unit, and the way it is rounded where it guards the reader. */
export type Middle = Unit | { unit: Unit; protects: 'up' | 'down' };

export type Level = 'stop' | 'caution' | 'note';
/**
 * `at`: the corner of the tolerance box that decides beside the figures as entered: an output's protecting corner, or
 * the way each input makes it worse. Without it the figures as entered decide alone.
 */
export type FindingDefinition = { level: Level; at?: string | { readonly [name: string]: 'up' | 'down' } };

export type Values = { readonly [name: string]: number | string | readonly number[] };
export type RawFinding = { id: string; values?: Values };
export type RawStep = { id: string; values: Values; result: { name: string; value: number } };

/** Which limit of a method or table was passed, and the figures that say so. */
export type Outside = { kind: 'outside'; limit: string; values: Values };

/**
 * What `compute` says for one exact set of inputs. An output that does not exist there ("no such place") is null; so is
 * one that lies outside what its own method covers, and `outside` says which limit it passed.
 */
export type Computed<Output extends string = string> =
  | {
    kind: 'answer';
    outputs: { readonly [K in Output]: number | string | null };
    outside: { readonly [K in Output]?: Outside };
    findings: RawFinding[];
    working: RawStep[];
  }
  | Outside;

export type InputProblem = { input: string; problem: string; values: Values };

/** The ends of an output over a tolerance box, and the inputs (those that differ from the figures as entered) at the end that protects. */
export type Range = { low: number; high: number; at: { readonly [input: string]: number } };
/**
 * `findings`: what its findings say at their worst in the box, for those that do not go by the figures as entered alone.
 * `beyond`: a part of the box lies outside the method.
 */
export type Ranges = { outputs: { readonly [output: string]: Range }; findings: (RawFinding | false)[]; beyond: Outside | null };

/**
 * An error that several quantities or lists share, as when one eye judged them all: a common factor on top of each one's own.
 * Common only while all were got in the same way; otherwise each bears it alone.
 */
export type SharedError<Name extends string = string> = { inputs: readonly Name[]; judged: number; measured: number };

export type Calculator<
  I extends InputSet = InputSet,
  O extends OutputSet = OutputSet,
> = {
  id: string;
  inputs: I;
  outputs: O;
  /** Shared errors; their names stand beside the inputs' in `moves`. */
  shared: { readonly [name: string]: SharedError };
  /** Intermediate figures of the working and of findings, with their units. */
  middle: { readonly [name: string]: Middle };
  findings: { readonly [id: string]: FindingDefinition };
  limits: readonly string[];
  /**
   * Limits past which another way of working takes over, so that nothing told here is there too mild: who guesses may
   * reach past one, has the ends up to it, and is told. For each, where an input, the others standing as given past the
   * limit, is just back inside. Name a limit here only with the reason for every output.
   */
  upTo: { readonly [limit: string]: { readonly [K in keyof I]?: (inputs: InputsOf<I>) => number } };
  /** Outputs shown large, in order. */
  lead: readonly (keyof O & string)[];
  /**
   * Old links: one small pure function for each version of the inputs that was left behind, the first from 1 to 2. A
   * renamed input may stand in `measured` and `exact` too; a pair may be missing, repeated or damaged.
   */
  upgrades: readonly ((pairs: Pairs) => Pairs)[];
  /** How the example's figures were got. */
  exampleGot: GotSet;
  /** Problems between inputs: "the shortest is longer than the longest". */
  relate: (inputs: InputsOf<I>) => InputProblem[];
  compute: (inputs: InputsOf<I>) => Computed<keyof O & string>;
  /**
   * For outputs that are themselves the worst of many cases: their ends over the box, found in one search of their own
   * instead of corner by corner. `ends`: what each uncertain input may be. Outputs it leaves out are worked as others.
   */
  ranges?: (inputs: InputsOf<I>, ends: { readonly [K in keyof I]?: readonly [number, number] }) => Ranges;
};
// A list of calculators of different shapes cannot be typed more closely than this.
export type AnyCalculator = Calculator<any, any>;
export type InputNames<C extends AnyCalculator> = keyof C['inputs'] & string;

const finite = (value: number | string | readonly number[] | null): boolean =>
  typeof value === 'number' ? Number.isFinite(value) : !Array.isArray(value) || value.every(Number.isFinite);
/** `id`: which finding, step or limit. This is asked at every corner of every move, so words are made only for a fault. */
const refuseNotFinite = (where: string, id: string, values: { readonly [name: string]: number | string | readonly number[] | null }): void => {
  for (const name in values) if (!finite(values[name]!)) throw new Error(`${where}${id && ` "${id}"`}: "${name}" is not finite`);
};

/**
 * An answer; an output may be `outside(…)` by itself. Throws where a figure is not finite: that is a fault of the
 * calculator, never of the reader.
 */
export const answer = <T extends { readonly [name: string]: number | string | Outside | null }>(
  given: T,
  findings: (RawFinding | false)[] = [],
  working: RawStep[] = [],
): Computed<keyof T & string> => {
  const raised = findings.filter((f) => f !== false);
  const outputs: { [name: string]: number | string | null } = {};
  const beyond: { [name: string]: Outside } = {};
  for (const [name, value] of Object.entries(given)) {
    const isOutside = typeof value === 'object' && value !== null;
    outputs[name] = isOutside ? null : value;
    if (isOutside) beyond[name] = value;
  }
  refuseNotFinite('output', '', outputs);
  for (const { id, values } of raised) if (values) refuseNotFinite('finding', id, values);
  for (const { id, values, result } of working) {
    refuseNotFinite('step', id, values);
    if (!finite(result.value)) refuseNotFinite('step', id, { [result.name]: result.value });
  }
  for (const name in beyond) refuseNotFinite('limit', beyond[name]!.limit, beyond[name]!.values);
  return {
    kind: 'answer', findings: raised, working, outputs: outputs as { readonly [K in keyof T & string]: number | string | null },
    outside: beyond as { readonly [K in keyof T & string]?: Outside },
  };
};

/** Outside what the method or table covers: which limit, and the figures that say so. */
export const outside = (limit: string, values: Values = {}): Outside => ({ kind: 'outside', limit, values });

type Options<I extends InputSet, O extends OutputSet> = Omit<Partial<Calculator<I, O>>, 'compute' | 'relate'> & {
  id: string;
  inputs: I;
  outputs: O;
  lead: readonly (keyof O & string)[];
  relate?: (inputs: InputsOf<I>) => InputProblem[];
  compute: (inputs: InputsOf<I>) => Computed<keyof O & string>;
};

export const defineCalculator = <const I extends InputSet, const O extends OutputSet>(
  options: Options<I, O>,
): Calculator<I, O> => ({
  shared: {},
  middle: {},
  findings: {},
  limits: [],
  upTo: {},
  upgrades: [],
  exampleGot: 'judged',
  relate: () => [],
  ...options,
});
