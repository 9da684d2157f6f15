/** What a page has already printed, so that a part wanted once stands there once. A page is told by its request object. */
const printed = new WeakMap<object, Set<string>>();

/** True the first time `name` is asked for on that page. */
export const firstOnPage = (page: object, name: string): boolean => {
  const names = printed.get(page) ?? new Set<string>();
  printed.set(page, names);
  if (names.has(name)) return false;
  names.add(name);
  return true;
};
