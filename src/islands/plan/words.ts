/** What the plan is handed by its page: its own words, those of the calculators it puts together, and where the handbook lies. */
import { parts, type Part } from '#core/plan/feed.ts';
import { nameHere, type PlanFinding } from '#core/plan/findings.ts';
import type { Gate } from '#core/plan/names.ts';
import { bearingSlack } from '#core/plan/turn.ts';
import type { WayName } from '#core/plan/ways.ts';
import { showValue } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import type words from '#content/plan/words.json';
import type { Speaker } from '../kit/Say.tsx';
import type { IslandWords } from '../kit/words.ts';

export type PlanWords = typeof words;
export type PlanProps = {
  words: PlanWords;
  /** The words that findings and outputs of each calculator need. */
  parts: { readonly [P in Part]: { readonly id: string; readonly title: string; readonly words: IslandWords } };
  /** Names of the options, by choice. */
  choices: { readonly [choice: string]: { readonly [option: string]: string } };
  /** Titles of chapters to read on, by name. */
  chapters: { readonly [slug: string]: string };
  base: string;
};

export const speakerOf = (props: PlanProps, part: Part): Speaker => ({ calculator: parts[part], words: props.parts[part].words, base: props.base });

/** What a fact, choice, bearing or gate is called. */
export const calledHere = ({ words }: PlanProps, name: string): string => {
  const here = nameHere(name);
  const facts: { readonly [name: string]: { label: string } } = words.facts;
  const others: { readonly [name: string]: unknown } = { ...words.choices, ...words.bearings, ...words.site };
  return facts[here]?.label ?? (typeof others[here] === 'string' ? (others[here] as string) : here);
};

/** Bearings as hours of a clock, where they are that; else in degrees. */
export const clockText = ({ words }: PlanProps, bearing: number): string => {
  const hours = ((bearing % 360) / 30) || 12;
  const [whole, rest] = [Math.floor(hours) || 12, hours % 1];
  if (rest === 0) return words.bearings.clock.replace('{hour}', String(whole));
  return rest === 0.5 ? words.bearings.clock.replace('{hour}', `${whole}½`) : words.bearings.degrees.replace('{degrees}', `${Math.round(bearing)}°`);
};

export const fillIn = (text: string, values: { readonly [name: string]: string | number }): string =>
  text.replace(/\{(\w+)\}/g, (all, name: string) => String(values[name] ?? all));

/** A bearing's tolerance, said. */
export const slackText = ({ words }: PlanProps): string => fillIn(words.bearings.slack, { slack: showValue({ unit: 'deg' }, bearingSlack, 'metric') });

/** What the plan itself says, not a calculator. */
export const ownText = (props: PlanProps, { id, values }: Pick<PlanFinding, 'id' | 'values'>, system: UnitSystem): string => {
  const { said, gate: { questions }, bearings } = props.words;
  const { count, gate, towards, way, take } = values;
  const question = gate === undefined ? null : questions[gate as Gate];
  return fillIn((said as { readonly [id: string]: string })[id] ?? id, {
    count: String(count),
    question: question ? (id === 'gateNo' ? question.instead : question.ask) : '',
    towards: typeof towards === 'number' ? showValue({ unit: 'm' }, towards, system, 'up') : '',
    way: way === undefined ? '' : bearings[way as WayName],
    instead: typeof take === 'number' ? fillIn(said.wayTake, { clock: clockText(props, take) }) : said.wayNone,
  });
};
