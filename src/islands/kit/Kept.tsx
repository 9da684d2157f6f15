/** Parts of a page that are not drawn again with every move of the hand: a drag asks for sixty drawings a second. */
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';

/** Drawn again only when something in `on` has changed; `on` is of one length for ever. */
export const Kept = ({ on, children }: { on: readonly unknown[]; children: () => ComponentChildren }) => <>{useMemo(children, on)}</>;

/** How long the hand must rest before what it does not look at follows, ms. */
const rest = 150;

/** What is out of sight, or read only when the hand rests: drawn again when it does. */
export const Rested = ({ children }: { children: ComponentChildren }) => {
  const shown = useRef(children);
  const [, again] = useState(0);
  useEffect(() => {
    if (shown.current === children) return;
    const later = setTimeout(() => {
      shown.current = children;
      again((n) => n + 1);
    }, rest);
    return () => clearTimeout(later);
  }, [children]);
  return <>{shown.current}</>;
};
