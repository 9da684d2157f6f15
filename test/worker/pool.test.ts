import { expect, test } from 'vitest';
import { pooled } from '../../src/worker/pool.ts';

const later = () => new Promise((done) => setTimeout(done, 1));

test('does everything, at most eight at a time, and counts up', async () => {
  let now = 0;
  let most = 0;
  const done: number[] = [];
  const seen: number[] = [];
  await pooled(
    Array.from({ length: 50 }, (_, place) => place),
    async (item) => {
      most = Math.max(most, (now += 1));
      await later();
      seen.push(item);
      now -= 1;
    },
    (count) => done.push(count),
  );
  expect(seen.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 50 }, (_, place) => place));
  expect(done).toEqual(Array.from({ length: 50 }, (_, place) => place + 1));
  expect(most).toBe(8);
});

test('one failure fails it, after what was begun has ended, and nothing more is begun', async () => {
  let begun = 0;
  let ended = 0;
  const run = pooled(
    Array.from({ length: 100 }, (_, place) => place),
    async (item) => {
      begun += 1;
      await later();
      ended += 1;
      if (item === 3) throw new Error('file three');
    },
    () => undefined,
  );
  await expect(run).rejects.toThrow('file three');
  expect(ended).toBe(begun);
  expect(begun).toBeLessThan(20);
});

test('nothing to do is done', async () => {
  await expect(pooled([], () => Promise.reject(new Error('never')), () => undefined)).resolves.toBeUndefined();
});
