/** The reader's own pocket card: the query of its address, kept on the device alone. */
import { read, write } from './store.ts';

export const cardName = 'standing-clear.card';
const version = 1;
const longest = 2000;

/** What is kept; null where there is none, or it is damaged. */
export const keptCard = (): string | null => {
  const { query } = read(cardName);
  return typeof query === 'string' && query.length <= longest ? query : null;
};

/** False where the browser keeps nothing. */
export const keepCard = (query: string): boolean => write(cardName, { v: version, query });
