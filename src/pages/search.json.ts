/** The structured index of search: what can be found by title and other names. Loaded when search is opened. */
import { getCollection } from 'astro:content';
import card from '#content/cards/card.json';
import words from '#content/interface.json';
import plan from '#content/plan/words.json';
import routes from '#content/routes.json';
import { address } from '#components/address.ts';
import { chapters } from '#components/handbook.ts';
import { tablePages } from '#components/reckoner/pages.ts';
import type { Entry } from '#components/search/match.ts';
import { allTerms, meaningOf, termAddress } from '#components/terms.ts';
import { plainFacts } from '#components/words.ts';
import { calculators } from '#core/registry.ts';

/** A line in metric, and in imperial where that reads otherwise. */
const line = (text: string): Pick<Entry, 's' | 'i'> => {
  const [s, i] = [plainFacts(text), plainFacts(text, 'imperial')];
  return s === i ? { s } : { s, i };
};

const entries = async (): Promise<Entry[]> => {
  const pages = new Map((await getCollection('calculators')).map((entry) => [entry.id, entry.data]));
  return [
    ...calculators.flatMap(({ id }): Entry[] => {
      const page = pages.get(id);
      return page ? [{ k: 'calculator', t: page.title, a: address(`/calculators/${id}/`), o: page.also, ...line(page.question) }] : [];
    }),
    ...(await chapters()).map(({ id, data }): Entry => ({ k: 'chapter', t: data.title, a: address(`/chapters/${id}/`), o: data.also, ...line(data.summary) })),
    ...(await allTerms()).map((entry): Entry => ({
      k: 'term',
      t: entry.data.term,
      a: termAddress(entry),
      o: entry.data.also.map(({ name }) => name),
      ...line(meaningOf(entry)),
    })),
    ...[{ a: '/tables/approach-distances/', ...words.tables.approach }, { a: '/tables/qualified-workers/', ...words.tables.qualified }]
      .map(({ a, title, also, summary }): Entry => ({ k: 'table', t: title, a: address(a), o: also, ...line(summary) })),
    ...tablePages.map((page): Entry => ({ k: 'table', t: page.title, a: address(`/tables/${page.id}/`), o: page.also, ...line(page.summary) })),
    { k: 'page', t: plan.title, a: address('/plan/'), o: plan.also, s: plan.description },
    { k: 'page', t: words.urgent.title, a: address('/urgent/'), o: words.urgent.also, s: words.urgent.description },
    { k: 'page', t: card.title, a: address('/card/'), o: card.also, s: card.description },
    { k: 'page', t: routes.title, a: address('/routes/'), o: routes.also, s: routes.description },
    { k: 'page', t: words.book.title, a: address('/book/'), o: words.book.also, s: words.book.description },
    { k: 'page', t: words.places.sources, a: address('/sources/') },
    { k: 'page', t: words.places.offline, a: address('/offline/'), o: words.search.offlineAlso },
  ];
};

export const GET = async () => new Response(JSON.stringify(await entries()), { headers: { 'content-type': 'application/json' } });
