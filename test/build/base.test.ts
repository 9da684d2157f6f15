import { expect, test } from 'vitest';
import { basePath } from '../../src/build/base.mjs';

test.each([
  [undefined, '/'],
  ['', '/'],
  ['/', '/'],
  ['handbook', '/handbook/'],
  ['/handbook', '/handbook/'],
  ['handbook/', '/handbook/'],
  ['/handbook/', '/handbook/'],
  ['/crew//north/', '/crew/north/'],
])('BASE_PATH %j is hosted under %s', (given, expected) => expect(basePath(given)).toBe(expected));
