/** Plans out of the page and into it: a file written, a file read, a link copied. */
import type { Plan } from '#core/plan/facts.ts';
import { longestFile, writePlansFile } from '#core/plan/file.ts';
import { writePlanLink } from '#core/plan/link.ts';
import { saveFile } from '../../kit/save-file.ts';
import { fileName } from './entries.ts';

const asJson = (text: string): Blob => new Blob([text], { type: 'application/json' });

/** The reader's own day, as year-month-day. */
const today = (): string => {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, '0')).join('-');
};

/** Writes plans to a file of the device; its name. */
export const toFile = (plans: readonly Plan[]): string => {
  const name = fileName(plans, today());
  saveFile(asJson(writePlansFile(plans, document.querySelector('.edition-id')?.textContent ?? '')), name);
  return name;
};

/** What is kept and cannot be read, as it is. */
export const rawToFile = (raw: unknown): string => {
  const name = fileName([], today());
  saveFile(asJson(JSON.stringify(raw, null, 1)), name);
  return name;
};

/** The text of a file; null where the device does not give it. One too large to be plans is not read whole, and is refused for its size. */
export const textOf = async (file: File): Promise<string | null> => {
  try {
    return file.size > 4 * longestFile ? ' '.repeat(longestFile + 1) : await file.text();
  } catch {
    return null;
  }
};

export type LinkSaid = { readonly id: 'linkCopied' | 'linkShown' } | { readonly id: 'linkTooLong'; readonly length: number; readonly most: number };

/** Copies the plan's link; where the browser refuses, it stands in the address bar. */
export const copyLink = async (plan: Plan): Promise<LinkSaid> => {
  const link = writePlanLink(plan);
  if (link.kind === 'tooLong') return { id: 'linkTooLong', length: link.length, most: link.most };
  try {
    await navigator.clipboard.writeText(`${location.origin}${location.pathname}#${link.fragment}`);
    return { id: 'linkCopied' };
  } catch {
    history.replaceState(history.state, '', `${location.pathname}${location.search}#${link.fragment}`);
    return { id: 'linkShown' };
  }
};
