/**
 * What the device keeps for the reader, as JSON under one name each. A browser may refuse storage, and what it holds may be
 * damaged or of another edition: neither ever throws here.
 */
export type Kept = { readonly [key: string]: unknown };

/** The object kept under `name`; an empty one where there is none, it is damaged, or storage is refused. */
export const read = (name: string): Kept => {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(name) ?? '{}');
    return typeof found === 'object' && found !== null && !Array.isArray(found) ? (found as Kept) : {};
  } catch {
    return {};
  }
};

/** Keeps `value` under `name`; false where the browser refuses. */
export const write = (name: string, value: Kept): boolean => {
  try {
    localStorage.setItem(name, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
};
