/** What goes on the card: its blocks, its shape, and the figures that the blocks are worked from. */
import words from '#content/cards/card.json';
import { type BlockId, blockIds, callNames, inputsFor, isCall, shapeInputs } from '#core/card/fields.ts';
import { dialled, site } from '#device/site.ts';
import { Field } from '../kit/Field.tsx';
import type { Speaker } from '../kit/Say.tsx';
import type { CardPageState } from './useCard.ts';

type Props = { state: CardPageState; speaker: Speaker };

/** The number kept for this site, in a form that a card takes. */
const fromSite = (kept: string): string => (isCall(kept) ? kept : (dialled(kept) ?? ''));

const Call = ({ state, name }: { state: CardPageState; name: (typeof callNames)[number] }) => {
  const problem = state.problems.find(({ input }) => input === name);
  const { label } = words.calls[name];
  const hint = name === 'emergency' ? words.calls.emergency.hint : null;
  return (
    <div class={problem ? 'field wrong' : 'field'}>
      <label for={`in-${name}`}>{label}</label>
      {hint && <p class="hint" id={`hint-${name}`}>{hint}</p>}
      <span class="field-input">
        <input id={`in-${name}`} type="tel" autocomplete="off" maxLength={24} value={state.calls[name]} aria-invalid={problem ? true : undefined} aria-describedby={`${hint ? `hint-${name} ` : ''}error-${name}`} onInput={(e) => state.setCall(name, e.currentTarget.value)} />
      </span>
      <div id={`error-${name}`} aria-live="polite">{problem && <p class="field-error">{words.problems.notCall.replace('{label}', label)}</p>}</div>
    </div>
  );
};

const Block = ({ state, id }: { state: CardPageState; id: BlockId }) => (
  <label class="card-block">
    <input type="checkbox" name="block" value={id} checked={state.blocks.includes(id)} onChange={(e) => state.setBlock(id, e.currentTarget.checked)} />
    <span>{words.blocks[id].name}</span>
  </label>
);

export const Choose = ({ state, speaker }: Props) => {
  const used = inputsFor(state.blocks);
  const figures = used.filter((name) => !(shapeInputs as readonly string[]).includes(name));
  const kept = state.isRead ? site() : null;
  const offers = kept !== null && callNames.some((name) => fromSite(kept[name]) !== '' && fromSite(kept[name]) !== state.calls[name]);
  return (
    <form onSubmit={(e) => e.preventDefault()} autocomplete="off">
      <h2 id="card-choose">{words.choose}</h2>
      <div class="card-blocks" role="group" aria-labelledby="card-choose">{blockIds.map((id) => <Block key={id} state={state} id={id} />)}</div>
      <h2>{words.shape}</h2>
      <div class="card-fields">{shapeInputs.map((name) => <Field key={name} speaker={speaker} state={state} name={name} />)}</div>
      <h2>{words.figures}</h2>
      <div class="card-fields">{figures.map((name) => <Field key={name} speaker={speaker} state={state} name={name} />)}</div>
      {state.blocks.includes('touch') && (
        <>
          <div class="card-fields">{callNames.map((name) => <Call key={name} state={state} name={name} />)}</div>
          {offers && <p><button type="button" onClick={() => callNames.forEach((name) => { const number = fromSite(kept[name]); if (number) state.setCall(name, number); })}>{words.fromSite}</button></p>}
        </>
      )}
    </form>
  );
};
