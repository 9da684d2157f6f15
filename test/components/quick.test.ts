import { describe, expect, test } from 'vitest';
import { barAsked, quickAnswer } from '../../src/components/search/quick.ts';
import { barLength } from '../../src/core/calculators/bar-length.ts';
import { readLink } from '../../src/core/kit/link.ts';

describe('the bar in a question', () => {
  // An inch is 25.4 mm by definition (international yard and pound agreement, 1959).
  test.each([
    ['12 inch bar', 304.8], ['12 in bar', 304.8], ['bar 10"', 254], ['10” bar', 254], ['12-inch guide bar', 304.8], ['250 mm bar', 250],
    ['250mm bar', 250], ['25 cm bar', 250], ['bar 12', 304.8], ['300 bars', 300], ['BAR 0,25 m', 250],
  ])('%s', (query, mm) => expect(barAsked(query)).toBeCloseTo(mm, 6));
  test.each(['bar', '33 kV', 'barrier 12', 'rebar 10 mm', '', 'where to stand'])('%j asks for no bar', (query) => expect(barAsked(query)).toBeNull());
});

describe('the answer', () => {
  test('never stands without the weight, and opens the calculator with that bar', () => {
    const found = quickAnswer('250 mm bar', 'metric');
    expect(found?.id).toBe('bar');
    expect(found?.values['bar']).toBe('250\u00a0mm (10\u00a0in)');
    expect(found?.values['weight']).toMatch(/kg\/m$/);
    const link = readLink(barLength, found?.query ?? '');
    expect(link).toMatchObject({ kind: 'given', problems: [], inputs: { barLength: 250 } });
  });
  test('is what is left of the bar, cut as far off square as the guess may be', () => {
    // By hand: shortest bar sold as 250 mm is 240; less 50 to spare leaves 190; cos 25° = 0.9063 (four-figure tables): 172.2, shown down.
    expect(quickAnswer('250 mm bar', 'metric')?.values['limb']).toBe('172\u00a0mm');
  });
  test('comes in the units chosen', () => {
    const found = quickAnswer('12 inch bar', 'imperial');
    expect(found?.values['bar']).toBe('12\u00a0in (305\u00a0mm)');
    expect(found?.values['limb']).toMatch(/\u00a0in$/);
  });
  test.each(['40 mm bar', '60 inch bar', '99999 mm bar'])('%s is outside, and says what is not', (query) => {
    expect(quickAnswer(query, 'metric')).toMatchObject({ id: 'barOutside', query: '', values: { from: '150\u00a0mm', to: '400\u00a0mm' } });
  });
  test('there is none to other questions', () => expect(quickAnswer('collar', 'metric')).toBeNull());
});
