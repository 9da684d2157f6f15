/**
 * The state of the card page: blocks, fields, numbers to call, and the address that holds them all. The first render is
 * the example, as the server made it; the address, or else the card kept on this device, is read after.
 */
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { checkInputs } from '#core/kit/problems.ts';
import type { AnyInput, InputProblem } from '#core/kit/calculator.ts';
import type { Inputs, Outcome } from '#core/kit/outcome.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { type BlockId, blockIds, callNames, type Calls, type CardChoices, cardFields, type CardInputs, exampleIn, inputsFor, isCall, noCalls, relateCard, usualBlocks } from '#core/card/fields.ts';
import { type CardState, readCard, writeCard } from '#core/card/link.ts';
import { mostOnId1 } from '#core/card/shape.ts';
import { keepCard, keptCard } from '#device/card.ts';
import { hold, onChange, settings } from '#device/settings.ts';
import { entered, type Fields, fieldsFrom, forLink, inSystem, withText } from '../kit/fields.ts';
import { typedIn } from '../kit/typed.ts';

const pause = 200;
const allInputs = cardFields.inputs as { readonly [name: string]: AnyInput };
/** The whole link, its shape and its blocks: no field of the page is theirs. */
const wholes = ['v', 'card', 'blocks'];

type From = 'example' | 'kept' | 'link';
type Held = { blocks: readonly BlockId[]; fields: Fields; calls: Calls; general: readonly InputProblem[]; from: From; ruleChanged: boolean };

const exampleHeld = (units: UnitSystem, ruleSet: string | null): Held => {
  const inputs = { ...exampleIn(units), ...(ruleSet === null ? {} : { ruleSet }) } as Inputs;
  return { blocks: usualBlocks, fields: fieldsFrom(cardFields, inputs, 'exact', units), calls: noCalls, general: [], from: 'example', ruleChanged: false };
};

const heldOf = (query: string, units: UnitSystem, from: From): Held | null => {
  const read = readCard(query);
  if (read.kind === 'none') return null;
  const { state, texts, problems, ruleChanged } = read;
  return {
    blocks: state.blocks, fields: fieldsFrom(cardFields, state.inputs, 'exact', units, texts, problems), calls: state.calls,
    general: problems.filter(({ input }) => wholes.includes(input)), from, ruleChanged,
  };
};

type Before = { texts: { readonly [name: string]: string }; blocks: readonly string[] | null; calls: Partial<Calls> };
/** What the reader did to the example's page before it came alive, or the browser brought back into it. */
const before = (): Before => {
  if (typeof document === 'undefined') return { texts: {}, blocks: null, calls: {} };
  const example = exampleHeld('metric', null);
  const typed = Object.entries(typedIn(cardFields)).map(([name, { text }]) => [name, text] as const);
  const calls = callNames.map((name) => [name, document.querySelector<HTMLInputElement>(`#in-${name}`)?.value ?? ''] as const);
  const blocks = [...document.querySelectorAll<HTMLInputElement>('input[name="block"]:checked')].map(({ value }) => value);
  return {
    texts: Object.fromEntries(typed.filter(([name, text]) => text !== example.fields[name]?.text)),
    blocks: blocks.join() === example.blocks.join() ? null : blocks,
    calls: Object.fromEntries(calls.filter(([, text]) => text !== '')),
  };
};
/** Null where nothing was done. The page showed metric fields until then; in metric the text stays as it was typed: "4." may be half of "4.2". */
const withBefore = (held: Held, { texts, blocks, calls }: Before, units: UnitSystem): Held | null => {
  if (Object.keys(texts).length + Object.keys(calls).length === 0 && blocks === null) return null;
  const read: Fields = Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, withText(allInputs[name] as AnyInput, held.fields[name] as Fields[string], text, 'metric')]));
  return {
    ...held, from: 'kept',
    fields: { ...held.fields, ...(units === 'metric' ? read : inSystem(cardFields, { ...held.fields, ...read }, units)) },
    blocks: blocks === null ? held.blocks : blockIds.filter((id) => blocks.includes(id)),
    calls: { ...held.calls, ...calls },
  };
};

const problemsIn = ({ blocks, fields, calls, general }: Held): InputProblem[] => {
  const used = new Set<string>(inputsFor(blocks));
  const { inputs, problems } = entered(fields);
  const unread = problems.filter(({ input }) => used.has(input));
  const read = Object.fromEntries(Object.entries(inputs).filter(([name]) => used.has(name)));
  const bounds = checkInputs(cardFields, read).filter(({ input }) => used.has(input) && !unread.some((p) => p.input === input));
  const related = unread.length + bounds.length > 0 ? [] : relateCard(blocks, read as Partial<CardInputs>);
  const wrongCalls = blocks.includes('touch') ? callNames.filter((name) => !isCall(calls[name])).map((input) => ({ input, problem: 'notCall', values: {} })) : [];
  const count = inputs['size'] === 'id1' ? blocks.length - mostOnId1 : 0;
  return [
    ...general, ...unread, ...bounds, ...related, ...wrongCalls,
    ...(blocks.length === 0 && !general.some(({ input }) => input === 'blocks') ? [{ input: 'blocks', problem: 'missing', values: {} }] : []),
    ...(count > 0 ? [{ input: 'blocks', problem: 'tooManyBlocks', values: { count } }] : []),
  ];
};

