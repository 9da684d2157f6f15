import { describe, expect, it } from 'vitest';
import { sharedFacts } from '#core/plan/names.ts';
import { dropGear, type Gear, gear, gearName, gearParts, keepGear, mostGear, sawParts } from '#device/gear.ts';
import { localShelf } from './local.ts';

const shelf = localShelf();

const one = (name: string, longest = 4.2): Gear => ({
  name,
  figures: {
    poleShortest: { value: 2.4, got: 'measured' }, poleLongest: { value: longest, got: 'judged' },
    barLength: { value: 250, got: 'measured' }, barTip: { value: 0.2, got: 'judged' },
  },
});
/** What is read where the list holds this. */
const readOf = (...list: unknown[]): Gear[] => {
  shelf.held[gearName] = JSON.stringify({ v: 1, gear: list });
  return gear();
};
/** The same with one figure of it changed. */
const spoilt = (figure: unknown) => ({ ...one('Spoilt'), figures: { ...one('Spoilt').figures, barLength: figure } });

describe('gear kept on the device', () => {
  it('is there again, by name', () => {
    expect([keepGear(one('Short pole', 3)), keepGear(one('Long pole'))]).toEqual(['kept', 'kept']);
    expect(gear()).toEqual([one('Long pole'), one('Short pole', 3)]);
    expect(JSON.parse(shelf.held[gearName]!)).toMatchObject({ v: 1 });
  });
  it('measured again, it takes the place of what had its name', () => {
    keepGear(one('Long pole'));
    keepGear(one('Short pole', 3));
    expect(keepGear(one('Long pole', 5))).toBe('kept');
    expect(gear()).toEqual([one('Long pole', 5), one('Short pole', 3)]);
  });
  it('takes one off and leaves the others', () => {
    keepGear(one('Long pole'));
    keepGear(one('Short pole'));
    expect(dropGear('Long pole')).toBe(true);
    expect(gear()).toEqual([one('Short pole')]);
  });
  it('says when it is full; what is on it can still be measured again', () => {
    for (let i = 0; i < mostGear; i++) expect(keepGear(one(`Pole ${i}`))).toBe('kept');
    expect(keepGear(one('One more'))).toBe('full');
    expect(keepGear(one('Pole 7', 5))).toBe('kept');
    expect(gear()).toHaveLength(mostGear);
    expect(gear()).toContainEqual(one('Pole 7', 5));
  });
  it('says when the browser refuses', () => {
    shelf.refuses = true;
    expect(keepGear(one('Long pole'))).toBe('refused');
    expect(dropGear('Long pole')).toBe(false);
    expect(gear()).toEqual([]);
  });
  it('holds what is known of the saw, and nothing where nothing is', () => {
    const known: Gear = { name: 'Long pole', saw: 'the red one', figures: { ...one('').figures, mass: { value: 6.4, got: 'measured' } } };
    keepGear(known);
    keepGear(one('Short pole'));
    expect(gear()).toEqual([known, one('Short pole')]);
  });
  it('is made of facts that a plan holds', () => {
    expect([...gearParts, ...sawParts].filter((part) => !(part in sharedFacts))).toEqual([]);
    expect(gearParts.map((part) => sharedFacts[part].unit)).toEqual(['m', 'm', 'mm', 'm']);
  });
});

describe('a damaged list', () => {
  it.each(['{', '[]', '7', '{"gear":7}', '{"gear":{"0":1}}'])('as a whole (%s) is as empty, and can be kept into', (text) => {
    shelf.held[gearName] = text;
    expect(gear()).toEqual([]);
    expect(keepGear(one('Long pole'))).toBe('kept');
    expect(gear()).toEqual([one('Long pole')]);
  });
  it.each([
    ['nothing', null], ['text', 'Long pole'], ['no name', { figures: one('x').figures }], ['an empty name', one(' ')], ['a name too long', one('x'.repeat(61))], ['no figures', { name: 'Spoilt' }],
    ['a figure missing', spoilt(undefined)], ['a figure as text', spoilt({ value: '250', got: 'judged' })], ['no figure', spoilt({ value: null, got: 'judged' })],
    ['one below nothing', spoilt({ value: -1, got: 'judged' })], ['how it was got unknown', spoilt({ value: 250, got: 'guessed' })],
    ['a saw of numbers', { ...one('Spoilt'), saw: 7 }], ['a weight as text', { ...one('Spoilt'), figures: { ...one('').figures, mass: '6' } }],
  ])('%s among it costs no other', (_, entry) => {
    expect(readOf(one('Ash pole'), entry, one('Long pole'))).toEqual([one('Ash pole'), one('Long pole')]);
  });
  it('two under one name: the first; what gear does not hold is left out', () => {
    expect(readOf({ ...one('Long pole'), more: 1, figures: { ...one('').figures, weight: 7 } }, one('Long pole', 9))).toEqual([one('Long pole')]);
  });
  it('keeping leaves what another edition put beside it', () => {
    shelf.held[gearName] = JSON.stringify({ v: 1, gear: [], beside: 'x' });
    keepGear(one('Long pole'));
    expect(JSON.parse(shelf.held[gearName]!)).toMatchObject({ beside: 'x' });
  });
});
