/** Files of plans that were damaged on their way, or made to do harm: seeded, so that each can be met again. */
import demo from '#content/plan/demo.json' with { type: 'json' };
import { fileFormat, fileVersion, readPlansFile } from '#core/plan/file.ts';
import { shapeProblems } from '#core/plan/problems.ts';
import { randomFrom } from '../kit/random.ts';

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
const hostile: readonly unknown[] = [
  null, true, 0, -1, 1e308, '', 'x'.repeat(301), '<img src=x onerror=alert(1)>', 'javascript:alert(1)', '\u0000', '\ud800', '\u202e', [], {}, [[[[]]]],
  { length: 1 }, { toString: 1 }, { v: 99 }, '1', 'NaN', { value: '1', got: 'judged' }, { value: 1, got: '__proto__' }, Array(13).fill(0),
];
/** Keys that reach into other objects where they are copied without thought; written as text, since a literal would set them. */
const keys = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'v', 'x', ''];
const bits = ['{', '}', '[', ']', ',', ':', '"', '\\', '\\u', '1e999', '-', 'null', '/*', '\n', '\u0000', '\ufeff', '</script>'];

const nodesOf = (value: Json, path: (string | number)[] = []): (string | number)[][] =>
  [path, ...(typeof value === 'object' && value !== null ? Object.entries(value).flatMap(([key, below]) => nodesOf(below, [...path, key])) : [])];

/** The text of a file; `seed` says how it is spoilt. */
export const spoiltFile = (seed: number): string => {
  const random = randomFrom(seed);
  const upTo = (n: number): number => Math.floor(random() * n);
  const one = <T>(of: readonly T[]): T => of[upTo(of.length)] as T;
  const plans = Array.from({ length: 1 + upTo(3) }, () => structuredClone(demo) as unknown as Json);
  const data = { format: fileFormat, version: fileVersion, edition: 'abcd1234', plans } as { [key: string]: Json };
  const text = (): string => JSON.stringify(data, null, upTo(2));
  const inShape = (): string => {
    let written = text();
    for (let i = 1 + upTo(3); i > 0; i--) {
      const paths = nodesOf(JSON.parse(written) as Json).slice(1);
      const path = one(paths);
      const whole = JSON.parse(written) as Json;
      const above = path.slice(0, -1).reduce<Json>((at, key) => (at as { [key: string]: Json })[key] as Json, whole) as { [key: string]: Json };
      const last = path.at(-1) as string;
      const how = upTo(4);
      if (how === 0) delete above[last];
      else if (how === 1) above[last] = one(hostile) as Json;
      else if (how === 2) Object.defineProperty(above, one(keys), { value: one(hostile), enumerable: true, configurable: true, writable: true });
      else above[last] = above;
      // A ring cannot be written: the part is written within itself once.
      written = how === 3 ? ringless(whole, above, last) : JSON.stringify(whole);
    }
    return written;
  };
  const ringless = (whole: Json, above: { [key: string]: Json }, last: string): string => {
    above[last] = null;
    above[last] = JSON.parse(JSON.stringify(above)) as Json;
    return JSON.stringify(whole);
  };
  const ways: readonly (() => string)[] = [
    inShape, inShape, inShape,
    () => text().slice(0, upTo(text().length)),
    () => {
      let t = text();
      for (let i = 1 + upTo(8); i > 0; i--) { const at = upTo(t.length); t = t.slice(0, at) + one(bits) + t.slice(at + upTo(4)); }
      return t;
    },
    () => Array.from({ length: upTo(400) }, () => String.fromCharCode(upTo(0x10000))).join(''),
    () => text().replace(/("\w+":\s*)(-?[\d.]+)/g, (all, name: string) => (random() < 0.05 ? `${name}${one(['1e999', '-1e999', '01', '1e-999', '0x1', '"1"'])}` : all)),
    () => one(['['.repeat(50_000), '{"a":'.repeat(20_000), '"'.repeat(999), 'null', '7', '[]', '{}', `{"format":"${fileFormat}"}`, `{"format":"${fileFormat}","version":${1 + upTo(3)},"plans":${one(['[]', '{}', '[null]', '[[]]', '7'])}}`]),
  ];
  return one(ways)();
};

const keysOf = (value: unknown, into = new Set<string>()): Set<string> => {
  if (typeof value === 'object' && value !== null) for (const [key, below] of Object.entries(value)) {
    if (!Array.isArray(value)) into.add(key);
    keysOf(below, into);
  }
  return into;
};
const known = new Set([...keysOf(demo), 'text']);

/** Reads the file; what went wrong with the reading itself, empty where nothing did; and what the file came to. */
export const faultsOfReading = (text: string, isSaid: (problem: string) => boolean): { wrong: string[]; problems: string[]; plans: number } => {
  const wrong: string[] = [];
  const { plans, faults } = readPlansFile(text);
  const problems = faults.flatMap((fault) => fault.problems.map(({ problem }) => problem));
  for (const plan of plans) {
    if (shapeProblems(plan).length > 0) wrong.push('gave something that is no plan');
    for (const key of keysOf(plan)) if (!known.has(key)) wrong.push(`let "${key}" in`);
    if (Object.getPrototypeOf(plan) !== Object.prototype) wrong.push('gave a plan of another making');
  }
  if (plans.length === 0 && problems.length === 0) wrong.push('gave nothing and said nothing');
  for (const fault of faults) if (fault.problems.length === 0) wrong.push('found a fault and did not say it');
  for (const problem of problems) if (!isSaid(problem)) wrong.push(`has no words for ${problem}`);
  if (faults.every(({ plan }) => plan !== null)) {
    const given = (JSON.parse(text.replace(/^\ufeff/, '')) as { plans: unknown[] }).plans.length;
    if (plans.length + faults.length !== given) wrong.push(`${given} plans came, ${plans.length + faults.length} were spoken of`);
  }
  if (Object.keys(Object.prototype).length > 0 || ({} as { v?: unknown }).v !== undefined) wrong.push('reached into every object');
  return { wrong, problems, plans: plans.length };
};
