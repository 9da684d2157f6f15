/** A read of several chapters: the first one's address, with the rest in its query as `?then=slug,slug`. */

/** @param chapters slugs, at least one, in the order of reading */
export const sequence = ([first, ...rest]: readonly string[]): string => `/chapters/${first}/${rest.length > 0 ? `?then=${rest.join(',')}` : ''}`;

/** The chapters still to come by a page's query; none where it is damaged. */
export const stillToCome = (query: string): string[] => {
  const slugs = new URLSearchParams(query).get('then')?.split(',') ?? [];
  return slugs.length <= 60 && slugs.every((slug) => /^[a-z0-9]+(-[a-z0-9]+)*$/.test(slug)) ? slugs : [];
};
