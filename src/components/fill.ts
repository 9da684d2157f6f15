/** Puts values into `{name}` in a sentence of `content`. Throws for a name that has no value, so that no brace is ever read. */
export const fill = (sentence: string, values: Readonly<Record<string, string | number>>): string =>
  sentence.replace(/\{([^{}]+)\}/g, (_, name: string) => {
    const value = values[name];
    if (value === undefined) throw new Error(`no value for {${name}} in: ${sentence}`);
    return String(value);
  });
