/** One of a few options as a switch, of more as a list, of many as a list with a field that finds in it. */
import { useState } from 'preact/hooks';
import { calculator as frame } from '#content/interface.json';
import type { Part } from './Field.tsx';

/** Up to so many stand side by side. */
export const fewest = 5;
const many = 20;

const plainLetters = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

/** The options whose name holds every word of the query, in their order. */
export const found = (query: string, options: readonly string[], called: (option: string) => string): string[] => {
  const words = plainLetters(query).split(/\s+/).filter(Boolean);
  return options.filter((option) => words.every((word) => plainLetters(called(option)).includes(word)));
};

export const Choice = ({ speaker, state, name, options }: Part & { options: readonly string[] }) => {
  const [query, setQuery] = useState('');
  const words = speaker.words.inputs[name];
  const chosen = state.fields[name]?.text;
  const called = (option: string): string => words?.choices?.[option] ?? option;
  if (options.length <= fewest) {
    return (
      <div class="choices">
        {options.map((option) => (
          <label key={option}>
            <input type="radio" name={name} value={option} checked={option === chosen} onChange={() => state.setText(name, option)} />
            <span>{called(option)}</span>
          </label>
        ))}
      </div>
    );
  }
  const shown = query.trim() === '' ? options : found(query, options, called);
  return (
    <>
      {options.length > many && (
        <span class="field-input finds needs-script">
          <input type="search" aria-label={`${words?.label}: ${frame.filter}`} placeholder={frame.filter} value={query} onInput={(e) => setQuery(e.currentTarget.value)} />
          <span class="unit" aria-live="polite">{frame.filterFound.replace('{count}', String(shown.length)).replace('{of}', String(options.length))}</span>
        </span>
      )}
      <select id={`in-${name}`} value={chosen} onChange={(e) => state.setText(name, e.currentTarget.value)}>
        {options.filter((option) => option === chosen || shown.includes(option)).map((option) => <option key={option} value={option} selected={option === chosen}>{called(option)}</option>)}
      </select>
    </>
  );
};
