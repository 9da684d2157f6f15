/** Who may import whom: read from the import lines. The rules stand in DEVELOPERS.md. */
import { describe, expect, it } from 'vitest';
import { filesOf, type Import, importsOf, isOwn, targetOf } from './sources.ts';

const code = filesOf(['src', 'content'], ['.ts', '.tsx', '.mjs', '.astro', '.mdx']).filter((f) => !f.endsWith('.d.ts'));
const imports = code.flatMap(importsOf);

/** What files that match `who` may import: each either always, or as a type only. */
type Rule = { who: RegExp; may: readonly RegExp[]; types?: readonly RegExp[] };
const kitOf = /^src\/core\/kit\//;
const rules: { [name: string]: Rule } = {
  'core/kit: the kit': { who: kitOf, may: [kitOf] },
  'core/facts: shared, and each other': { who: /^src\/core\/facts\//, may: [/^src\/core\/facts\//, /^shared\/(values|tables)\//] },
  'core/formulas: formulas and facts': { who: /^src\/core\/formulas\//, may: [/^src\/core\/(formulas|facts)\//] },
  'core/calculators: kit, formulas, facts; no other calculator': { who: /^src\/core\/calculators\//, may: [/^src\/core\/(kit|formulas|facts)\//] },
  'core/plan: the calculators it puts together, what they are made of': { who: /^src\/core\/plan\//, may: [/^src\/core\/(plan|kit|calculators|formulas|facts)\//] },
  'core/card: a pocket card, made of what the calculators say': { who: /^src\/core\/card\//, may: [/^src\/core\/(card|kit|calculators|formulas|facts)\//] },
  'core/registry: calculators and kit': { who: /^src\/core\/registry\.ts$/, may: [/^src\/core\/(kit|calculators)\//] },
  'drawings: types of core, its showing, the formulas and the calculator that they draw, each other, D3, preact': {
    who: /^src\/drawings\//,
    may: [/^src\/drawings\//, /^src\/core\/kit\/show\.ts$/, /^src\/core\/formulas\//, /^d3(-[a-z]+)?$/, /^preact(\/hooks)?$/],
    types: [/^src\/core\/(kit|calculators|plan|card)\//],
  },
  'islands/kit: kit of core, device, preact, words': {
    who: /^src\/islands\/kit\//,
    may: [/^src\/islands\/kit\//, kitOf, /^src\/core\/formulas\//, /^src\/device\//, /^preact(\/hooks|\/compat)?$/, /^content\/interface\.json$/, /^src\/components\/[a-z-]+\.ts$/, /^src\/drawings\/kit\//],
    types: [/^src\/schemas\.ts$/, /^astro$/],
  },
  'the card: all calculators by way of core/card, drawings, islands/kit, device, words, what writes files and codes': {
    who: /^src\/islands\/card\//,
    may: [/^src\/islands\/(card|kit)\//, /^src\/core\/(card|calculators|kit|formulas|facts)\//, /^src\/drawings\//, /^src\/device\//, /^preact(\/hooks)?$/, /^content\/(cards\/|drawings\/|interface\.json$)/, /^(pdf-lib|uqr)$/],
  },
  'the plan: the calculators by way of core/plan, drawings, islands/kit, device, words; what writes a PDF is the card’s': {
    who: /^src\/islands\/plan\//,
    may: [
      /^src\/islands\/(plan|kit)\//, /^src\/islands\/card\/pdf\.ts$/, /^src\/core\/(plan|calculators|kit|formulas|facts)\//, /^src\/core\/card\/(place|sheets|type)\.ts$/,
      /^src\/drawings\//, /^src\/device\//, /^preact(\/hooks)?$/, /^src\/components\/fill\.ts$/, /^content\/(drawings\/|plan\/|interface\.json$)/,
    ],
    types: [/^src\/schemas\.ts$/],
  },
  'an island: its own calculator, drawings, islands/kit, device, preact': {
    who: /^src\/islands\/(?!(kit|card|plan)\/)/,
    may: [/^src\/islands\//, /^src\/core\/(calculators|kit|formulas|facts|plan)\//, /^src\/drawings\//, /^src\/device\//, /^preact(\/hooks)?$/, /^src\/components\/fill\.ts$/, /^content\/(drawings\/|plan\/|interface\.json$)/],
    types: [/^src\/components\//, /^src\/schemas\.ts$/],
  },
  'device: its own, and types of core': { who: /^src\/device\//, may: [/^src\/device\//, /^idb-keyval$/], types: [kitOf] },
  'worker: its own, and the means to precache': { who: /^src\/worker\//, may: [/^src\/worker\//, /^workbox-[a-z]+(\/[A-Za-z.]+)?$/, /^content\/interface\.json$/, /^src\/(components|device)\/[a-z-]+\.ts$/, /^src\/styles\//] },
  'build: none of the parts of a page': {
    who: /^src\/build\//,
    may: [/^src\/build\//, /^node:/, /^(astro|vite|pagefind|sirv)(\/[a-z]+)?$/, /^src\/worker\/messages\.ts$/],
  },
  // Pages are made at build and print the tables of shared/ as they stand.
  'components, layouts, pages: core, drawings, content, device, shared': {
    who: /^src\/(components|layouts|pages)\//,
    may: [
      /^src\/(components|layouts|core|drawings|device|styles|schemas\.ts|worker\/(register|notice|keeping)\.ts)/, /^(content|shared)\//, /^astro(:[a-z]+|\/zod)?$/,
      /^(uqr|svgo|preact|preact-render-to-string)$/, /^src\/build\/placeholders\.ts$/, /^src\/islands\/plan\/(Plan\.tsx|words\.ts)$/, /^src\/islands\/card\/Card\.tsx$/,
    ],
  },
  'content: islands and components by name': { who: /^content\//, may: [/^src\/(islands\/[a-z-]+\/Island\.tsx|components\/|styles\/)/] },
};
const ruleFor = (file: string): [string, Rule] | undefined => Object.entries(rules).find(([, rule]) => rule.who.test(file));
/** `src/drawings/x/…` of `src/core/calculators/x.ts`. */
const ofTheSame = (i: Import): boolean =>
  i.file.startsWith('src/drawings/') && targetOf(i) === `src/core/calculators/${i.file.split('/')[2]}.ts`;
const allowed = (rule: Rule, i: Import): boolean =>
  ofTheSame(i) || [...rule.may, ...(i.typeOnly ? (rule.types ?? []) : [])].some((pattern) => pattern.test(targetOf(i)));

describe('who imports whom', () => {
  it('there is code to read', () => {
    expect(imports.length).toBeGreaterThan(200);
    expect(imports.some((i) => i.typeOnly)).toBe(true);
  });

  it.each(Object.keys(rules))('%s', (name) => {
    const of = imports.filter((i) => ruleFor(i.file)?.[0] === name);
    expect(of.filter((i) => !allowed(rules[name] as Rule, i)).map((i) => `${i.file} imports ${i.from}`)).toEqual([]);
  });

  it('every file stands under a rule, but the two that set the content up', () => {
    expect(code.filter((file) => !ruleFor(file))).toEqual(['src/content.config.ts', 'src/schemas.ts']);
  });

  it('every import of our own leads to a file', () => {
    const own = imports.filter((i) => /^[.#]/.test(i.from));
    expect(own.filter((i) => !isOwn(targetOf(i))).map((i) => `${i.file} imports ${i.from}`)).toEqual([]);
  });

  it('core says its endings, so that node runs it as it stands', () => {
    const core = imports.filter((i) => i.file.startsWith('src/core/'));
    expect(core.filter((i) => !/\.(ts|json)$/.test(i.from)).map((i) => `${i.file} imports ${i.from}`)).toEqual([]);
  });
});

/** Own files by value, not for their types. */
const valueTargets = new Map<string, string[]>();
for (const i of imports) {
  const target = targetOf(i);
  if (!i.typeOnly && isOwn(target)) valueTargets.set(i.file, [...(valueTargets.get(i.file) ?? []), target]);
}
const reached = (from: string, seen = new Set<string>()): Set<string> => {
  for (const next of valueTargets.get(from) ?? []) {
    if (seen.has(next)) continue;
    seen.add(next);
    reached(next, seen);
  }
  return seen;
};

describe('what a page carries', () => {
  const islands = code.filter((f) => /^src\/islands\/[a-z-]+\/Island\.tsx$/.test(f));

  it.each(islands)('%s: its own calculator and no other, no other island, not the list of all', (island) => {
    const id = island.split('/')[2] as string;
    const carried = [...reached(island)];
    expect(carried.filter((f) => f.startsWith('src/core/calculators/'))).toEqual([`src/core/calculators/${id}.ts`]);
    expect(carried.filter((f) => /^src\/islands\/(?!kit\/)/.test(f) && !f.startsWith(`src/islands/${id}/`))).toEqual([]);
    expect(carried).not.toContain('src/core/registry.ts');
  });

  it('no ring of imports', () => {
    expect(code.filter((file) => reached(file).has(file))).toEqual([]);
  });
});
