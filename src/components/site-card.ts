/** The page to open when it goes wrong: what the reader entered stands large, with numbers to dial; the form keeps it. */
import { urgent as words } from '#content/interface.json';
import { dialled, keepSite, type Site, site, siteFields } from '#device/site.ts';

const find = <E extends HTMLElement>(selector: string): E => document.querySelector<E>(selector) as E;
const form = find<HTMLFormElement>('[data-site-form]');
const state = find('[data-site-state]');
const field = (name: string): HTMLInputElement => form.elements.namedItem(name) as HTMLInputElement;

const show = (now: Site): void => {
  for (const name of siteFields) {
    const place = find(`[data-site="${name}"]`);
    const value = place.querySelector('dd') as HTMLElement;
    const number = name === 'emergency' || name === 'operator' ? dialled(now[name]) : null;
    place.hidden = now[name] === '';
    if (number === null) value.textContent = now[name];
    else {
      const link = document.createElement('a');
      link.href = `tel:${number}`;
      link.textContent = now[name];
      value.replaceChildren(link);
    }
  }
  find('[data-site-none]').hidden = siteFields.some((name) => now[name] !== '');
};

const entered = (): Site => Object.fromEntries(siteFields.map((name) => [name, field(name).value.trim()])) as Site;
const keep = (): void => {
  const now = entered();
  state.textContent = keepSite(now) ? words.kept : words.refused;
  show(now);
};

form.addEventListener('input', keep);
form.addEventListener('submit', (event) => event.preventDefault());
find('[data-site-print]').addEventListener('click', () => print());
find('[data-site-forget]').addEventListener('click', () => {
  for (const name of siteFields) field(name).value = '';
  keep();
});
const locate = find<HTMLButtonElement>('[data-site-locate]');
locate.hidden = !('geolocation' in navigator);
locate.addEventListener('click', () => {
  state.textContent = words.locating;
  navigator.geolocation.getCurrentPosition(
    ({ coords }) => {
      const off = words.positionOff.replace('{metres}', `${Math.ceil(coords.accuracy)}\u00a0m`);
      field('position').value = `${coords.latitude.toFixed(5)}, ${coords.longitude.toFixed(5)} (${off})`;
      keep();
    },
    () => (state.textContent = words.noPosition),
    { enableHighAccuracy: true, timeout: 20_000, maximumAge: 30_000 },
  );
});

const now = site();
for (const name of siteFields) field(name).value = now[name];
show(now);
