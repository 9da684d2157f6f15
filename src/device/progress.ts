/** Which chapters were opened last and read to the end; kept on the device, never sent anywhere. */
import { read, write } from './store.ts';

export type Progress = {
  /** The chapter opened last. */
  readonly last: string | null;
  /** Chapters read to the end. */
  readonly done: readonly string[];
};

export const progressName = 'standing-clear.progress';
const version = 1;
const isSlug = (value: unknown): value is string => typeof value === 'string' && /^[a-z0-9-]{1,80}$/.test(value);

/** What is kept; entries that are damaged are left out. */
export const progress = (): Progress => {
  const kept = read(progressName);
  const done = Array.isArray(kept['done']) ? kept['done'].filter(isSlug) : [];
  return { last: isSlug(kept['last']) ? kept['last'] : null, done: [...new Set(done)] };
};

const keep = (now: Progress) => write(progressName, { ...read(progressName), ...now, v: version });

/** Notes that a chapter was opened. False where the browser keeps nothing. */
export const opened = (slug: string): boolean => keep({ ...progress(), last: slug });

/** Notes that a chapter was read to the end. False where the browser keeps nothing. */
export const readToEnd = (slug: string): boolean => {
  const { last, done } = progress();
  return keep({ last, done: [...new Set([...done, slug])] });
};
