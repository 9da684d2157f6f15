/** What stays in view on a phone while facts change: the picture and the worst finding; the picture folds away for more room. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { PlanWords } from './words.ts';

export const Seen = ({ words, picture, children }: { words: PlanWords; picture: ComponentChildren; children: ComponentChildren }) => {
  const [folded, fold] = useState(false);
  return (
    <div class={folded ? 'seen folded' : 'seen'}>
      {picture && <button type="button" class="fold" aria-expanded={!folded} aria-label={words.faces.folding} onClick={() => fold(!folded)}>{folded ? words.faces.unfold : words.faces.fold}</button>}
      {picture}
      {children}
    </div>
  );
};
