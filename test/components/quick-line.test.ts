/** Search answers a voltage. Expected distances from South Australia's table and 29 CFR 1910.333, typed here. */
import { describe, expect, test } from 'vitest';
import { quickAnswer } from '../../src/components/search/quick.ts';
import { voltageAsked } from '../../src/components/search/quick-line.ts';

const kept = (ruleSet: string | null, ownDistance: number | null = null) => ({ ruleSet, ownDistance });

describe('the voltage in a question', () => {
  test.each([['33 kV', 33], ['33kv', 33], ['11 kV line', 11], ['400 V', 0.4], ['230/400 V', 0.4], ['12,47 kV', 12.47], ['132 kilovolts', 132], ['240 volts', 0.24], ['33\u00a0kV', 33]])(
    '%s', (query, kV) => expect(voltageAsked(query)).toBeCloseTo(kV, 9));
  test.each(['33', 'kV', '3 vines', 'volts', '', 'collar'])('%j asks for none', (query) => expect(voltageAsked(query)).toBeNull());
});

describe('the answer', () => {
  test('by the rule kept', () => {
    const found = quickAnswer('33 kV', 'metric', kept('au-sa'));
    expect(found).toMatchObject({ id: 'line', calculator: 'approach-distance', values: { distance: '3.00\u00a0m', voltage: '33\u00a0kV' } });
    expect(found?.query).toContain('ruleSet=au-sa');
  });
  test('in feet', () => expect(quickAnswer('12.47 kV', 'imperial', kept('us-1910-333'))?.values['distance']).toBe('10\u00a0ft'));
  test('with no rule kept it is the strictest, and says so', () => expect(quickAnswer('33 kV', 'metric')).toMatchObject({ id: 'lineNoRule', values: { distance: '10.00\u00a0m' } }));
  test('an unknown rule is as none', () => expect(quickAnswer('33 kV', 'metric', kept('gone'))?.id).toBe('lineNoRule'));
  test('not seen in its source: the strict side leads', () => expect(quickAnswer('66 kV', 'metric', kept('au-nsw'))).toMatchObject({ id: 'lineUnseen', values: { distance: '6.00\u00a0m' } }));
  test('above the last band there is no figure', () => expect(quickAnswer('400 kV', 'metric', kept('au-sa'))).toMatchObject({ id: 'lineOutside', query: '' }));
  test.each(['unknown voltage', 'voltage unknown', 'I don’t know the voltage', 'what voltage is it', 'kV not known, voltage not known'])('%s: no work', (query) => {
    expect(quickAnswer(query, 'metric')).toMatchObject({ id: 'lineUnknown', values: {} });
    // Seven metres: Alberta's own figure for a voltage nobody has told.
    expect(quickAnswer(query, 'metric', kept('ca-ab'))).toMatchObject({ id: 'lineUnknownKept', values: { distance: '7.00\u00a0m' } });
    expect(quickAnswer(query, 'metric', kept('au-sa'))).toMatchObject({ id: 'lineUnknown', values: {} });
  });
  test.each(['voltage', 'what is a collar', 'unknown species', 'step voltage'])('%s does not ask that', (query) => expect(quickAnswer(query, 'metric')).toBeNull());
  test('the operator’s figure, entered by the reader, only where it is the larger', () => {
    expect(quickAnswer('33 kV', 'metric', kept('au-sa', 6.4))).toMatchObject({ id: 'lineEntered', values: { distance: '6.40\u00a0m' } });
    expect(quickAnswer('33 kV', 'metric', kept('au-sa', 1))).toMatchObject({ id: 'line', values: { distance: '3.00\u00a0m' } });
  });
});
