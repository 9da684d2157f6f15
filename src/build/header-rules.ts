/**
 * Response headers as `public/_headers` writes them: a line with a path (a `*` at its end stands for anything),
 * under it indented `Name: value` lines; `#` starts a comment.
 */
export type HeaderRule = { path: string; headers: [name: string, value: string][] };

/** @throws when a line is neither a path nor a header under one. */
export const parseHeaders = (text: string): HeaderRule[] => {
  const rules: HeaderRule[] = [];
  for (const [number, line] of text.split('\n').entries()) {
    const words = line.trim();
    if (words === '' || words.startsWith('#')) continue;
    const header = /^\s+([A-Za-z-]+):\s*(.+)$/.exec(line.trimEnd());
    if (header) {
      const rule = rules.at(-1);
      if (!rule) throw new Error(`_headers, line ${number + 1}: a header before any path`);
      rule.headers.push([header[1]!, header[2]!]);
    } else if (/^\/\S*$/.test(line)) {
      rules.push({ path: words, headers: [] });
    } else {
      throw new Error(`_headers, line ${number + 1}: neither a path nor a header: ${words}`);
    }
  }
  return rules;
};

/** The headers for one path: those of every rule that covers it, in order. */
export const headersFor = (rules: HeaderRule[], path: string): [string, string][] =>
  rules
    .filter((rule) => (rule.path.endsWith('*') ? path.startsWith(rule.path.slice(0, -1)) : path === rule.path))
    .flatMap((rule) => rule.headers);
