/** What the reader put into the fields before the island took over, or the browser brought back into them. */
import type { AnyCalculator, AnyInput, Got } from '#core/kit/calculator.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { asksGot, type Field, type Fields, withGirth, withText } from './fields.ts';

export type Typed = { readonly [name: string]: { text: string; got: Got | null; girth: boolean } };

const chosen = (group: string): string | null => document.querySelector<HTMLInputElement>(`input[name="${group}"]:checked`)?.value ?? null;

/** Reads the page's fields; call before they are rendered. Nothing on the server. */
export const typedIn = (calculator: AnyCalculator): Typed => {
  if (typeof document === 'undefined') return {};
  return Object.fromEntries(
    Object.entries(calculator.inputs as { [name: string]: AnyInput }).flatMap(([name, input]) => {
      const field = document.querySelector<HTMLInputElement | HTMLSelectElement>(`#in-${name}`);
      const text = field?.value ?? chosen(name);
      if (text === null) return [];
      return [[name, { text, got: asksGot(input) ? (chosen(`${name}-got`) as Got | null) : null, girth: chosen(`${name}-as`) === 'girth' }]];
    }),
  );
};

/** The fields with what was typed, or null where that is what they hold. */
export const withTyped = (calculator: AnyCalculator, fields: Fields, typed: Typed, system: UnitSystem): Fields | null => {
  let changed = false;
  const next = Object.fromEntries(
    Object.entries(fields).map(([name, field]): [string, Field] => {
      const found = typed[name];
      if (!found) return [name, field];
      const input = calculator.inputs[name] as AnyInput;
      let now = field;
      if (found.girth !== field.girth) now = withGirth(input, now, found.girth, system);
      if (found.text !== field.text) now = withText(input, now, found.text, system);
      if (found.got !== null && found.got !== field.got) now = { ...now, got: found.got, example: false };
      if (now !== field) changed = true;
      return [name, now];
    }),
  );
  return changed ? next : null;
};
