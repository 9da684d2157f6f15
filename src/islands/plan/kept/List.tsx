/** The plans that are kept: found by words, opened, renamed, copied, written to a file, deleted and brought back. */
import { useState } from 'preact/hooks';
import { plans as words } from '#content/interface.json';
import { fill } from '#components/fill.ts';
import type { Plan } from '#core/plan/facts.ts';
import { longestText } from '#core/plan/names.ts';
import { bringBackFor } from '#device/plans/store.ts';
import type { Desk, DeskState } from './desk.ts';
import { type Entry, found, nameOf } from './entries.ts';
import { type Called, problemText } from './Said.tsx';
import { rawToFile, toFile } from './take.ts';

/** `open`: the open plan as it is entered now. */
type Props = { readonly desk: Desk; readonly state: DeskState; readonly open: Plan; readonly called: Called; readonly onWritten: (file: string) => void };

const day = 24 * 60 * 60 * 1000;
const when = (ms: number): string => new Date(ms).toLocaleString('en-GB', { day: 'numeric', month: 'short', year: 'numeric', hour: '2-digit', minute: '2-digit' });

/** A button that says to which plan it belongs. */
const Act = ({ word, name, act }: { word: string; name: string; act: () => void }) => <button type="button" aria-label={`${word}: ${name}`} onClick={act}>{word}</button>;

const Rename = ({ entry, desk, done }: { entry: Entry; desk: Desk; done: () => void }) => {
  const [text, setText] = useState(entry.plan?.name ?? '');
  const keep = (event: Event): void => {
    event.preventDefault();
    if (text.trim() !== '') void desk.rename(entry.id, text.trim());
    done();
  };
  return (
    <form class="field-row" onSubmit={keep}>
      <label class="field-input wide"><span class="only-read">{`${words.newName}: ${entry.name}`}</span>
        <input type="text" autocomplete="off" maxLength={longestText} value={text} ref={(input) => input?.focus()} onInput={(e) => setText(e.currentTarget.value)} /></label>
      <button type="submit">{words.renamed}</button>
      <button type="button" onClick={done}>{words.leave}</button>
    </form>
  );
};

const Item = ({ entry, desk, isOpen, open, called, onWritten }: Omit<Props, 'state'> & { entry: Entry; isOpen: boolean }) => {
  const [renames, setRenames] = useState(false);
  const { id, name, plan, raw } = entry;
  return (
    <li aria-current={isOpen ? 'true' : undefined}>
      <p>
        <strong><bdi>{name}</bdi></strong>
        {plan?.demo && <span class="kept-tag">{words.demo}</span>}
        {isOpen && <span class="kept-tag">{words.isOpen}</span>}
        <span class="soft">{[plan?.site.address, fill(words.saved, { when: when(entry.saved) })].filter(Boolean).join(' · ')}</span>
        {!plan && <span class="field-error">{fill(words.cannotOpen, { why: entry.problems.slice(0, 3).map((problem) => problemText(problem, called)).join('; ') })}</span>}
      </p>
      {renames ? <Rename entry={entry} desk={desk} done={() => setRenames(false)} /> : (
        <p class="actions">
          {plan && !isOpen && <Act word={words.open} name={name} act={() => void desk.open(id)} />}
          {plan && <Act word={words.rename} name={name} act={() => setRenames(true)} />}
          {plan && <Act word={words.duplicate} name={name} act={() => void desk.duplicate(id)} />}
          <Act word={words.toFile} name={name} act={() => onWritten(plan ? toFile([isOpen ? open : plan]) : rawToFile(raw))} />
          <Act word={words.delete} name={name} act={() => void desk.remove(id)} />
        </p>
      )}
    </li>
  );
};

const Loose = ({ plan, desk }: { plan: Plan; desk: Desk }) => (
  <li>
    <p><strong><bdi>{nameOf(plan)}</bdi></strong><span class="kept-tag">{words.notKept}</span></p>
    <p class="actions"><Act word={words.open} name={nameOf(plan)} act={() => void desk.openLoose(plan)} /></p>
  </li>
);

const Deleted = ({ entries, desk }: { entries: readonly Entry[]; desk: Desk }) => {
  const [asks, setAsks] = useState<string | null>(null);
  const forget = (id: string): void => {
    if (asks === id) void desk.forget(id);
    setAsks(asks === id ? null : id);
  };
  return (
    <details class="kept-deleted">
      <summary>{`${words.deletedTitle}: ${entries.length}`}</summary>
      <p class="hint">{fill(words.deletedHint, { days: bringBackFor / day })}</p>
      <ul class="kept-plans">
        {entries.map(({ id, name }) => (
          <li key={id}>
            <p><strong><bdi>{name}</bdi></strong></p>
            <p class="actions">
              <Act word={words.undo} name={name} act={() => void desk.bringBack(id)} />
              <Act word={asks === id ? words.sure : words.forget} name={name} act={() => forget(id)} />
            </p>
          </li>
        ))}
      </ul>
    </details>
  );
};

export const List = ({ desk, state: { entries, openId, loose }, open, called, onWritten }: Props) => {
  const [text, setText] = useState('');
  const here = entries.filter(({ deleted }) => deleted === null);
  const gone = entries.filter(({ deleted }) => deleted !== null);
  const shown = found(here, text);
  return (
    <>
      {here.length > 1 && (
        <div class="field">
          <label for="kept-find">{words.find}</label>
          <p class="hint" id="kept-find-hint">{words.findHint}</p>
          <div class="field-row">
            <span class="field-input wide"><input id="kept-find" type="search" autocomplete="off" aria-describedby="kept-find-hint" value={text} onInput={(e) => setText(e.currentTarget.value)} /></span>
          </div>
        </div>
      )}
      <p role="status" class="soft">{here.length === 0 ? words.none : text === '' ? null : shown.length === 0 ? words.foundNone : fill(words.found, { n: shown.length, all: here.length })}</p>
      <ul class="kept-plans">
        {loose.map((plan, i) => <Loose key={i} plan={plan} desk={desk} />)}
        {shown.map((entry) => <Item key={entry.id} entry={entry} desk={desk} isOpen={entry.id === openId} open={open} called={called} onWritten={onWritten} />)}
      </ul>
      {gone.length > 0 && <Deleted entries={gone} desk={desk} />}
    </>
  );
};
