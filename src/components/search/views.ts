/** What the dialog shows, as elements. */
import { places, search as words } from '#content/interface.json';
import { address } from '../address.ts';
import { fill } from '../fill.ts';
import { make } from './make.ts';
import type { Entry, Part } from './match.ts';
import type { Quick } from './quick.ts';
import type { Group } from './results.ts';

const markedText = (parts: readonly Part[]) => parts.map(({ text, hit }) => (hit ? make('mark', {}, text) : text));

export const groupsView = (groups: readonly Group[]): HTMLElement[] =>
  groups.map(({ kind, items }) =>
    make(
      'section',
      {},
      make('h2', {}, words.kinds[kind]),
      make(
        'ul',
        {},
        ...items.map((item) =>
          make(
            'li',
            {},
            make('a', { href: item.address }, make('strong', {}, ...markedText(item.title)), make('span', {}, ...markedText(item.more))),
          ),
        ),
      ),
    ),
  );

/** An answer worked out there and then, and the way to its working. */
export const answerView = ({ id, calculator, query, values }: Quick): HTMLElement => {
  const { say, more } = words.quick[id as keyof typeof words.quick];
  const to = address(`/calculators/${calculator}/`);
  return make(
    'section',
    { class: 'search-answer' },
    make('p', { class: 'search-answer-say' }, fill(say, values)),
    make('p', {}, fill(more, values)),
    make('a', { href: query ? `${to}?${query}` : to }, query ? words.open : words.kinds.calculator),
  );
};

/** Nothing found: what is nearest, and where to look through. */
export const nothingView = (query: string, nearest: readonly Entry[]): HTMLElement => {
  const link = (title: string, to: string) => make('li', {}, make('a', { href: to }, make('strong', {}, title)));
  return make(
    'section',
    { class: 'search-nothing' },
    make('p', {}, fill(words.none, { query })),
    ...(nearest.length > 0 ? [make('p', {}, words.near), make('ul', {}, ...nearest.map(({ t, a }) => link(t, a)))] : []),
    make('p', {}, words.noneHelp),
    make('ul', {}, link(places.chapters, address('/chapters/')), link(places.terms, address('/terms/'))),
  );
};
