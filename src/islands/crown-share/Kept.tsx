/** Trees kept on the device: add these cuts to one, or go on from what was taken before. */
import { useEffect, useState } from 'preact/hooks';
import { kept as words } from '#content/interface.json';
import { showValue } from '#core/kit/show.ts';
import type { Quantity } from '#core/kit/outcome.ts';
import { addVisit, forget, longestName, takenInYear, type Tree, trees } from '#device/trees.ts';
import type { CalculatorState } from '../kit/useCalculator.ts';

/** The reader's own day, as year-month-day. */
const today = (): string => {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, '0')).join('-');
};
const percent = (share: number): string => showValue({ unit: '%', step: 0.1 }, share, 'metric', 'up');
/** To a tenth, up: what the field then holds is what was shown. */
const upTenth = (share: number): number => Math.ceil(share * 10 - 1e-9) / 10;

export const Kept = ({ state }: { state: CalculatorState }) => {
  const [all, setAll] = useState<readonly Tree[]>([]);
  const [name, setName] = useState('');
  const [said, setSaid] = useState('');
  const [asks, setAsks] = useState<string | null>(null);
  useEffect(() => setAll(trees()), []);

  const { outcome, good } = state;
  const now = outcome.kind === 'answer' && good && !state.isExample ? good : null;
  const add = (to: string): void => {
    const called = to.trim().slice(0, longestName);
    if (!now || called === '') {
      setSaid(now ? words.nameFirst : words.figuresFirst);
      return;
    }
    // These cuts alone: what was entered as taken already is kept from before.
    const share = ((now.outcome.outputs['share'] as Quantity).planOn as number) - (now.inputs['earlier'] as number);
    setSaid(addVisit(called, now.inputs['stemDiameter'] as number, { day: today(), share }) ? words.added.replace('{name}', called).replace('{share}', percent(share)) : words.refused);
    setAll(trees());
    setName('');
  };
  const goOn = (tree: Tree): void => {
    state.setInputs({ stemDiameter: tree.stem, earlier: Math.min(100, upTenth(takenInYear(tree, today()))) });
    setSaid(words.goesOn.replace('{name}', tree.name));
  };
  const drop = (tree: Tree): void => {
    if (asks !== tree.name) return setAsks(tree.name);
    setAsks(null);
    setSaid(forget(tree.name) ? words.forgotten.replace('{name}', tree.name) : words.refused);
    setAll(trees());
  };
  return (
    <section class="kept needs-script no-print">
      <h2>{words.title}</h2>
      <p class="hint">{words.hint}</p>
      <div class="field">
        <label for="tree-name">{words.name}</label>
        <div class="field-row">
          <span class="field-input wide"><input id="tree-name" type="text" autocomplete="off" maxLength={longestName} value={name} onInput={(e) => setName(e.currentTarget.value)} /></span>
          <button type="button" onClick={() => add(name)}>{words.add}</button>
        </div>
      </div>
      <p role="status">{said || null}</p>
      {all.length > 0 && (
        <ul class="kept-trees">
          {all.map((tree) => (
            <li key={tree.name}>
              <p><strong>{tree.name}</strong>{` ${words.taken.replace('{share}', percent(takenInYear(tree, today()))).replace('{visits}', String(tree.visits.length)).replace('{day}', tree.visits.map((v) => v.day).sort().at(-1) ?? '–')}`}</p>
              <p class="actions">
                <button type="button" aria-label={`${words.addHere}: ${tree.name}`} onClick={() => add(tree.name)}>{words.addHere}</button>
                <button type="button" aria-label={`${words.goOn}: ${tree.name}`} onClick={() => goOn(tree)}>{words.goOn}</button>
                <button type="button" aria-label={`${asks === tree.name ? words.sure : words.forget}: ${tree.name}`} onClick={() => drop(tree)}>{asks === tree.name ? words.sure : words.forget}</button>
              </p>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};
