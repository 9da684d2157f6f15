/** The rule set and the operator's figure, kept on the device for the whole handbook; offered, never kept silently. */
import { useLayoutEffect, useState } from 'preact/hooks';
import { lines as frame } from '#content/interface.json';
import { approachDistance, noRuleSet } from '#core/calculators/approach-distance.ts';
import { readMark, ruleSet } from '#core/facts/rule-sets.ts';
import { readLink } from '#core/kit/link.ts';
import { keepOwn, own } from '#device/own-distance.ts';
import { held, onChange, set, settings } from '#device/settings.ts';
import type { CalculatorState } from '../kit/useCalculator.ts';

export const RuleKept = ({ state }: { state: CalculatorState }) => {
  const [kept, setKept] = useState<string | null>(null);
  const [changed, setChanged] = useState(false);
  const [ownKept, setOwnKept] = useState<number | null>(null);
  useLayoutEffect(() => {
    if (!state.isRead) return;
    const look = (): void => {
      setKept('ruleSet' in held() ? null : settings().ruleSet);
      setOwnKept(own());
    };
    look();
    setChanged(readMark(readLink(approachDistance, location.search).extras.rules ?? '')?.changed ?? false);
    const wanted = settings().ruleSet;
    const some: { [name: string]: string | number } = {};
    const figure = own();
    // A link's figures, and what is in the fields already, go before what is kept.
    if (!new URLSearchParams(location.search).has('ruleSet')) {
      if (wanted !== null && ruleSet(wanted) && state.fields['ruleSet']?.text === noRuleSet) some['ruleSet'] = wanted;
      if (figure !== null && state.fields['ownDistance']?.text === '') some['ownDistance'] = figure;
      if (Object.keys(some).length > 0) state.setInputs(some);
    }
    return onChange(look);
    // Once, when what was typed before has been taken over: later the reader's own fields lead.
  }, [state.isRead]);

  const chosen = state.fields['ruleSet']?.text ?? '';
  const field = state.fields['ownDistance'];
  const figure = typeof field?.value === 'number' ? field.value : null;
  return (
    <>
      {changed && <p class="finding caution" role="alert">{frame.ruleChanged}</p>}
      <p class="rule-kept no-print">
        {ruleSet(chosen) && chosen !== kept && <button type="button" onClick={() => set({ ruleSet: chosen })}>{frame.keepRule}</button>}
        {ruleSet(chosen) && chosen === kept && <span>{frame.ruleKept}</span>}
        {field?.problem === null && figure !== ownKept && (
          <button type="button" onClick={() => { keepOwn(figure); setOwnKept(own()); }}>{figure === null ? frame.forgetOwn : frame.keepOwn}</button>
        )}
      </p>
    </>
  );
};
