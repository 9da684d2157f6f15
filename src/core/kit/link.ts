/**
 * The address of a calculator with its inputs: `v=1&got=judged&measured=cutHeight&cutHeight=3.5&…`.
 * All inputs, in definition order, shortest decimal form with a point. Pure text in, pure text out.
 */
import type { AnyCalculator, AnyInput, Got, GotSet, InputProblem, Pairs } from './calculator.ts';
import type { Inputs } from './outcome.ts';

/** The version that links of this calculator are written in. */
const versionOf = ({ upgrades }: AnyCalculator): number => upgrades.length + 1;
export const reserved = ['v', 'got', 'measured', 'exact', 'units', 'rules', 'frame'] as const;

export type LinkExtras = { units?: 'metric' | 'imperial'; rules?: string };
export type ReadLink =
  | { kind: 'example'; extras: LinkExtras }
  | { kind: 'given'; inputs: Inputs; texts: { [name: string]: string }; got: GotSet; problems: InputProblem[]; extras: LinkExtras };

const listMark = '_';
const written = (value: Inputs[string]): string =>
  value === null ? '' : Array.isArray(value) ? value.join(listMark) : String(value);

/** The names got so, joined; nothing where there are none. */
const named = (got: GotSet, names: readonly string[], how: Got): string =>
  typeof got === 'string' ? '' : names.filter((n) => (got[n] ?? 'judged') === how).join(listMark);

/** Writes everything: a link must mean the same for ever, whatever the example becomes. */
export const writeLink = (calculator: AnyCalculator, inputs: Inputs, got: GotSet, extras: LinkExtras = {}): string => {
  const names = Object.keys(calculator.inputs);
  const pairs: Pairs = [['v', String(versionOf(calculator))], ['got', typeof got === 'string' ? got : 'judged']];
  for (const how of ['measured', 'exact'] as const) {
    const which = named(got, names, how);
    if (which) pairs.push([how, which]);
  }
  for (const name of names) pairs.push([name, written(inputs[name] ?? null)]);
  if (extras.units) pairs.push(['units', extras.units]);
  if (extras.rules) pairs.push(['rules', extras.rules]);
  return pairs.map(([key, value]) => `${encodeURIComponent(key)}=${encodeURIComponent(value)}`).join('&');
};

const decoded = (text: string): string => {
  try {
    return decodeURIComponent(text.replaceAll('+', ' '));
  } catch {
    return text;
  }
};

/** The parameters of a query in their order, decoded; what cannot be decoded stays as it is. */
export const pairsOf = (query: string): Pairs =>
  query.replace(/^\?/, '').split('&').filter(Boolean).map((part) => {
    const at = part.indexOf('=');
    return at < 0 ? [decoded(part), ''] : [decoded(part.slice(0, at)), decoded(part.slice(at + 1))];
  });

const plainNumber = /^-?\d+(\.\d+)?(e[+-]?\d+)?$/;
const toNumber = (text: string): number | null => (plainNumber.test(text) ? Number(text) : null);

/** One input out of its text; undefined where it does not read as one. */
export const valueOf = (input: AnyInput, text: string): Inputs[string] | undefined => {
  if (text === '') return input.optional ? null : input.kind === 'list' && input.shortest === 0 ? [] : undefined;
  if (input.kind === 'choice') return text;
  if (input.kind === 'quantity') return toNumber(text) ?? undefined;
  const items = text.split(listMark).map(toNumber);
  return items.includes(null) ? undefined : (items as number[]);
};

const gotOf = (pairs: Pairs, names: readonly string[]): GotSet => {
  const one = (key: string): string => pairs.find(([k]) => k === key)?.[1] ?? '';
  const all = one('got');
  const base: Got = all === 'measured' || all === 'exact' ? all : 'judged';
  const measured = one('measured').split(listMark);
  const exact = one('exact').split(listMark);
  const own = (name: string): Got => (exact.includes(name) ? 'exact' : measured.includes(name) ? 'measured' : base);
  return names.every((n) => own(n) === base) ? base : Object.fromEntries(names.map((n) => [n, own(n)]));
};

const extrasOf = (pairs: Pairs): LinkExtras => {
  const units = pairs.find(([k]) => k === 'units')?.[1];
  const rules = pairs.find(([k]) => k === 'rules')?.[1];
  return {
    ...(units === 'metric' || units === 'imperial' ? { units } : {}),
    ...(rules !== undefined && /^[a-z0-9.-]{1,80}$/.test(rules) ? { rules } : {}),
  };
};

/**
 * Reads an address. No input named: the example. Otherwise what is given: a missing, repeated or malformed input is a
 * problem at its field. Unknown parameters are ignored; no `v` is version 1; a newer one is a problem (input `v`).
 */
export const readLink = (calculator: AnyCalculator, query: string): ReadLink => {
  const asSent = pairsOf(query);
  const extras = extrasOf(asSent);
  const version = asSent.filter(([key]) => key === 'v').map(([, value]) => value);
  const from = version.length === 0 ? 1 : /^\d{1,4}$/.test(version[0] as string) ? Number(version[0]) : Number.NaN;
  const pairs = from >= 1 ? calculator.upgrades.slice(from - 1).reduce((before, upgrade) => upgrade(before), asSent) : asSent;
  const inputs = Object.entries(calculator.inputs as { [name: string]: AnyInput });
  const names = inputs.map(([name]) => name);
  if (!pairs.some(([key]) => names.includes(key))) return { kind: 'example', extras };

  const problems: InputProblem[] = [];
  if (!(from >= 1 && from <= versionOf(calculator)) || version.length > 1) {
    problems.push({ input: 'v', problem: from > versionOf(calculator) ? 'newerLink' : 'badLink', values: {} });
  }

  const values: { [name: string]: Inputs[string] } = {};
  const texts: { [name: string]: string } = {};
  for (const [name, input] of inputs) {
    const given = pairs.filter(([key]) => key === name).map(([, value]) => value);
    const text = given[0] ?? '';
    if (given.length > 0) texts[name] = given.join(' ');
    const value = given.length === 1 ? valueOf(input, text) : given.length === 0 && input.optional ? null : undefined;
    if (value !== undefined) values[name] = value;
    else {
      const problem = given.length > 1 ? 'repeated' : text === '' ? 'missing' : 'notNumber';
      problems.push({ input: name, problem, values: {} });
    }
  }
  return { kind: 'given', inputs: values, texts, got: gotOf(pairs, names), problems, extras };
};
