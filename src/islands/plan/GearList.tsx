/** The gear the reader keeps: kept under a name as it stands, filled in from there in any plan, taken off the list; each with its way back. */
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { gear as words } from '#content/interface.json';
import { fill } from '#components/fill.ts';
import { showValue } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import type { Fact } from '#core/plan/facts.ts';
import { sharedFacts } from '#core/plan/names.ts';
import { dropGear, type Gear, gear, type GearPart, gearParts, keepGear, longestGearName, mostGear } from '#device/gear.ts';
import { Kept } from '../kit/Kept.tsx';
import type { PlanState } from './usePlan.ts';

type Facts = Readonly<Record<GearPart, Fact>>;
/** `undo`: the way back. `while`: it is so as long as the plan holds these figures. */
type Said = { readonly text: string; readonly undo?: () => void; readonly while?: Facts };

const each = <V,>(value: (part: GearPart) => V) => Object.fromEntries(gearParts.map((part) => [part, value(part)])) as Record<GearPart, V>;
const shown = ({ figures }: Gear, system: UnitSystem): string =>
  fill(words.figures, each((part) => showValue({ unit: sharedFacts[part].unit, step: sharedFacts[part].step }, figures[part].value, system)));

/** The gear as the plan has it; null where a figure of it is missing or marked. */
const asItStands = (facts: Facts, marked: boolean): Gear['figures'] | null => {
  if (marked || gearParts.some((part) => facts[part].value === null)) return null;
  return each((part) => ({ value: facts[part].value as number, got: facts[part].got }));
};

type Props = { facts: Facts; marked: boolean; system: UnitSystem; setFact: PlanState['setFact'] };

const List = ({ facts, marked, system, setFact }: Props) => {
  const [all, setAll] = useState<readonly Gear[]>([]);
  const [name, setName] = useState('');
  const [nameless, setNameless] = useState(false);
  const [said, setSaid] = useState<Said | null>(null);
  const [title, undo, saying] = [useRef<HTMLElement | null>(null), useRef<HTMLButtonElement | null>(null), useRef<HTMLDivElement | null>(null)];
  useEffect(() => setAll(gear()), []);
  // The list may be long: what is said stands above it. A button that goes takes the keyboard's place with it.
  useLayoutEffect(() => {
    if (!said) return;
    saying.current?.scrollIntoView({ block: 'nearest' });
    if (document.activeElement === document.body) (undo.current ?? title.current)?.focus({ preventScroll: true });
  }, [said]);

  const tell = (now: Said): void => {
    setSaid(now);
    setAll(gear());
  };
  const put = (next: Facts): void => gearParts.forEach((part) => setFact(part, next[part]));
  const saidOf = (went: 'full' | 'refused'): string => fill(words[went], { most: mostGear });
  const putBack = (one: Gear): void => {
    const went = keepGear(one);
    tell({ text: went === 'kept' ? words.putBack : saidOf(went) });
  };

  const keep = (): void => {
    const called = name.trim();
    setNameless(called === '');
    if (called === '') return;
    const figures = asItStands(facts, marked);
    if (!figures) return tell({ text: words.figuresFirst });
    const before = gear().find((one) => one.name === called);
    const went = keepGear({ name: called, figures });
    if (went !== 'kept') return tell({ text: saidOf(went) });
    setName('');
    tell(before ? { text: fill(words.replaced, { name: called }), undo: () => putBack(before) } : { text: fill(words.kept, { name: called }) });
  };
  const use = (one: Gear): void => {
    const [before, next] = [facts, each((part) => ({ ...one.figures[part] }))];
    put(next);
    tell({
      text: fill(words.used, { name: one.name }), while: next,
      undo: () => {
        put(before);
        tell({ text: words.putBack });
      },
    });
  };
  const remove = (one: Gear): void =>
    tell(dropGear(one.name) ? { text: fill(words.removed, { name: one.name }), undo: () => putBack(one) } : { text: words.refused });

  const stands = said?.while;
  const now = !stands || gearParts.every((part) => facts[part] === stands[part]) ? said : null;
  return (
    <details class="gear-list needs-script">
      <summary ref={title}>{words.title}</summary>
      <p class="hint">{words.hint}</p>
      <div class={nameless ? 'field wrong' : 'field'}>
        <label for="gear-name">{words.name}</label>
        <div class="field-row">
          <span class="field-input wide">
            <input
              id="gear-name" type="text" autocomplete="off" maxLength={longestGearName} value={name} aria-invalid={nameless ? true : undefined} aria-describedby="gear-name-error"
              onInput={(e) => {
                setName(e.currentTarget.value);
                setNameless(false);
              }}
              onKeyDown={(e) => e.key === 'Enter' && keep()}
            />
          </span>
          <button type="button" onClick={keep}>{words.keep}</button>
        </div>
        <div id="gear-name-error" aria-live="polite">{nameless && <p class="field-error">{words.nameFirst}</p>}</div>
      </div>
      <div ref={saying} class="gear-said" role="status">
        {now && <p><span>{now.text}</span>{now.undo && <button type="button" ref={undo} onClick={now.undo}>{words.undo}</button>}</p>}
      </div>
      {all.length === 0 ? <p class="soft">{words.none}</p> : (
        <ul class="kept-gear">
          {all.map((one) => (
            <li key={one.name}>
              <p><strong><bdi>{one.name}</bdi></strong><span class="soft">{shown(one, system)}</span></p>
              <p class="actions">
                <button type="button" aria-label={`${words.use}: ${one.name}`} onClick={() => use(one)}>{words.use}</button>
                <button type="button" aria-label={`${words.remove}: ${one.name}`} onClick={() => remove(one)}>{words.remove}</button>
              </p>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
};

export const GearList = ({ state: { plan, problems, system, setFact } }: { state: PlanState }) => {
  const facts = each((part): Fact => plan.facts[part]);
  const marked = problems.some(({ at }) => gearParts.some((part) => at === `facts.${part}`));
  return <Kept on={[...gearParts.map((part) => facts[part]), marked, system]}>{() => <List facts={facts} marked={marked} system={system} setFact={setFact} />}</Kept>;
};
