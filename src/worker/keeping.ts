/** What moves on `/offline/`: what the device holds, and the buttons that change it. */
import { offline } from '#content/interface.json';
import { fill } from '#components/fill.ts';
import { ask, container, onProgress, onRegistered, onWaiting, register, registration, take } from './device.ts';
import type { Holds, Progress } from './messages.ts';

const find = <E extends HTMLElement>(selector: string) => document.querySelector<E>(selector) as E;
const button = (act: string) => find<HTMLButtonElement>(`[data-act="${act}"]`);
const state = find('.keeping-state');
const progress = find<HTMLProgressElement>('.keeping-progress');
const table = find<HTMLTableElement>('.keeping-folders');

/** @param name for tests and styles: looking, all, part, none, filling, broken, unable */
const say = (name: string, text: string) => {
  state.dataset['state'] = name;
  state.textContent = text;
  progress.hidden = name !== 'filling';
};

const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`;

const showFolders = (folders: Holds['folders']) => {
  const { rest, ...named } = offline.folders;
  const rows = new Map(Object.entries(named).map(([folder, label]) => [folder, { label, held: 0, of: 0 }]));
  const others = { label: rest, held: 0, of: 0 };
  for (const [folder, [held, of]] of Object.entries(folders)) {
    const row = rows.get(folder) ?? others;
    row.held += held;
    row.of += of;
  }
  table.tBodies[0]?.replaceChildren(
    ...[...rows.values(), others]
      .filter(({ of }) => of > 0)
      .map(({ label, held, of }) => {
        const row = document.createElement('tr');
        row.append(document.createElement('th'), document.createElement('td'));
        (row.cells[0] as HTMLTableCellElement).scope = 'row';
        (row.cells[0] as HTMLTableCellElement).textContent = label;
        (row.cells[1] as HTMLTableCellElement).textContent = fill(offline.of, { held, of });
        return row;
      }),
  );
  table.hidden = false;
};

const show = (holds: Holds) => {
  const { held, of } = holds.files;
  find('[data-edition="here"]').textContent = holds.edition;
  showFolders(holds.folders);
  button('keep').hidden = true;
  button('mend').hidden = held === of;
  say(held === of ? 'all' : 'part', fill(held === of ? offline.all : offline.part, { held, of, size: megabytes(holds.bytes) }));
};

const showProgress = ({ done, total }: Progress) => {
  progress.max = total;
  progress.value = done;
  say('filling', fill(offline.filling, { done, total }));
};

const look = async (how: 'look' | 'mend' = 'look') => {
  const found = await registration();
  if (found?.active) return show(await ask(found.active, how, showProgress));
  if (found?.installing) return;
  button('keep').hidden = false;
  say('none', offline.none);
};

/** Word of progress may come in after word of the end. */
let fetching = false;

/** Watches a worker being installed, until it is or has failed. */
const watch = (installing: ServiceWorker | null) => {
  if (!installing) return;
  let whole = false;
  fetching = true;
  installing.addEventListener('statechange', () => {
    fetching = false;
    if (installing.state === 'installed') whole = true;
    if (installing.state === 'installed' || installing.state === 'activated') void look();
    if (installing.state === 'redundant' && !whole) {
      say('broken', offline.broken);
      void registration().then((found) => (button('keep').hidden = Boolean(found?.active)));
    }
  });
};

const follow = (found: ServiceWorkerRegistration) => {
  watch(found.installing);
  found.addEventListener('updatefound', () => watch(found.installing));
  onWaiting(found, (waiting) => {
    void ask(waiting, 'look').then(({ edition }) => (find('[data-edition="new"]').textContent = edition));
    button('take').hidden = find('#take-hint').hidden = false;
    button('take').addEventListener('click', () => take(waiting), { once: true });
  });
};

const keep = async () => {
  button('keep').hidden = true;
  // Asks the browser not to clear the handbook away when the device runs full; it may say no.
  await navigator.storage?.persist?.().catch(() => false);
  try {
    await register();
  } catch {
    say('none', offline.refused);
  }
};

const begin = async () => {
  if (!container) return say('unable', window.isSecureContext ? offline.refused : offline.needsHttps);
  onProgress((now) => {
    if (fetching) showProgress(now);
  });
  button('keep').addEventListener('click', () => void keep());
  button('mend').addEventListener('click', () => void look('mend'));
  // The frame registers by itself when the page is idle, unless the reader saves data.
  onRegistered((found) => {
    follow(found);
    void look();
  });
  await look();
};
void begin();
