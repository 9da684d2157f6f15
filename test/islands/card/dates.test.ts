import { expect, it } from 'vitest';
import { day, later } from '#islands/card/dates.ts';

it.each([
  [new Date(2026, 10, 25), 12, '25 Nov 2027'],
  [new Date(2026, 10, 30), 3, '28 Feb 2027'],
  [new Date(2027, 10, 30), 3, '29 Feb 2028'],
  [new Date(2026, 7, 31), 6, '28 Feb 2027'],
  [new Date(2026, 11, 31), 6, '30 Jun 2027'],
  [new Date(2024, 1, 29), 12, '28 Feb 2025'],
])('%s and %i months: %s', (from, months, text) => expect(day(later(from, months))).toBe(text));
