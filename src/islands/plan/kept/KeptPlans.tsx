/** The plans of this device, below the plan that is open: what can be done with it, and the list. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { plans as words } from '#content/interface.json';
import { fill } from '#components/fill.ts';
import { isOfPlan, listId } from './KeptNote.tsx';
import { List } from './List.tsx';
import { type Called, Said } from './Said.tsx';
import { copyLink, type LinkSaid, textOf, toFile } from './take.ts';
import { askToStay, type Kept } from './useKept.ts';

const linkText = (said: LinkSaid): string => (said.id === 'linkTooLong' ? fill(words.linkTooLong, { length: said.length, most: said.most }) : words[said.id]);

export const KeptPlans = ({ kept: { desk, state, plan, now }, called }: { kept: Kept; called: Called }) => {
  // What is said here goes when the desk has something newer to say.
  const [own, setOwn] = useState({ text: '', after: state.said });
  const input = useRef<HTMLInputElement | null>(null);
  const saying = useRef<HTMLDivElement | null>(null);
  // The list may be long: what is said stands above it.
  useEffect(() => {
    if (own.text !== '' || (state.said && !isOfPlan(state.said))) saying.current?.scrollIntoView({ block: 'nearest' });
  }, [state.said, own]);
  if (!desk) return null;
  const say = (text: string): void => setOwn({ text, after: state.said });
  const onWritten = (file: string): void => say(fill(words.written, { file }));
  const read = async (file: File | undefined): Promise<void> => {
    const text = file ? await textOf(file) : null;
    if (text === null) say(words.cannotRead);
    else await desk.readFile(text);
    // The same file can be chosen again.
    if (input.current) input.current.value = '';
  };
  const here = () => state.entries.flatMap((entry) => (entry.plan && entry.deleted === null ? [entry.id === state.openId ? now() : entry.plan] : []));
  return (
    <section id={listId} class="kept-plans-part needs-script no-print">
      <h2>{words.title}</h2>
      <p class="hint">{words.hint}</p>
      <p class="actions">
        <button type="button" onClick={() => (askToStay(), void desk.start())}>{words.start}</button>
        <button type="button" onClick={() => void copyLink(now()).then((said) => say(linkText(said)))}>{words.copyLink}</button>
        <button type="button" onClick={() => onWritten(toFile([now()]))}>{words.toFile}</button>
        {here().length > 1 && <button type="button" onClick={() => onWritten(toFile(here()))}>{words.allToFile}</button>}
        <label class="button">
          <input ref={input} class="only-read" type="file" accept=".json,application/json" onChange={(e) => (askToStay(), void read(e.currentTarget.files?.[0]))} />
          <span>{words.fromFile}</span>
        </label>
      </p>
      <div ref={saying} class="kept-said" role="status">
        {own.text !== '' && own.after === state.said ? <p>{own.text}</p> : state.said && !isOfPlan(state.said) && <Said said={state.said} called={called} desk={desk} />}
      </div>
      <List desk={desk} state={state} open={plan} called={called} onWritten={onWritten} />
    </section>
  );
};
