/** Parts of a page that are not drawn again with every move of the hand: a drag asks for sixty drawings a second. */
import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';

/** Drawn again only when something in `on` has changed; `on` is of one length for ever. */
export const Kept = ({ on, children }: { on: readonly unknown[]; children: () => ComponentChildren }) => <>{useMemo(children, on)}</>;

/** How long the hand must rest before what it does not look at follows, ms; one that turns round with a handle has not let go. */
const rest = 150;
const held = 400;
/** @returns `usual`, or longer while a handle of a drawing is held */
export const restOf = (usual: number): number => (document.querySelector('.mark-handle:active') ? held : usual);

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
  }, restOf(rest));
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
