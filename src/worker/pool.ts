/** How many files are fetched at once: one at a time takes three times as long on a slow line. */
const WORKERS = 8;

/**
 * Does `work` for each item, a few at a time, in order of the list.
 * @param onDone hears how many are done, after each
 * @throws the first error, once the work begun has ended; nothing further is begun after it
 */
export const pooled = async <T>(items: readonly T[], work: (item: T) => Promise<unknown>, onDone: (done: number) => void): Promise<void> => {
  const waiting = items.values();
  let done = 0;
  let failed = false;
  const one = async () => {
    for (const item of waiting) {
      if (failed) return;
      try {
        await work(item);
      } catch (error) {
        failed = true;
        throw error;
      }
      onDone((done += 1));
    }
  };
  const ends = await Promise.allSettled(Array.from({ length: WORKERS }, one));
  const error = ends.find((end) => end.status === 'rejected');
  if (error) throw error.reason;
};
