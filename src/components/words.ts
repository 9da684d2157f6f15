/**
 * Words with facts in them: `{topic.key}` becomes a token that the page renders with its mark. Names without a dot
 * (`{cutHeight}`) stay: they are filled with the reader's figures. The same code serves frontmatter, terms and labels.
 */
import words from '#content/interface.json';
import { allSpecies } from '#core/facts/species.ts';
import type { CalculatorWords } from '../schemas.ts';
import { address } from './address.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { factOf, factText, statusWords } from './facts.ts';

const sheets = import.meta.glob<string>('/content/calculators/*.mdx', { eager: true, query: '?raw', import: 'default' });

/** The title in a calculator's frontmatter. Read as text: the page of one may not load the island of another. */
export const calculatorTitle = (id: string): string => {
  const title = /^title: *(.+)$/m.exec(sheets[`/content/calculators/${id}.mdx`] ?? '')?.[1];
  if (!title) throw new Error(`content/calculators/${id}.mdx has no title to carry on to`);
  return title;
};

const frame = words.calculator;
const placeholder = /\{([a-z0-9-]+\.[a-z0-9-]+)\}/g;

/** `{=metric|imperial|id|mark|says}`: what an island needs to show a fact without carrying the facts. */
export const withFacts = (text: string): string =>
  text.replace(placeholder, (_, id: string) => {
    const fact = factOf(id);
    const { mark, says } = statusWords(fact.status);
    return `{=${factText(fact, 'metric')}|${factText(fact, 'imperial')}|${id}|${mark}|${says}}`;
  });

/** Plain text for titles, descriptions and the index of search: no mark. */
export const plainFacts = (text: string, system: UnitSystem = 'metric'): string =>
  text.replace(placeholder, (_, id: string) => factText(factOf(id), system));

const deep = <T>(value: T): T => {
  if (typeof value === 'string') return withFacts(value) as T;
  if (Array.isArray(value)) return value.map(deep) as T;
  if (value !== null && typeof value === 'object') return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, deep(v)])) as T;
  return value;
};

/** What the choices of a tree are called: common name, then the botanical one, in order of the common names. */
export const speciesNames = (): Record<string, string> =>
  Object.fromEntries([
    ['unknown', frame.unknownSpecies],
    ...[...allSpecies].sort((a, b) => a.common.localeCompare(b.common, 'en')).map(({ id, common, botanical, green }) => [id, `${common} (${botanical})${green === null ? `, ${frame.noGreen}` : ''}`]),
  ]);

/** What an island is handed by its page: its words, facts filled in, and where the handbook lies. */
export const islandProps = (frontmatter: CalculatorWords) => {
  const { inputs, outputs, middle = {}, findings, outside = {}, problems = {}, working, drawing, carries = {} } = frontmatter;
  return {
    words: deep({ inputs, outputs, middle, findings, outside, problems, working, drawing, carries }),
    titles: Object.fromEntries([...Object.keys(carries), ...('/content/calculators/line-clearance.mdx' in sheets ? ['line-clearance'] : [])].map((id) => [id, calculatorTitle(id)])),
    base: address('/'),
  };
};
