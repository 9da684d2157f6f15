/** The main places of the handbook, in the order they are offered. `label` is a key of `places` in content/interface.json. */
export const places = [
  { label: 'home', path: '/' },
  { label: 'chapters', path: '/chapters/' },
  { label: 'calculators', path: '/calculators/' },
  { label: 'terms', path: '/terms/' },
] as const;

/** Whether `path` (of the page shown) belongs to the place. */
export const isIn = (place: string, path: string): boolean => (place === '/' ? path === '/' : path.startsWith(place));
