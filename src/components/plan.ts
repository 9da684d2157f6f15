/** What the island of the plan is handed: its words with facts filled in, and those of the calculators it puts together. */
import { getCollection } from 'astro:content';
import interfaceWords from '#content/interface.json';
import words from '#content/plan/words.json';
import { noRuleSet } from '#core/calculators/approach-distance.ts';
import { ruleSets } from '#core/facts/rule-sets.ts';
import { address } from './address.ts';
import { chapters } from './handbook.ts';
import { islandProps, speciesNames, withFacts } from './words.ts';

const ids = {
  stance: 'stance', dropZone: 'drop-zone', barLength: 'bar-length', limbWeight: 'limb-weight', cutOrder: 'cut-order',
  approachDistance: 'approach-distance', lineClearance: 'line-clearance', poleLoad: 'pole-load',
} as const;

/** Without hints, workings and what else only a calculator's own page says. */
const brief = ({ inputs, outputs, middle, findings, outside, problems }: ReturnType<typeof islandProps>['words']) => ({
  inputs: Object.fromEntries(Object.entries(inputs).map(([name, { label, choices }]) => [name, choices ? { label, choices } : { label }])),
  outputs, middle, findings, outside, problems, working: {}, drawing: '', carries: {},
});

const deep = <T>(value: T): T =>
  typeof value === 'string' ? (withFacts(value) as T)
  : value !== null && typeof value === 'object' ? (Object.fromEntries(Object.entries(value).map(([k, v]) => [k, deep(v)])) as T)
  : value;

export const planProps = async () => {
  const sheets = new Map((await getCollection('calculators')).map((entry) => [entry.id, entry.data]));
  const data = (id: string) => sheets.get(id)!;
  const titles = new Map((await chapters()).map((chapter) => [chapter.id, chapter.data.title]));
  const choicesOf = (id: string, name: string) => data(id).inputs[name]?.choices ?? {};
  const { also: _, noScript: __, description: ___, say: ____, home: _____, ...own } = words;
  return {
    words: deep(own) as typeof words,
    parts: Object.fromEntries(Object.entries(ids).map(([part, id]) => [part, { id, title: data(id).title, words: brief(islandProps(data(id)).words) }])),
    choices: {
      species: speciesNames(),
      workingFrom: choicesOf('line-clearance', 'workingFrom'),
      wires: { yes: words.yes, no: words.no },
      ruleSet: { [noRuleSet]: interfaceWords.lines.none, ...Object.fromEntries(ruleSets.map(({ id, title }) => [id, title])) },
      lineKind: choicesOf('approach-distance', 'lineKind'),
      toldBy: choicesOf('approach-distance', 'toldBy'),
      support: choicesOf('cut-order', 'support'),
      fault: choicesOf('cut-order', 'fault'),
      shape: choicesOf('cut-order', 'shape'),
      release: choicesOf('drop-zone', 'release'),
      condition: choicesOf('limb-weight', 'condition'),
    },
    chapters: Object.fromEntries(Object.values(words.gate.questions).map(({ read }) => {
      const title = titles.get(read);
      if (!title) throw new Error(`content/plan/words.json: there is no chapter "${read}"`);
      return [read, title];
    })),
    base: address('/'),
  };
};
