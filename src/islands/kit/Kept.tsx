/** Parts of a page that are not drawn again with every move of the hand: a drag asks for sixty drawings a second. */
import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';

/** Drawn again only when something in `on` has changed; `on` is of one length for ever. */
export const Kept = ({ on, children }: { on: readonly unknown[]; children: () => ComponentChildren }) => <>{useMemo(children, on)}</>;

/** How long the hand must rest before what it does not look at follows, ms; one that turns round with a handle has not let go. */
const rest = 150;
const held = 800;

/** Who waits for the hand to rest, when one last asked, and the one clock for all of them. */
const waiting = new Set<() => void>();
let asked = 0;
let clock: ReturnType<typeof setTimeout> | undefined;
const look = (): void => {
  const left = asked + (document.querySelector('.mark-handle:active') ? held : rest) - performance.now();
  clock = left > 0 ? setTimeout(look, left) : undefined;
  if (clock) return;
  const all = [...waiting];
  waiting.clear();
  for (const one of all) one();
};
/**
 * Calls `go`, as it then is, when the hand has rested after something in `on` has changed; once, however often that was
 * meanwhile. A clock is not set anew at each move: that is dear.
 */
export const useRested = (go: () => void, on: readonly unknown[]): void => {
  const latest = useRef(go);
  latest.current = go;
  const [follow] = useState(() => () => latest.current());
  useLayoutEffect(() => {
    waiting.add(follow);
    asked = performance.now();
    clock ??= setTimeout(look, rest);
  }, on);
  useEffect(() => () => void waiting.delete(follow), []);
};

/** What is out of sight, or read only when the hand rests: drawn again when it does; at once where it is `now`. */
export const Rested = ({ children, now = false }: { children: ComponentChildren; now?: boolean }) => {
  const shown = useRef(children);
  const [, again] = useState(0);
  if (now) shown.current = children;
  useRested(() => {
    if (shown.current === children) return;
    shown.current = children;
    again((times) => times + 1);
  }, [children]);
  return <>{shown.current}</>;
};
