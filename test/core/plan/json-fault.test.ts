/** Where a text stops being JSON: held against the engine's own parser, which says whether, and places found by eye. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFault } from '#core/plan/json-fault.ts';

const parses = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe('the place where a text stops being JSON', () => {
  it.each([
    ['{"a": 1,}', 1, 9, false],
    ['{\n  "a": 1\n  "b": 2\n}', 3, 3, false],
    ['[1, 2', 1, 6, true],
    ['{"name": "Elm str', 1, 10, true],
    ['', 1, 1, true],
    ['{"a": NaN}', 1, 7, false],
    ["{'a': 1}", 1, 2, false],
    ['[1] x', 1, 5, false],
    ['[01]', 1, 3, false],
    ['{"a": [1, 2}', 1, 12, false],
    ['"a\nb"', 1, 1, false],
    ['{"a" 1}', 1, 6, false],
    ['[1 : 2]', 1, 4, false],
    ['{,}', 1, 2, false],
    ['[}', 1, 2, false],
    ['{1: 2}', 1, 2, false],
    ['[[] []]', 1, 5, false],
  ])('%j: line %i, column %i', (text, line, column, cut) => {
    expect(parses(text)).toBe(false);
    expect(jsonFault(text)).toEqual({ line, column, cut });
  });

  it('takes what JSON.parse takes, and nothing else: whole texts and texts with a few signs changed', () => {
    const signs = fc.constantFrom('{', '}', '[', ']', ',', ':', '"', '\\', '0', '1', '-', '.', 'e', ' ', '\n', 'true', 'null', 'u', '\u0001', 'é');
    const spoilt = fc.tuple(fc.json({ maxDepth: 4 }), fc.array(fc.tuple(fc.nat(), fc.nat(2), signs), { maxLength: 3 })).map(([text, changes]) =>
      changes.reduce((t, [place, gone, sign]) => t.slice(0, place % (t.length + 1)) + sign + t.slice((place % (t.length + 1)) + gone), text));
    const whole = { good: 0, bad: 0 };
    fc.assert(fc.property(fc.oneof(spoilt, fc.array(signs, { maxLength: 8 }).map((s) => s.join(''))), (text) => {
      whole[parses(text) ? 'good' : 'bad'] += 1;
      expect(jsonFault(text) === null).toBe(parses(text));
    }), { seed: 9, numRuns: 3000 });
    expect(Math.min(whole.good, whole.bad)).toBeGreaterThan(300);
  });

  it('a text nested very deep, or with a very long string in it, is read to its end', () => {
    expect(jsonFault('['.repeat(200_000))).toEqual({ line: 1, column: 200_001, cut: true });
    expect(jsonFault('['.repeat(100_000) + ']'.repeat(100_000))).toBeNull();
    expect(jsonFault(`["${'\\n x'.repeat(300_000)}"]`)).toBeNull();
  });
});