const choicesOf = ({ blocks, fields, calls }: Held): CardChoices => {
  const used = inputsFor(blocks);
  const { inputs } = entered(fields);
  return { blocks, calls, inputs: { ...exampleIn('metric'), ...(Object.fromEntries(used.map((name) => [name, inputs[name]])) as Partial<CardInputs>) } };
};

export const useCard = () => {
  const [system, setSystem] = useState<UnitSystem>('metric');
  const [now, setNow] = useState<Held>(() => exampleHeld('metric', null));
  const [touched, setTouched] = useState(false);
  const [isRead, setIsRead] = useState(false);
  const [isKept, setIsKept] = useState<boolean | null>(null);
  // Read before the first render puts the example back into the fields.
  const [typed] = useState(before);

  const problems = useMemo(() => problemsIn(now), [now]);
  const good = useRef<CardChoices | null>(null);
  const choices = useMemo(() => (problems.length === 0 ? choicesOf(now) : null), [now, problems]);
  if (choices) good.current = choices;

  // Before the browser can hear another key: see kit/useCalculator.ts.
  useLayoutEffect(() => {
    const link = readCard(location.search);
    if (link.kind === 'card') hold({ units: link.state.units });
    const { units, ruleSet } = settings();
    setSystem(units);
    const kept = keptCard();
    const own = location.search.replace(/^\?/, '') === kept;
    const linked = heldOf(location.search, units, own ? 'kept' : 'link');
    const mine = heldOf(kept ?? '', units, 'kept') ?? exampleHeld(units, ruleSet);
    const changed = linked ? null : withBefore(mine, typed, units);
    setNow(linked ?? changed ?? mine);
    if (changed) setTouched(true);
    setIsRead(true);
    return onChange((next) => {
      setSystem(next.units);
      setNow((before) => (before.from === 'example' ? exampleHeld(next.units, next.ruleSet) : { ...before, fields: inSystem(cardFields, before.fields, next.units) }));
    });
  }, [typed]);

  useEffect(() => {
    if (isRead) delete document.documentElement.dataset['linked'];
  }, [isRead]);

  const state: CardState = { blocks: now.blocks, inputs: forLink(now.fields), calls: now.calls, units: system };
  const query = writeCard(state);
  useEffect(() => {
    if (!touched) return;
    const later = setTimeout(() => {
      history.replaceState(history.state, '', `?${query}`);
      if (now.from === 'kept') setIsKept(keepCard(query));
    }, pause);
    return () => clearTimeout(later);
  }, [query, touched, now.from]);

  const change = (next: (before: Held) => Partial<Held>): void => {
    setTouched(true);
    // What the reader has changed is theirs, but a card that came by a link is kept only when they say so.
    setNow((before) => ({ ...before, from: before.from === 'example' ? 'kept' : before.from, ...next(before) }));
  };
  const outcome: Outcome = problems.length > 0 ? { kind: 'problems', problems: [...problems] } : { kind: 'answer', outputs: {}, outside: {}, findings: [], working: [] };

  return {
    ...now,
    system,
    problems,
    outcome,
    /** Null while something is in trouble; then the last card that could be made. */
    choices,
    good: good.current,
    query,
    isRead,
    isKept,
    setText: (name: string, text: string): void =>
      change((before) => ({ fields: { ...before.fields, [name]: withText(allInputs[name] as AnyInput, before.fields[name] as Fields[string], text, system) } })),
    setGot: (): void => undefined,
    setGirth: (): void => undefined,
    setCall: (name: (typeof callNames)[number], text: string): void => change((before) => ({ calls: { ...before.calls, [name]: text } })),
    setBlock: (id: BlockId, on: boolean): void =>
      change((before) => ({
        blocks: blockIds.filter((other) => (other === id ? on : before.blocks.includes(other))),
        general: before.general.filter(({ input }) => input !== 'blocks'),
      })),
    goOn: (): void => change(() => ({ general: [] })),
    keep: (): void => {
      const done = keepCard(query);
      setIsKept(done);
      if (done) setNow((before) => ({ ...before, from: 'kept' }));
    },
  };
};
export type CardPageState = ReturnType<typeof useCard>;
