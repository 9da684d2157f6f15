/**
 * A plan as the fragment of an address: `plan=2~…~check`. Every part in the order of names.ts, nothing left out, so that a
 * link means the same for ever; the last part tells a link that was cut or changed on its way. A fragment is not sent to
 * any server. Its version is that of its plan: when names change, the order as it was stays here, to read old links with.
 */
import { withEdition } from './edition.ts';
import type { Fact, Plan } from './facts.ts';
import { planVersion } from './facts.ts';
import { readAnyPlan } from './file.ts';
import { type Gate, gates, limbBearings, limbChoices, limbFacts, sharedBearings, sharedChoices, sharedFacts, siteTexts } from './names.ts';

/** Characters after the `#`: messages carry it, and a QR code still holds it with the rest of the address. */
export const longestLink = 1900;
/** A longer one is not looked at. */
const longestRead = 100_000;
const key = 'plan=';
const parting = '~';

export type WrittenLink = { readonly kind: 'link'; readonly fragment: string } | { readonly kind: 'tooLong'; readonly length: number; readonly most: number };
export type ReadPlanLink = { readonly kind: 'none' } | { readonly kind: 'plan'; readonly plan: Plan } | { readonly kind: 'bad'; readonly problem: 'cutLink' | 'newerLink' | 'badLink' };

/** 32-bit FNV-1a over UTF-16 units: tells damage, not intent. Constants from memory; any other pair would do. */
const checkOf = (text: string): string => {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
};

