/**
 * The address of a card: `v=1&card=a6.two.plain.without.a4.year&blocks=lines_pole&…`, short, because it stands on the card
 * as a code to point a phone at. It holds every choice that the blocks on it are made from. Pure text in, pure text out.
 */
import { noRuleSet } from '../calculators/approach-distance.ts';
import { readMark, ruleMark, ruleSet } from '../facts/rule-sets.ts';
import type { AnyInput, InputProblem } from '../kit/calculator.ts';
import { pairsOf, valueOf } from '../kit/link.ts';
import type { Inputs } from '../kit/outcome.ts';
import type { UnitSystem } from '../kit/units.ts';
import { type BlockId, blockIds, callNames, type Calls, cardFields, type InputName, inputsFor, isCall, noCalls, shapeInputs } from './fields.ts';

export const cardVersion = 1;
/** How a link names each input. Those of the card's shape stand together under `card`. */
const keys: { readonly [N in InputName]?: string } = {
  guess: 'got', workingFrom: 'from', voltages: 'kv', ownDistance: 'own', ownVoltage: 'ownkv', poleLongest: 'pole', gripHeight: 'grip',
  cutHeights: 'cuts', piece: 'piece', barLength: 'bar', limbs: 'limbs', parents: 'parents', share: 'share', magnitude: 'ah', uncertainty: 'k',
  fuel: 'fuel', ratio: 'ratio',
};
const callKeys = { emergency: 'call', operator: 'oper' } as const;
const all = cardFields.inputs as { readonly [name: string]: AnyInput };
const own = ['card', 'blocks', 'rules', ...Object.values(keys), ...Object.values(callKeys)];

/** What a card need not have; a link leaves it out, and is the shorter for it. */
const leavable = new Set(Object.entries(keys).filter(([name]) => all[name]?.optional).map(([, key]) => key));

/** Values as they read; of a field that could not be read, the text itself. */
export type CardState = { blocks: readonly BlockId[]; inputs: Inputs; calls: Calls; units: UnitSystem };

const short = (n: number): string => String(Number(n.toFixed(4)));
const written = (value: Inputs[string] | undefined): string =>
  value === null || value === undefined ? '' : typeof value === 'number' ? short(value) : typeof value === 'string' ? value : value.map(short).join('_');
/** As little escaped as an address allows: each escape is three characters of the code. */
const escaped = (text: string): string => encodeURIComponent(text).replaceAll('%20', '+').replaceAll('%2F', '/');

export const writeCard = ({ blocks, inputs, calls, units }: CardState): string => {
  const set = ruleSet(String(inputs['ruleSet']));
  const pairs: [string, string][] = [
    ['v', String(cardVersion)],
    ['card', shapeInputs.map((name) => written(inputs[name])).join('.')],
    ['blocks', blocks.join('_')],
    ['units', units],
    ['rules', set ? ruleMark(set) : noRuleSet],
    ...inputsFor(blocks).flatMap((name): [string, string][] => (keys[name] ? [[keys[name], written(inputs[name])]] : []))
      .filter(([key, value]) => value !== '' || !leavable.has(key)),
    // A number that is not given is a line to write on.
    ...(blocks.includes('touch') ? callNames.map((name): [string, string] => [callKeys[name], calls[name]]).filter(([, value]) => value !== '') : []),
  ];
  return pairs.map(([key, value]) => `${key}=${escaped(value)}`).join('&');
};

export type ReadCard =
  | { kind: 'none' }
  | { kind: 'card'; state: CardState; texts: { [name: string]: string }; problems: InputProblem[]; ruleChanged: boolean };

/**
 * Reads an address. Nothing of a card in it: `none`. Otherwise what is given; what is missing, repeated, malformed or of a
 * newer version is a problem at its field (`v`, `card`, `blocks` and `rules` are fields of the whole). Unknown parameters
 * are ignored. Figures that the blocks do not use stay the example's.
 */
export const readCard = (query: string): ReadCard => {
  const pairs = pairsOf(query);
  const given = (key: string): string[] => pairs.filter(([k]) => k === key).map(([, value]) => value);
  if (!own.some((key) => given(key).length > 0)) return { kind: 'none' };
  const problems: InputProblem[] = [];
  const wrong = (input: string, problem: string): void => void problems.push({ input, problem, values: {} });
  const texts: { [name: string]: string } = {};
  const inputs: { [name: string]: Inputs[string] } = Object.fromEntries(Object.entries(all).map(([name, { example }]) => [name, example]));

  const version = given('v');
  const from = version.length === 0 ? cardVersion : /^\d{1,4}$/.test(version[0] as string) ? Number(version[0]) : Number.NaN;
  if (version.length > 1 || !(from >= 1 && from <= cardVersion)) wrong('v', from > cardVersion ? 'newerLink' : 'badLink');

  /** One value under a key, or the problem of there being none or several. */
  const one = (key: string, name: string): string | null => {
    const values = given(key);
    if (values.length === 1) return values[0] as string;
    texts[name] = values.join(' ');
    wrong(name, values.length === 0 ? 'missing' : 'repeated');
    return null;
  };

  const shape = one('card', 'card')?.split('.');
  if (shape && shape.length !== shapeInputs.length) wrong('card', 'badLink');
  else shape?.forEach((text, i) => {
    const name = shapeInputs[i] as InputName;
    if (all[name]?.kind === 'choice' && all[name].options.includes(text)) inputs[name] = text;
    else wrong(name, 'notChoice');
  });

  const named = one('blocks', 'blocks')?.split('_').filter(Boolean) ?? [];
  const blocks = blockIds.filter((id) => named.includes(id));
  if (new Set(named).size !== named.length) wrong('blocks', 'repeated');
  else if (named.length !== blocks.length) wrong('blocks', 'unknownBlock');

  const rules = one('rules', 'ruleSet');
  const mark = rules === null || rules === noRuleSet ? null : readMark(rules);
  if (mark) inputs['ruleSet'] = mark.id;
  else if (rules !== null && rules !== noRuleSet) wrong('ruleSet', 'unknownRule');

  for (const name of inputsFor(blocks)) {
    const key = keys[name];
    if (!key) continue;
    const input = all[name] as AnyInput;
    if (input.optional && given(key).length === 0) {
      inputs[name] = null;
      continue;
    }
    const text = one(key, name);
    if (text === null) continue;
    const value = valueOf(input, text);
    if (value !== undefined && !(input.kind === 'choice' && !input.options.includes(String(value)))) inputs[name] = value;
    else {
      texts[name] = text.replaceAll('_', ' ');
      wrong(name, text === '' ? 'missing' : input.kind === 'choice' ? 'notChoice' : 'notNumber');
    }
  }

  const calls = { ...noCalls };
  if (blocks.includes('touch')) {
    for (const name of callNames) {
      if (given(callKeys[name]).length === 0) continue;
      const text = one(callKeys[name], name);
      if (text !== null) calls[name] = text;
      if (text !== null && !isCall(text)) wrong(name, 'notCall');
    }
  }
  const units = given('units')[0] === 'imperial' ? 'imperial' : 'metric';
  return { kind: 'card', state: { blocks, inputs, calls, units }, texts, problems, ruleChanged: mark?.changed ?? false };
};
