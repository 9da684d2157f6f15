/** Words with their figures, in both unit systems: the page shows one. */
export type Said = { metric: string; imperial: string };
export type Figures = Readonly<Record<string, Said>>;

export const same = (text: string): Said => ({ metric: text, imperial: text });

/** Fills `{name}` from `figures`; a name that is not there is a mistake in the words, and says so. */
export const say = (template: string, figures: Figures = {}): Said => {
  const fill = (system: keyof Said) =>
    template.replace(/\{(\w+)\}/g, (_, name: string) => {
      const figure = figures[name];
      if (!figure) throw new Error(`The drawing's words ask for {${name}}; there is ${Object.keys(figures).join(', ') || 'nothing'}`);
      return figure[system];
    });
  return { metric: fill('metric'), imperial: fill('imperial') };
};

/** The word of that name, or a mistake said by name. */
export const word = (labels: Readonly<Record<string, string>>, name: string): string => {
  const found = labels[name];
  if (found === undefined) throw new Error(`The drawing has no word "${name}"; it has ${Object.keys(labels).join(', ')}`);
  return found;
};
