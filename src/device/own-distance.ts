/** The distance (m) that the operator of a line gave the reader: their own entry, kept on the device alone. */
import { read, write } from './store.ts';

export const ownName = 'standing-clear.own-distance';
const version = 1;

/** The figure kept; null where there is none, or it is damaged. */
export const own = (): number | null => {
  const { distance } = read(ownName);
  return typeof distance === 'number' && Number.isFinite(distance) && distance >= 0.1 && distance <= 100 ? distance : null;
};

/** Keeps it, or forgets it with null. False where the browser keeps nothing. */
export const keepOwn = (distance: number | null): boolean => write(ownName, distance === null ? { v: version } : { v: version, distance });
