/** The card as it is seen: each side at its true size, and the pages that will be printed, small on screen. */
import { useState } from 'preact/hooks';
import words from '#content/cards/card.json';
import type { Side } from '#core/card/layout.ts';
import type { Page } from '#core/card/sheets.ts';
import type { CardInputs } from '#core/card/fields.ts';
import { pageName } from '#core/card/shape.ts';
import { Svg } from './Svg.tsx';

export const sideName = (k: number): string => (k === 0 ? words.sides.front : words.sides.back);

export const Preview = ({ sides, quiet }: { sides: readonly Side[]; quiet: boolean }) => {
  const [fitted, setFitted] = useState(false);
  return (
    <>
      <fieldset class="got">
        <legend class="only-read">{words.size}</legend>
        {[false, true].map((fit) => (
          <label key={String(fit)}>
            <input type="radio" name="card-size" checked={fitted === fit} onChange={() => setFitted(fit)} />
            <span>{fit ? words.fitted : words.trueSize}</span>
          </label>
        ))}
      </fieldset>
      <div class={`card-sides${fitted ? ' fitted' : ''}${quiet ? ' quiet' : ''}`} tabIndex={0} role="group" aria-label={words.preview} data-pagefind-ignore="all">
        {sides.map((side, k) => <Svg key={k} page={side} label={sideName(k)} />)}
      </div>
      <p class="soft">{words.scale}</p>
    </>
  );
};

export const Sheets = ({ pages, shape }: { pages: readonly Page[]; shape: CardInputs }) => (
  <div class="card-pages">
    {pages.map((page, k) => (
      <div key={k} class="card-page" data-page={pageName(shape, page)}><Svg page={page} label={`${words.sheet}: ${sideName(k)}`} /></div>
    ))}
  </div>
);
