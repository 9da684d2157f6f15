/** The search dialog: made and opened when asked for; nothing of it is loaded before. */
import { search as words } from '#content/interface.json';
import { own } from '#device/own-distance.ts';
import { settings } from '#device/settings.ts';
import { address } from '../address.ts';
import { fill } from '../fill.ts';
import styles from '#styles/search.css?url&no-inline';
import { make } from './make.ts';
import { fullText, load, type Hit } from './full-text.ts';
import { match, near, type Entry } from './match.ts';
import { quickAnswer } from './quick.ts';
import { grouped } from './results.ts';
import { answerView, groupsView, nothingView } from './views.ts';

const wait = 40;
let index: Entry[] = [];
let textIsHere = true;
let asked = 0;

const input = make('input', { type: 'search', id: 'search-input', autocomplete: 'off', spellcheck: 'false', enterkeyhint: 'go' });
const status = make('p', { class: 'search-status', role: 'status' });
const results = make('div', { class: 'search-results' });
const close = make('button', { type: 'button' }, words.close);
const dialog = make(
  'dialog',
  { id: 'search', 'aria-label': words.title },
  make('div', { class: 'search-top' }, make('label', { for: 'search-input' }, words.label), input, close),
  make('p', { class: 'search-hint' }, fill(words.hint, { example: words.example, volts: words.volts })),
  status,
  results,
);

/** Shows `views`; whoever stood on a result keeps standing on it, or is put back to the field where it is gone. */
const replace = (views: HTMLElement[]) => {
  const stood = document.activeElement?.closest<HTMLAnchorElement>('.search-results a')?.href;
  results.replaceChildren(...views);
  if (stood) (links().find(({ href }) => href === stood) ?? input).focus();
};

const draw = (query: string, hits: Hit[], finished: boolean) => {
  const { units, ruleSet } = settings();
  const entries = units === 'metric' ? index : index.map((entry) => ({ ...entry, s: entry.i ?? entry.s }));
  const found = match(query, entries);
  const groups = grouped(found, hits, query);
  const count = groups.reduce((sum, group) => sum + group.items.length, 0);
  const quick = quickAnswer(query, units, { ruleSet, ownDistance: own() });
  const views = [quick ? answerView(quick) : null, ...groupsView(groups)];
  if (finished && count === 0 && !quick) views.push(nothingView(query, near(query, entries)));
  replace(views.filter((view) => view !== null));
  if (finished) {
    status.textContent = [
      count === 1 ? words.foundOne : count > 0 ? fill(words.found, { count }) : '',
      textIsHere ? '' : words.titlesOnly,
    ].filter(Boolean).join(' ');
  }
};

const ask = async () => {
  const mine = ++asked;
  const query = input.value.trim();
  if (query === '') {
    results.replaceChildren();
    status.textContent = '';
    return;
  }
  draw(query, [], false);
  await new Promise((done) => setTimeout(done, wait));
  if (mine !== asked) return;
  let hits: Hit[] = [];
  try {
    hits = await fullText(query);
    textIsHere = true;
  } catch {
    textIsHere = false;
  }
  if (mine === asked) draw(query, hits, true);
};

const links = () => [...results.querySelectorAll('a')];

const step = (by: number) => {
  const stops = [input, ...links()];
  const at = stops.indexOf(document.activeElement as HTMLInputElement);
  stops[Math.min(Math.max(at + by, 0), stops.length - 1)]?.focus();
};

dialog.addEventListener('keydown', (event) => {
  if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
    event.preventDefault();
    step(event.key === 'ArrowDown' ? 1 : -1);
  } else if (event.key === 'Enter' && event.target === input && !event.isComposing) {
    event.preventDefault();
    links()[0]?.click();
  }
});
dialog.addEventListener('click', (event) => {
  const link = (event.target as Element).closest('a');
  if (event.target === dialog || event.target === close || link) dialog.close();
});
input.addEventListener('input', () => void ask());

const styled = new Promise<void>((done) => {
  const link = make('link', { rel: 'stylesheet', href: styles });
  for (const end of ['load', 'error']) link.addEventListener(end, () => done());
  document.head.append(link);
});
const listed = fetch(address('/search.json'))
  .then((answer) => (answer.ok ? answer.json() : Promise.reject(new Error(`${answer.status}`))))
  .then((found: Entry[]) => (index = found));

/** Opens the dialog with the reader's last question selected. */
export const open = async (): Promise<void> => {
  await styled;
  if (!dialog.isConnected) document.body.append(dialog);
  if (!dialog.open) dialog.showModal();
  input.focus();
  input.select();
  void load().catch(() => undefined);
  try {
    await listed;
    if (input.value) void ask();
  } catch {
    status.textContent = words.broken;
  }
};
