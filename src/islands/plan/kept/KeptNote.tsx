/** Above the plan that is open: whether it is kept, where it came from, what another tab did. */
import { useEffect, useRef } from 'preact/hooks';
import { plans as words } from '#content/interface.json';
import type { Said as What } from './desk.ts';
import { nameOf } from './entries.ts';
import { Said } from './Said.tsx';
import { askToStay, type Kept } from './useKept.ts';

/** What is said of the open plan; the rest is said at the list. */
const ofPlan: readonly What['id'][] = ['opened', 'duplicated', 'started', 'broughtBack', 'clash', 'tookOther', 'recovered', 'fromLink', 'badLink'];
/** The reader has asked for it from the list, which stands below: the page goes up to it. */
const asked: readonly What['id'][] = ['opened', 'duplicated', 'started', 'broughtBack'];

/** Where the list stands, far down the page. */
export const listId = 'your-plans';

export const isOfPlan = (said: What): boolean => ofPlan.includes(said.id);

export const KeptNote = ({ kept: { desk, plan, state: { said, standing, entries } } }: { kept: Kept }) => {
  const note = useRef<HTMLElement | null>(null);
  useEffect(() => {
    if (said && asked.includes(said.id)) note.current?.scrollIntoView({ block: 'center' });
  }, [said]);
  const inTrouble = standing === 'refused' || standing === 'full';
  return (
    <aside ref={note} class="kept-note needs-script no-print" aria-label={words.keeping}>
      <div role="status">{said && desk && isOfPlan(said) ? <Said said={said} called={(name) => name} desk={desk} /> : null}</div>
      <p class={inTrouble ? 'kept-standing field-error' : 'kept-standing soft'} data-standing={standing}>{desk ? <><strong><bdi>{nameOf(plan)}</bdi></strong><span role="status">{words.standing[standing]}</span></> : null}</p>
      {entries.length > 0 && <p><a href={`#${listId}`}>{`${words.title}: ${entries.filter(({ deleted }) => deleted === null).length}`}</a></p>}
      {desk && standing === 'none' && said && ['fromLink', 'opened'].includes(said.id) && <button type="button" onClick={() => (askToStay(), desk.keep())}>{words.keep}</button>}
    </aside>
  );
};
