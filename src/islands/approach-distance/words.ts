/** Words of the page that come from the rule sets themselves, so that a new one needs no word written elsewhere. */
import { lines as frame } from '#content/interface.json';
import { noRuleSet } from '#core/calculators/approach-distance.ts';
import { ruleSets } from '#core/facts/rule-sets.ts';
import { singleWires, usualVoltages } from '#core/facts/voltages.ts';
import type { IslandWords } from '../kit/words.ts';

export const withRuleTitles = (words: IslandWords): IslandWords => ({
  ...words,
  inputs: {
    ...words.inputs,
    ruleSet: {
      ...words.inputs['ruleSet'],
      label: words.inputs['ruleSet']?.label ?? '',
      choices: { [noRuleSet]: frame.none, ...Object.fromEntries(ruleSets.map(({ id, title }) => [id, title])) },
    },
  },
});

const shown = (kV: number): string => (kV < 1 ? `${Math.round(kV * 1000)}\u00a0V` : `${kV}\u00a0kV`);

/** What to choose from beside typing. */
export const usualSteps: readonly { text: string; label: string }[] = [
  ...usualVoltages.map((kV) => ({ text: String(kV), label: shown(kV) })),
  ...singleWires.map(({ toGround }) => ({ text: String(toGround), label: frame.singleWire.replace('{voltage}', shown(toGround)) })),
];
