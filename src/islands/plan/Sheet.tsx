/** The sheet to brief from: one side of paper, black and white; what is read at the tree, large. */
import { useEffect, useState } from 'preact/hooks';
import { site, type Site } from '#device/site.ts';
import { planRows } from './figures.ts';
import { Both } from '../kit/Say.tsx';
import { Faces } from './Picture.tsx';
import { sheetOf } from './sheet.ts';
import type { PlanState } from './usePlan.ts';
import type { PlanProps } from './words.ts';

const none: Site = { where: '', gate: '', road: '', position: '', emergency: '', operator: '' };
/** What the page for when it goes wrong keeps for this site. */
export const useSite = (): Site => {
  const [now, setNow] = useState(none);
  useEffect(() => {
    const look = (): void => setNow(site());
    look();
    addEventListener('focus', look);
    addEventListener('beforeprint', look);
    return () => {
      removeEventListener('focus', look);
      removeEventListener('beforeprint', look);
    };
  }, []);
  return now;
};

export const Sheet = ({ props, state }: { props: PlanProps; state: PlanState }) => {
  const kept = useSite();
  const good = state.good;
  if (!good) return null;
  const { sheet } = props.words;
  const { plan, work } = good;
  const { limbs, tables, lines, stops, cautions, first, below } = sheetOf(props, plan, work, kept);
  return (
    <section class="plan-sheet" aria-labelledby="sheet-name">
      <header>
        <h3 id="sheet-name">{plan.name}</h3>
        {plan.demo && <p class="sheet-invented">{props.words.invented}</p>}
        {!state.current && <p class="sheet-stop">{props.words.waits}</p>}
        {first.map((text) => <p key={text} class="sheet-stop">{text}</p>)}
        {stops.length > 0 && <ul class="sheet-stop">{stops.map((text, i) => <li key={i}><Both {...text} /></li>)}</ul>}
        {cautions.length > 0 && <ul class="sheet-cautions">{cautions.map((text, i) => <li key={i}><Both {...text} /></li>)}</ul>}
      </header>
      <div class="sheet-top">
        <Faces face="plan" props={props} state={state} good={good} id="sheet-plan" box={{ width: 358, height: 290 }} paper />
        <dl class="sheet-lines">
          {planRows(props, work, plan.facts.movement.value).map(({ label, text }) => <div key={label}><dt>{label}</dt><dd class="large"><Both {...text} /></dd></div>)}
          {lines.map(({ label, text }) => <div key={label}><dt>{label}</dt><dd>{text === '' ? <span class="blank" /> : text}</dd></div>)}
        </dl>
      </div>
      <ol class="sheet-limbs">{limbs.map((text, i) => <li key={i}>{text}</li>)}</ol>
      {tables.map(({ heads, rows }, n) => (
        <table key={n} class={heads.length > 4 ? 'many' : undefined} tabIndex={0} aria-label={sheet.limb}>
          <thead><tr><th scope="col">{sheet.limb}</th>{heads.map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
          <tbody>
            {rows.map(({ label, cells }) => (
              <tr key={label}><th scope="row">{label}</th>{cells.map((cell, at) => <td key={at}>{cell ? <Both {...cell} /> : props.words.answer.none}</td>)}</tr>
            ))}
          </tbody>
        </table>
      ))}
      <p>{below}</p>
      <p><strong>{props.words.answer.real}</strong></p>
      <p class="sheet-sign">{sheet.sign}</p>
      <div class="sheet-names"><span /><span /><span /><span /></div>
      <p class="sheet-say">{sheet.statement}</p>
      {kept.emergency === '' && <p class="no-print"><a href={`${props.base}urgent/`}>{sheet.numbers}</a></p>}
    </section>
  );
};
