/**
 * The state of one calculator on its page: fields, outcome, the last good answer, and the address that holds it all.
 * The first render is the example, as the server made it; the address, and what was typed before, are taken over in the
 * same breath, so that no key pressed in between can be lost.
 */
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { AnyCalculator, AnyInput, Got, InputProblem } from '#core/kit/calculator.ts';
import { readLink, writeLink } from '#core/kit/link.ts';
import { type Answer, evaluate, type Inputs, type Outcome } from '#core/kit/outcome.ts';
import { checkEach } from '#core/kit/problems.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { held, hold, onChange, set, settings } from '#device/settings.ts';
import { useRested } from './Kept.tsx';
import { typedIn, withTyped } from './typed.ts';
import { entered, exampleFields, type Fields, fieldsFrom, forLink, inSystem, withGirth, withText, withValue } from './fields.ts';

export type Good = { inputs: Inputs; outcome: Answer };
export type CalculatorState = ReturnType<typeof useCalculator>;

/** At the end of an address: the answer is held back until the learner asks for it. */
export const predictMark = '#predict';

const outcomeOf = (calculator: AnyCalculator, fields: Fields, general: readonly InputProblem[]): { inputs: Inputs; outcome: Outcome } => {
  const { inputs, got, problems } = entered(fields);
  // What cannot be read is said with what is out of its range: all that is to be mended, at once.
  const others = () => checkEach(calculator, inputs).filter(({ input }) => !problems.some((p) => p.input === input));
  const all = general.length + problems.length > 0 ? [...general, ...problems, ...others()] : [];
  return { inputs, outcome: all.length > 0 ? { kind: 'problems', problems: all } : evaluate(calculator, inputs, got) };
};

/** `markOf`: what else a link holds: the rule set the figures are by, with its edition. */
export const useCalculator = (calculator: AnyCalculator, markOf?: (inputs: Inputs) => string | undefined) => {
  const [system, setSystem] = useState<UnitSystem>('metric');
  const [fields, setFields] = useState<Fields>(() => exampleFields(calculator, 'metric'));
  const [isExample, setIsExample] = useState(true);
  const [general, setGeneral] = useState<readonly InputProblem[]>([]);
  const [touched, setTouched] = useState(false);
  const [linkUnits, setLinkUnits] = useState<UnitSystem | null>(null);
  // Read before the first render puts the example back into the fields.
  const [typed] = useState(() => typedIn(calculator));
  const [isRead, setIsRead] = useState(false);
  const [predicts, setPredicts] = useState(false);

  const { inputs, outcome } = useMemo(() => outcomeOf(calculator, fields, general), [calculator, fields, general]);
  const good = useRef<Good | null>(null);
  const byHandle = useRef(false);
  if (outcome.kind === 'answer') good.current = { inputs, outcome };

  // Before the browser can hear another key: an effect after the paint would put what was typed first over what came next.
  useLayoutEffect(() => {
    const link = readLink(calculator, location.search);
    if (link.extras.units) hold({ units: link.extras.units });
    if (link.extras.rules) hold({ ruleSet: link.extras.rules.split('.')[0] as string });
    setLinkUnits((held().units as UnitSystem | undefined) ?? null);
    const now = settings().units;
    setSystem(now);
    if (link.kind === 'given') {
      setFields(fieldsFrom(calculator, link.inputs, link.got, now, link.texts, link.problems));
      setGeneral(link.problems.filter((p) => !(p.input in calculator.inputs)));
      setIsExample(false);
    } else {
      const kept = withTyped(calculator, exampleFields(calculator, 'metric'), typed, 'metric');
      // In metric the text stays as it was typed: "4." may be half of "4.2".
      if (now !== 'metric') setFields(inSystem(calculator, kept ?? exampleFields(calculator, 'metric'), now));
      else if (kept) setFields(kept);
      if (kept) {
        setTouched(true);
        setIsExample(false);
      }
    }
    setPredicts(location.hash === predictMark);
    setIsRead(true);
    return onChange(({ units }) => {
      byHandle.current = false;
      setSystem(units);
      setFields((before) => inSystem(calculator, before, units));
      setLinkUnits((held().units as UnitSystem | undefined) ?? null);
    });
  }, [calculator, typed]);

  // What was held back is shown once the figures of the link stand in the page, not before.
  useEffect(() => {
    if (isRead) delete document.documentElement.dataset['linked'];
  }, [isRead]);

  /** Every figure as a link holds it. */
  const query = (): string => {
    const rules = markOf?.(inputs);
    return writeLink(calculator, forLink(fields), entered(fields).got, rules ? { rules } : {});
  };
  useRested(() => {
    if (touched) history.replaceState(history.state, '', `?${query()}${location.hash}`);
  }, [fields, touched]);

  const change = (next: (before: Fields) => Fields): void => {
    byHandle.current = false;
    setTouched(true);
    setIsExample(false);
    setFields(next);
  };
  const inputNamed = (name: string): AnyInput => calculator.inputs[name] as AnyInput;
  const one = (name: string, next: (field: Fields[string]) => Fields[string]): void =>
    change((before) => ({ ...before, [name]: next(before[name] as Fields[string]) }));

  return {
    calculator,
    system,
    fields,
    inputs,
    outcome,
    /** The last answer that could be given; null until there was one. */
    good: good.current,
    isExample,
    general,
    query,
    /** Whether the address and what was typed before have been taken over. */
    isRead,
    /** A learner's link: answer and working wait. */
    predicts,
    showAnswer: (): void => setPredicts(false),
    linkUnits,
    keepUnits: (): void => {
      const { units } = held();
      if (units) set({ units });
    },
    setText: (name: string, text: string): void => one(name, (f) => withText(inputNamed(name), f, text, system)),
    setGot: (name: string, got: Got): void => one(name, (f) => ({ ...f, got, example: false })),
    setGirth: (name: string, girth: boolean): void => one(name, (f) => withGirth(inputNamed(name), f, girth, system)),
    /** From a handle of the drawing. */
    setInputs: (some: { readonly [name: string]: number | string }): void => {
      change((before) => ({
        ...before,
        ...Object.fromEntries(Object.entries(some).map(([name, value]) => [name, withValue(inputNamed(name), before[name] as Fields[string], value, system)])),
      }));
      byHandle.current = true;
    },
    /** Whether it was a handle that changed the figures last: the hand looks at the drawing, not at the fields. */
    byHandle: byHandle.current,
    /** Fields in trouble take the example's figure; the rest stay. */
    fillFromExample: (): void => {
      setGeneral([]);
      const troubled = new Set(outcome.kind === 'problems' ? outcome.problems.map(({ input }) => input) : []);
      change((before) => {
        const example = exampleFields(calculator, system);
        return Object.fromEntries(Object.entries(before).map(([name, f]) => [name, troubled.has(name) ? (example[name] as Fields[string]) : f]));
      });
    },
  };
};
