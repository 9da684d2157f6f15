import { expect, test } from 'vitest';
import { countOf } from '../count.ts';

test.each([
  ['all passed', { numPassedTests: 7, numFailedTests: 0, success: true }, '7 passed, 0 failed', true],
  ['some failed', { numPassedTests: 5, numFailedTests: 2, success: false }, '5 passed, 2 failed', false],
  ['a file broke before its first test', { numPassedTests: 5, numFailedTests: 0, success: false }, '5 passed, 1 failed', false],
  ['nothing ran', { numPassedTests: 0, numFailedTests: 0, success: true }, '0 passed, 0 failed', false],
  ['there is no report', undefined, '0 passed, 1 failed', false],
])('%s', (_, report, line, good) => expect(countOf(report)).toEqual({ line, good }));
