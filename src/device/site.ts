/** This site, as the reader enters it for an emergency: kept on the device alone. */
import { read, write } from './store.ts';

export const siteFields = ['where', 'gate', 'road', 'position', 'emergency', 'operator'] as const;
export type SiteField = (typeof siteFields)[number];
export type Site = Readonly<Record<SiteField, string>>;

export const siteName = 'standing-clear.site';
const version = 1;
const longest = 300;

const clean = (value: unknown): string => (typeof value === 'string' ? value.slice(0, longest) : '');

/** What is kept; an empty text for what is not, or is damaged. */
export const site = (): Site => {
  const kept = read(siteName);
  return Object.fromEntries(siteFields.map((field) => [field, clean(kept[field])])) as Site;
};

/** Keeps it. False where the browser refuses. */
export const keepSite = (now: Site): boolean => write(siteName, { ...now, v: version });

/** A number to dial out of what was typed: digits, with a plus before them; null where there are none. */
export const dialled = (text: string): string | null => {
  const digits = text.replace(/[^\d+]/g, '').replace(/(?!^)\+/g, '');
  return /\d{2,}/.test(digits) ? digits : null;
};