/** Half a pair of a sign cannot be written into an address. */
const lone = /[\ud800-\udfff]/gu;
const escaped = (text: string): string =>
  encodeURIComponent(text.replace(lone, '\ufffd')).replace(/[!'()*~_]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`).replaceAll('%20', '_');
/** @throws URIError */
const unescaped = (part: string): string => decodeURIComponent(part.replaceAll('_', '%20'));

const letters = { yes: 'y', no: 'n' } as const;
const answerOf = (letter: string | undefined): unknown => (letter === 'y' ? 'yes' : letter === 'n' ? 'no' : letter === '-' ? null : undefined);

const factPart = ({ value, got, text }: Fact): string => `${value === null ? '' : String(value)}${got === 'measured' ? 'm' : ''}${text === undefined ? '' : `*${escaped(text)}`}`;
const factShape = /^(-?\d+(?:\.\d+)?(?:e[+-]?\d+)?)?(m)?(?:\*(.*))?$/;
const factOf = (part: string): unknown => {
  const found = factShape.exec(part);
  if (!found) return undefined;
  const [, value, measured, text] = found as unknown as [string, string | undefined, string | undefined, string | undefined];
  return { value: value === undefined ? null : Number(value), got: measured ? 'measured' : 'judged', ...(text === undefined ? {} : { text: unescaped(text) }) };
};
const numberOf = (part: string): unknown => (/^-?\d+(\.\d+)?(e[+-]?\d+)?$/.test(part) ? Number(part) : undefined);

/** The rule set, and the edition of its figures behind a point, as calculators' links name it; a point within either is escaped. */
const pointless = (text: string): string => escaped(text).replaceAll('.', '%2E');
const rulePart = (set: string, edition: string | undefined): string => (edition === undefined ? pointless(set) : `${pointless(set)}.${pointless(edition)}`);
/** Links from before editions have the set alone: then `ruleEdition` is undefined. @throws URIError */
const ruleOf = (part: string): readonly [ruleSet: string, ruleEdition?: string] => part.split('.').map(unescaped) as [string, string?];

type Named<V> = { readonly [name: string]: V };
const parts = <V>(names: readonly string[], from: Named<V>, write: (value: V, name: string) => string): string[] => names.map((name) => write(from[name] as V, name));
const namesOf = (of: object): readonly string[] => Object.keys(of);
const [sharedFactNames, sharedChoiceNames, limbFactNames, limbChoiceNames] = [sharedFacts, sharedChoices, limbFacts, limbChoices].map(namesOf) as [readonly string[], readonly string[], readonly string[], readonly string[]];

export const writePlanLink = (plan: Plan): WrittenLink => {
  const { ruleEdition } = withEdition(plan);
  const body = [
    String(planVersion), plan.demo ? 'd' : '', escaped(plan.name), ...parts(siteTexts, plan.site, escaped),
    gates.map((gate: Gate) => { const answer = plan.gate[gate]; return answer === null ? '-' : letters[answer]; }).join(''),
    ...parts(sharedFactNames, plan.facts, factPart),
    ...parts(sharedChoiceNames, plan.choices, (chosen, name) => (name === 'ruleSet' ? rulePart(chosen, ruleEdition) : escaped(chosen))), ...parts(sharedBearings, plan.bearings, String),
    ...plan.limbs.flatMap((limb) => [
      escaped(limb.name), ...parts(limbFactNames, limb.facts, factPart), ...parts(limbChoiceNames, limb.choices, escaped), ...parts(limbBearings, limb.bearings, String),
    ]),
  ].join(parting);
  const fragment = `${key}${body}${parting}${checkOf(body)}`;
  return fragment.length > longestLink ? { kind: 'tooLong', length: fragment.length, most: longestLink } : { kind: 'link', fragment };
};

/** Takes parts off the front, one group at a time. @throws URIError */
const reader = (queue: readonly string[]) => {
  let at = 0;
  const one = (): string => queue[at++] ?? '';
  const named = (names: readonly string[], read: (part: string, name: string) => unknown): Named<unknown> => Object.fromEntries(names.map((name) => [name, read(one(), name)]));
  return { one, named, left: (): number => queue.length - at };
};

/** Parts that links of older versions do not have. */
const addedSince: { readonly [version: number]: readonly string[] } = { 1: ['saw', 'mass', 'balance', 'gripSpacing'] };

/** @throws URIError for a text that is not well escaped */
const planOf = (version: number, queue: readonly string[]): unknown => {
  const then = (names: readonly string[]): readonly string[] => names.filter((name) => !addedSince[version]?.includes(name));
  const { one, named, left } = reader(queue);
  const demo = one() === 'd';
  const name = unescaped(one());
  const site = named(then(siteTexts), unescaped);
  const answers = one();
  const whole = {
    v: version, demo, name, site, gate: Object.fromEntries(gates.map((gate, i) => [gate, answerOf(answers[i])])),
    facts: named(then(sharedFactNames), factOf), choices: named(sharedChoiceNames, (part, name) => (name === 'ruleSet' ? ruleOf(part) : unescaped(part))), bearings: named(sharedBearings, numberOf),
  };
  const limbs: unknown[] = [];
  while (left() > 0) {
    limbs.push({ name: unescaped(one()), facts: named(limbFactNames, factOf), choices: named(limbChoiceNames, unescaped), bearings: named(limbBearings, numberOf) });
  }
  const [ruleSet, ruleEdition] = whole.choices['ruleSet'] as ReturnType<typeof ruleOf>;
  return { ...whole, choices: { ...whole.choices, ruleSet }, limbs, ruleEdition };
};

/** @param fragment of the address, with or without its `#`. Never throws. */
export const readPlanLink = (fragment: string): ReadPlanLink => {
  const text = fragment.replace(/^#/, '');
  if (!text.startsWith(key)) return { kind: 'none' };
  if (text.length > longestRead) return { kind: 'bad', problem: 'badLink' };
  const body = text.slice(key.length, text.lastIndexOf(parting));
  const version = /^(\d{1,4})~/.exec(text.slice(key.length))?.[1];
  if (Number(version) > planVersion) return { kind: 'bad', problem: 'newerLink' };
  if (text.slice(key.length + body.length + 1) !== checkOf(body)) return { kind: 'bad', problem: 'cutLink' };
  if (version === undefined || Number(version) < 1) return { kind: 'bad', problem: 'badLink' };
  try {
    const found = readAnyPlan(planOf(Number(version), body.split(parting).slice(1)));
    return found.kind === 'plan' ? { kind: 'plan', plan: found.plan } : { kind: 'bad', problem: 'badLink' };
  } catch {
    return { kind: 'bad', problem: 'badLink' };
  }
};
