/** A door to one topic of shared/values: hands out a fact by its key, and complains in words where there is none. */
export type FactRecord = { value: number | number[] };

const pairsIn = (text: string): Set<string> => new Set(Array.from({ length: text.length - 1 }, (_, i) => text.slice(i, i + 2)));

/** Up to three of `known` that look most like `key`, by the pairs of letters they share. */
export const nearNames = (key: string, known: readonly string[]): string[] => {
  const wanted = pairsIn(key);
  const alike = (other: string): number => [...pairsIn(other)].filter((p) => wanted.has(p)).length / Math.max(other.length, key.length);
  return known.map((name) => ({ name, score: alike(name) }))
    .filter(({ score }) => score > 0.2)
    .sort((a, b) => b.score - a.score)
    .slice(0, 3)
    .map(({ name }) => name);
};

/**
 * @param topic the file's name without its ending
 * @param values the file
 * @returns a function from key to the number of a fact. It throws an Error that names file, key and near names for an
 *   unknown key, and where the fact is a range.
 */
export const door = <K extends string>(topic: string, values: { readonly [key in K]: FactRecord }) =>
  (key: K): number => {
    const found: FactRecord | undefined = values[key];
    if (found === undefined) {
      throw new Error(`shared/values/${topic}.json has no "${key}"; near: ${nearNames(key, Object.keys(values)).join(', ') || 'none'}`);
    }
    if (typeof found.value !== 'number') throw new Error(`${topic}.${key} is a range, not one number`);
    return found.value;
  };

/** The same for facts that are a range: the lower and the upper end. */
export const rangeDoor = <K extends string>(topic: string, values: { readonly [key in K]: FactRecord }) =>
  (key: K): readonly [number, number] => {
    const found = values[key]?.value;
    if (!Array.isArray(found)) throw new Error(`shared/values/${topic}.json has no range "${key}"`);
    return found as [number, number];
  };
