/** Copy the link with every figure, print, and carry results on to the next calculator. */
import { useState } from 'preact/hooks';
import { calculator as frame } from '#content/interface.json';
import type { Got, QuantityOutput } from '#core/kit/calculator.ts';
import type { Inputs, Quantity } from '#core/kit/outcome.ts';
import type { Speaker } from './Say.tsx';
import { type CalculatorState, predictMark } from './useCalculator.ts';

type Props = { speaker: Speaker; state: CalculatorState; titles: Readonly<Record<string, string>> };

/** To a hundredth, outward: what is carried is read in a field. */
const rounded = (value: number, protects: QuantityOutput['protects']): number =>
  protects === 'both' ? Number(value.toFixed(2)) : (protects === 'up' ? Math.ceil(value * 100 - 1e-6) : Math.floor(value * 100 + 1e-6)) / 100;

/**
 * Our figures as the other calculator's inputs. A result goes as what to plan on, exact, with no further tolerance; one
 * that has no such end, but a range, goes as a guess, so that the range is not lost; a figure the reader entered goes as
 * it was got. What the other still needs is asked for there.
 */
const carried = ({ calculator, good, fields }: CalculatorState, fill: Readonly<Record<string, string>>): string => {
  const pairs: [string, string][] = [];
  const names: Record<Got, string[]> = { judged: [], measured: [], exact: [] };
  for (const [theirs, ours] of Object.entries(fill)) {
    const parts = ours.split('+').map((part): { value: Inputs[string] | undefined; got: Got } => {
      const output = calculator.outputs[part] as QuantityOutput | undefined;
      if (!output) return { value: good?.inputs[part], got: fields[part]?.got ?? 'judged' };
      const figure = good?.outcome.outputs[part] as Quantity | null | undefined;
      if (!figure) return { value: undefined, got: 'exact' };
      return { value: rounded(figure.planOn ?? figure.value, output.protects), got: figure.planOn === null && figure.low !== figure.high ? 'judged' : 'exact' };
    });
    if (parts.some(({ value }) => value === null || value === undefined)) continue;
    // A sum is a result, whatever of it was entered.
    const [first] = parts;
    names[parts.length > 1 ? 'exact' : first!.got].push(theirs);
    pairs.push([theirs, parts.length === 1 ? String(first!.value) : String(Number(parts.reduce((sum, { value }) => sum + (value as number), 0).toFixed(6)))]);
  }
  const got = (['measured', 'exact'] as const).filter((how) => names[how].length > 0).map((how) => [how, names[how].join('_')] as [string, string]);
  return [['v', '1'], ['got', 'judged'], ...got, ...pairs].map(([key, value]) => `${key}=${encodeURIComponent(value as string)}`).join('&');
};

export const ShareBar = ({ speaker, state, titles }: Props) => {
  const [said, setSaid] = useState('');
  const copy = async (end: string, done: string): Promise<void> => {
    try {
      await navigator.clipboard.writeText(`${location.origin}${location.pathname}?${state.query()}${end}`);
      setSaid(done);
    } catch {
      history.replaceState(history.state, '', `?${state.query()}${end}`);
      setSaid(frame.copyFailed);
    }
  };
  const ways = Object.entries(speaker.words.carries).filter(([id]) => id in titles);
  return (
    <section class="needs-script no-print">
      <h2>{frame.share}</h2>
      <p class="actions">
        <button type="button" onClick={() => void copy('', frame.copied)}>{frame.copy}</button>
        <button type="button" onClick={() => void copy(predictMark, frame.copiedLearner)}>{frame.copyLearner}</button>
        <button type="button" onClick={() => print()}>{frame.print}</button>
      </p>
      <p role="status">{said || null}</p>
      {state.outcome.kind === 'answer' && ways.length > 0 && (
        <>
          <h2>{frame.carry}</h2>
          <ul class="ways-on">
            {ways.map(([id, fill]) => (
              <li key={id}><a href={`${speaker.base}calculators/${id}/?${carried(state, fill)}`}><strong>{frame.carryTo.replace('{title}', titles[id] ?? id)}</strong></a></li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
};
