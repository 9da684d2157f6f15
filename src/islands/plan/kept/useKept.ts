/**
 * Keeps the plan of a page. The page holds the plan and changes it as it likes: each change is kept. What puts another
 * plan in its place goes through the desk (`start`, `open`, `look` for the invented one, `back`), which saves the one that
 * is open and calls `put`; done otherwise, it would be kept as a change of the one that is open.
 */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Plan } from '#core/plan/facts.ts';
import { planStore } from '#device/plans/store.ts';
import { openPlace } from '#device/plans/unsaved.ts';
import { useRested } from '../../kit/Kept.tsx';
import { type Desk, deskOf, emptyDesk } from './desk.ts';

type Options = { readonly plan: Plan; /** Lays another plan open on the page. */ readonly put: (plan: Plan) => void; readonly rename: (name: string) => void; /** A new one, with nothing in it. */ readonly blank: () => Plan };
export type Kept = ReturnType<typeof useKept>;

/** `desk` is null until what is kept has been read; what is typed meanwhile stays. */
export const useKept = ({ plan, put, rename, blank }: Options) => {
  const [state, setState] = useState(emptyDesk);
  const [desk, setDesk] = useState<Desk | null>(null);
  const now = useRef(plan);
  now.current = plan;
  const waiting = useRef<((desk: Desk) => void)[]>([]);
  // Whoever asks may have been waiting since before it was there.
  const there = useRef<Desk | null>(null);

  useEffect(() => {
    const stops: (() => void)[] = [];
    let gone = false;
    const begin = async (): Promise<void> => {
      const store = planStore();
      const made = deskOf({
        store, place: await openPlace(), now: () => now.current, rename, blank, hear: setState,
        put: (next) => {
          now.current = next;
          put(next);
        },
      });
      const onHash = (): void => void made.openLink(location.hash);
      addEventListener('hashchange', onHash);
      stops.push(store.onOthers(() => void made.others()), () => void made.stop().then(store.close), () => removeEventListener('hashchange', onHash));
      if (gone) return stops.forEach((stop) => stop());
      await made.begin(location.hash);
      setDesk(made);
      there.current = made;
      waiting.current.splice(0).forEach((act) => act(made));
    };
    void begin();
    return () => {
      gone = true;
      stops.forEach((stop) => stop());
    };
  }, []);

  useRested(() => there.current?.tell(now.current), [plan, desk]);

  // A link is done with once its plan is the reader's own: a reload must not bring back what it was.
  useEffect(() => {
    if (state.openId !== null && location.hash.startsWith('#plan=')) history.replaceState(history.state, '', location.pathname + location.search);
  }, [state.openId]);

  return {
    desk,
    state,
    plan,
    /** The plan as it is at this moment, also where what is drawn waits for the hand to rest. */
    now: (): Plan => now.current,
    /** Does it as soon as what is kept has been read. */
    withDesk: (act: (desk: Desk) => void): void => void (there.current ? act(there.current) : waiting.current.push(act)),
  };
};

/** Asks the browser not to clear the plans away when the device runs full; it may say no, or ask the reader. */
export const askToStay = (): void => void navigator.storage?.persist?.().catch(() => false);
