/** Adds up what is ticked to one read: every chapter once, in the order of the page, with how many and how long. */
import { sequence } from './sequence.ts';

const form = document.querySelector<HTMLFormElement>('[data-routes]');
const status = form?.querySelector('[role="status"]');
const go = form?.querySelector<HTMLAnchorElement>('.routes-go');

const timeOf = (slug: string): number =>
  parseInt(document.querySelector(`[data-chapter="${slug}"] small`)?.textContent ?? '', 10) || 0;

const show = () => {
  if (!form || !status || !go) return;
  const ticked = [...form.querySelectorAll<HTMLInputElement>('input:checked')];
  const slugs = [...new Set(ticked.flatMap(({ value }) => value.split(',')))];
  go.hidden = slugs.length === 0;
  const { chosen = '', none = '', base = '' } = form.dataset;
  if (slugs.length === 0) status.textContent = none;
  else {
    const minutes = slugs.reduce((sum, slug) => sum + timeOf(slug), 0);
    status.textContent = chosen.replace('{chapters}', String(slugs.length)).replace('{minutes}', String(minutes));
    go.href = sequence(slugs).replace('/chapters/', base);
  }
};
form?.addEventListener('change', show);
// A browser may have kept the ticks of the last visit.
show();
