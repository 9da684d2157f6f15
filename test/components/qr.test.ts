import { expect, test } from 'vitest';
import { path } from '../../src/components/qr.ts';

test('runs of dark modules become strips inside a quiet zone of four modules', () => {
  expect(path([[true, true, false, true], [false, false, false, false], [false, true, false, false]])).toBe(
    'M4 4h2v1h-2zM7 4h1v1h-1zM5 6h1v1h-1z',
  );
});
