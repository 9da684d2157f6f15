/** The gear the reader keeps: kept under a name as it stands, filled in from there in any plan, taken off the list; each with its way back. */
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { gear as words } from '#content/interface.json';
import { fill } from '#components/fill.ts';
import { showValue } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import type { Fact } from '#core/plan/facts.ts';
import { sharedFacts } from '#core/plan/names.ts';
import { dropGear, type Gear, gear, type GearPart, gearParts, keepGear, longestGearName, mostGear, type SawPart, sawParts } from '#device/gear.ts';
import { Kept } from '../kit/Kept.tsx';
import type { PlanState } from './usePlan.ts';

type Part = GearPart | SawPart;
/** The gear in a plan: its figures, and what the saw is called. */
type Facts = Readonly<Record<Part, Fact>> & { readonly saw: string };
const parts: readonly Part[] = [...gearParts, ...sawParts];
/** `undo`: the way back. `while`: it is so as long as the plan holds these figures. */
type Said = { readonly text: string; readonly undo?: () => void; readonly while?: Facts };

const each = <V,>(value: (part: Part) => V) => Object.fromEntries(parts.map((part) => [part, value(part)])) as Record<Part, V>;
const shown = ({ saw, figures }: Gear, system: UnitSystem): string => {
  const text = (part: Part): string => {
    const figure = figures[part];
    return figure ? showValue({ unit: sharedFacts[part].unit, step: sharedFacts[part].step }, figure.value, system) : '';
  };
  return [
    fill(words.figures, each(text)), ...(saw ? [fill(words.saw, { saw })] : []),
    ...sawParts.flatMap((part) => (figures[part] ? [fill(words[part], { value: text(part) })] : [])),
  ].join(' ');
};

/** The gear as the plan has it; null where a figure of it is missing or marked. */
const asItStands = (facts: Facts, marked: boolean): Gear['figures'] | null => {
  if (marked || gearParts.some((part) => facts[part].value === null)) return null;
  return Object.fromEntries(parts.flatMap((part) => {
    const { value, got } = facts[part];
    return value === null ? [] : [[part, { value, got }]];
  })) as unknown as Gear['figures'];
};

type Props = { facts: Facts; marked: boolean; system: UnitSystem; setFact: PlanState['setFact']; callSaw: (name: string) => void };

const List = ({ facts, marked, system, setFact, callSaw }: Props) => {
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
  const put = (next: Facts): void => {
    parts.forEach((part) => setFact(part, next[part]));
    callSaw(next.saw);
  };
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
    const saw = facts.saw.trim();
    const went = keepGear({ name: called, ...(saw ? { saw } : {}), figures });
    if (went !== 'kept') return tell({ text: saidOf(went) });
    setName('');
    tell(before ? { text: fill(words.replaced, { name: called }), undo: () => putBack(before) } : { text: fill(words.kept, { name: called }) });
  };
  const use = (one: Gear): void => {
    // What this gear does not know of its saw is not known of it in the plan either.
    const [before, next] = [facts, { ...each((part): Fact => ({ ...(one.figures[part] ?? { value: null, got: 'judged' }) })), saw: one.saw ?? '' }];
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
  const now = !stands || (facts.saw === stands.saw && parts.every((part) => facts[part] === stands[part])) ? said : null;
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

export const GearList = ({ state: { plan, problems, system, setFact, change } }: { state: PlanState }) => {
  const { site } = plan;
  const facts = { ...each((part): Fact => plan.facts[part]), saw: site.saw };
  const marked = problems.some(({ at, problem }) => parts.some((part) => at === `facts.${part}` && !((sawParts as readonly Part[]).includes(part) && problem === 'missing')));
  return (
    <Kept on={[...parts.map((part) => facts[part]), site, marked, system]}>
      {() => <List facts={facts} marked={marked} system={system} setFact={setFact} callSaw={(saw) => change({ site: { ...site, saw } })} />}
    </Kept>
  );
};
