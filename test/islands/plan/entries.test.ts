import { describe, expect, it } from 'vitest';
import { copyName, entryOf, fileName, found, nameOf } from '#islands/plan/kept/entries.ts';
import { changed, invented } from '../../core/plan/invented.ts';

const entry = (id: string, name: string, address: string) => entryOf({ id, rev: 1, saved: 0, deleted: null, plan: changed((p) => { p.name = name; p.site.address = address; }) });

describe('the names of plans', () => {
  it('a copy bears the first number that is free, and no number twice over', () => {
    expect(copyName('Elm', [])).toBe('Elm (2)');
    expect(copyName('Elm', ['Elm (2)', 'Elm (4)'])).toBe('Elm (3)');
    expect(copyName('Elm (2)', ['Elm (2)'])).toBe('Elm (3)');
    expect(copyName('Cost: $& {n}', [])).toBe('Cost: $& {n} (2)');
  });
  it('one with no name has words in its place', () => {
    expect(nameOf({ ...invented, name: '  ' })).toBe('Plan with no name');
  });
  it('files bear letters, figures and hyphens alone', () => {
    expect(fileName([{ ...invented, name: '../Mühle: 3. "Ulme" <b>' }], '2026-05-01')).toBe('standing-clear-muhle-3-ulme-b-2026-05-01.json');
    expect(fileName([{ ...invented, name: '柳' }], '2026-05-01')).toBe('standing-clear-plan-2026-05-01.json');
    expect(fileName([invented, invented], '2026-05-01')).toBe('standing-clear-plans-2026-05-01.json');
  });
});

describe('a plan is found', () => {
  const all = [entry('a', 'Ulme an der Mühle', '3 Ford Lane'), entry('b', 'Oak', '12 Ford Lane')];
  it.each([['muhle', ['a']], ['FORD', ['a', 'b']], ['ford oak', ['b']], ['over drive', ['a', 'b']], ['', ['a', 'b']], ['ash', []], ['.*', []]])('by "%s"', (text, ids) => {
    expect(found(all, text).map(({ id }) => id)).toEqual(ids);
  });
});
