/** The pocket card: chosen, seen at true size, printed or saved. Loaded at the reader's first act. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { encode } from 'uqr';
import words from '#content/cards/card.json';
import { calculator as frame, lines as lineWords } from '#content/interface.json';
import { noRuleSet } from '#core/calculators/approach-distance.ts';
import { cardFields, type CardInputs } from '#core/card/fields.ts';
import { layOut } from '#core/card/layout.ts';
import { pagesOf } from '#core/card/sheets.ts';
import { ruleSets } from '#core/facts/rule-sets.ts';
import { keptCard } from '#device/card.ts';
import type { Speaker } from '../kit/Say.tsx';
import { Rested } from '../kit/Kept.tsx';
import type { IslandWords } from '../kit/words.ts';
import { Choose } from './Choose.tsx';
import { blocksOf, footOf } from './copy.ts';
import { day, later } from './dates.ts';
import { Output } from './Output.tsx';
import { Preview, Sheets } from './Pages.tsx';
import { useCard } from './useCard.ts';

type Props = { inputs: IslandWords['inputs']; base: string };

const months = { quarter: 3, half: 6, year: 12 } as const satisfies { [C in CardInputs['check']]: number };
const sheetWords = { ruler: { metric: words.sheetWords.metric, imperial: words.sheetWords.imperial }, ...words.sheetWords };
const generalWords: { readonly [problem: string]: string } = {
  newerLink: words.problems.newerLink, badLink: words.problems.badLink, unknownBlock: words.problems.unknownBlock,
  repeated: words.problems.repeatedBlock, missing: words.problems.missingBlock, tooManyBlocks: words.tooManyBlocks,
};

export default function Card({ inputs, base }: Props) {
  const state = useCard();
  const [here, setHere] = useState<{ address: string; edition: string; today: Date } | null>(null);
  useEffect(() => {
    setHere({ address: location.origin + location.pathname, edition: document.querySelector('footer .edition-id')?.textContent ?? '', today: new Date() });
  }, []);
  const { choices, good, system, problems, query } = state;
  const speaker: Speaker = useMemo(() => ({
    calculator: cardFields,
    base,
    words: {
      inputs: { ...inputs, ruleSet: { ...inputs['ruleSet'], label: words.inputs.ruleSet.label, choices: { [noRuleSet]: lineWords.none, ...Object.fromEntries(ruleSets.map(({ id, title }) => [id, title])) } } },
      problems: words.problems, outputs: {}, middle: {}, findings: {}, outside: {}, working: {}, drawing: '', carries: {},
    },
  }), [inputs, base]);

  const shown = choices ?? good;
  const address = here ? `${here.address}?${query}` : '';
  const made = useMemo(() => {
    if (!shown) return null;
    const blocks = blocksOf(shown, system);
    const printed = here
      ? { edition: here.edition, printed: day(here.today), check: day(later(here.today, months[shown.inputs.check])), code: encode(address, { ecc: 'L', border: 0 }).data }
      : { edition: '', printed: '', check: '', code: [] };
    const layout = layOut(shown.inputs, blocks, footOf(blocks, shown.inputs, printed));
    return { layout, pages: pagesOf(layout.sides, shown.inputs, sheetWords, system === 'imperial'), shape: shown.inputs };
  }, [shown, system, here, address]);

  const over = made?.layout.over ?? [];
  const whole = choices !== null && made !== null && over.length === 0 && !made.layout.footOver;
  const ready = whole && here !== null;
  const general = problems.filter(({ input }) => input === 'v' || input === 'card' || input === 'blocks');
  const differs = state.isRead && state.from === 'link' && state.isKept !== false;
  return (
    <>
      <div class="card-screen">
        <p class="link-words">{`${words.reading} `}<span class="soft">{words.readingFailed}</span></p>
        <div class="held">
          {state.from === 'example' && <p class="example-words">{words.example}</p>}
          <div role="status">
            {general.map(({ input, problem, values }) => (
              <p class="finding stop" key={`${input}-${problem}`}>{(input === 'card' ? words.problems.badLink : generalWords[problem] ?? words.problems.badLink).replace('{count}', String(values['count'] ?? ''))}</p>
            ))}
            {problems.length > general.length && <p class="finding caution">{words.trouble}</p>}
            {choices && over.length > 0 && <p class="finding stop">{words.over.replace('{blocks}', over.map((id) => words.blocks[id as keyof typeof words.blocks].name).join('; '))}</p>}
            {choices && made?.layout.footOver && <p class="finding stop">{words.footOver}</p>}
            {state.ruleChanged && <p class="finding caution">{words.ruleChanged}</p>}
          </div>
          {state.general.length > 0 && <p><button type="button" onClick={state.goOn}>{words.mend}</button></p>}
          {made && <Preview sides={made.layout.sides} quiet={!whole} />}
          {differs && <p class="card-buttons"><button type="button" onClick={state.keep}>{words.keepHere}</button>{keptCard() !== null && <a href={`${base}card/`}>{words.own}</a>}</p>}
          {state.isKept !== null && <p class="soft" role="status">{state.isKept ? words.kept : words.refused}</p>}
          <Output sides={made?.layout.sides ?? []} pages={made?.pages ?? []} ready={ready} address={address} />
          <Choose state={state} speaker={speaker} />
          <p class="soft">{frame.statement}</p>
        </div>
      </div>
      {made && ready && <Rested><h2 class="card-screen">{words.sheet}</h2><Sheets pages={made.pages} shape={made.shape} /></Rested>}
      {!ready && <p class="card-none">{words.trouble}</p>}
    </>
  );
}
