/**
 * The address of a page or file of the handbook from wherever it is hosted: every address goes through here.
 * @param path from the handbook's own top, beginning with a slash: `/chapters/three-cuts/`
 */
export const address = (path: string): string => under(import.meta.env.BASE_URL, path);

/** `path` under `base`, whether or not the base ends with a slash. Throws for a path that does not begin with one. */
export const under = (base: string, path: string): string => {
  if (!path.startsWith('/') || path.startsWith('//')) throw new Error(`an address of the handbook begins with one slash: ${path}`);
  return base.replace(/\/+$/, '') + path;
};
