/** Parts of a page that are not drawn again with every move of the hand: a drag asks for sixty drawings a second. */
import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';

/** Drawn again only when something in `on` has changed; `on` is of one length for ever. */
export const Kept = ({ on, children }: { on: readonly unknown[]; children: () => ComponentChildren }) => <>{useMemo(children, on)}</>;

/** How long the hand must rest before what it does not look at follows, ms. */
const rest = 150;

/** Who waits for the hand to rest, and the one clock for all of them. */
const waiting = new Set<() => void>();
let clock: ReturnType<typeof setTimeout> | undefined;
const whenRested = (go: () => void): void => {
  waiting.add(go);
  clearTimeout(clock);
  clock = setTimeout(() => {
    const all = [...waiting];
    waiting.clear();
    for (const one of all) one();
  }, rest);
};

/** What is out of sight, or read only when the hand rests: drawn again when it does. */
export const Rested = ({ children }: { children: ComponentChildren }) => {
  const [shown, show] = useState(children);
  const latest = useRef(children);
  const follow = useRef(() => show(latest.current));
  useLayoutEffect(() => {
    latest.current = children;
    if (shown !== children) whenRested(follow.current);
  }, [children]);
  useEffect(() => () => void waiting.delete(follow.current), []);
  return <>{shown}</>;
};
