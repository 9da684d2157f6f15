/** What the plan is handed by its page: its own words, those of the calculators it puts together, and where the handbook lies. */
import { parts, type Part } from '#core/plan/feed.ts';
import { nameHere } from '#core/plan/findings.ts';
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

