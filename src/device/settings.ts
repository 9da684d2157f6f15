/**
 * The reader's settings: units, light or dark, rule set. Kept on the device under one name, checked field by field when
 * read, so that one damaged field costs no other. The head script reads the same name before the page is painted.
 */
import type { UnitSystem } from '#core/kit/units.ts';
import { read, write } from './store.ts';

export type Theme = 'device' | 'light' | 'dark';
export type Settings = { readonly units: UnitSystem; readonly theme: Theme; readonly ruleSet: string | null };

export const settingsName = 'standing-clear.settings';
const version = 1;

const known = (kept: { readonly [key: string]: unknown }): Settings => ({
  units: kept['units'] === 'imperial' ? 'imperial' : 'metric',
  theme: kept['theme'] === 'light' || kept['theme'] === 'dark' ? kept['theme'] : 'device',
  ruleSet: typeof kept['ruleSet'] === 'string' && /^[a-z0-9-]{1,60}$/.test(kept['ruleSet']) ? kept['ruleSet'] : null,
});

let own: Settings | null = null;
let forPage: Partial<Settings> = {};
let refused = false;
const listeners = new Set<(now: Settings) => void>();

/** What holds on this page now: the reader's own settings, and over them what a link brought. */
export const settings = (): Settings => {
  own ??= known(read(settingsName));
  return { ...own, ...forPage };
};

/** What a link brought that differs from the reader's own; offer to keep it with `set(held())`. */
export const held = (): Partial<Settings> => {
  settings();
  const mine = own as Settings;
  return Object.fromEntries(Object.entries(forPage).filter(([key, value]) => mine[key as keyof Settings] !== value));
};

/** True once the browser has refused to keep a setting: it then holds for this page only. */
export const storageRefused = (): boolean => refused;

const tell = () => {
  const now = settings();
  if (typeof document !== 'undefined') {
    document.documentElement.dataset['units'] = now.units;
    document.documentElement.dataset['theme'] = now.theme;
  }
  for (const listener of [...listeners]) listener(now);
};

/** Keeps settings on the device; fields of other editions that stand beside them are left as they are. */
export const set = (some: Partial<Settings>): void => {
  settings();
  own = { ...(own as Settings), ...some };
  forPage = Object.fromEntries(Object.entries(forPage).filter(([key]) => !(key in some)));
  refused = !write(settingsName, { ...read(settingsName), ...own, v: version });
  tell();
};

/** Settings for this page alone, as a link asks; nothing is kept. */
export const hold = (some: Partial<Settings>): void => {
  forPage = { ...forPage, ...some };
  tell();
};

/** Calls `listener` after every change, also one made in another tab; returns how to stop. */
export const onChange = (listener: (now: Settings) => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

if (typeof addEventListener === 'function') {
  addEventListener('storage', (event) => {
    if (event.key !== settingsName && event.key !== null) return;
    own = null;
    tell();
  });
}
