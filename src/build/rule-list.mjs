/**
 * Writes src/core/facts/rule-list.ts: one import for every file in shared/tables/rules, so that adding a rule set is
 * adding a file and nothing else. Runs before start, dev, build, check and test; the result is kept in the repository,
 * so that core runs in plain node as it stands. A list that is up to date is left untouched.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('../../shared/tables/rules/', import.meta.url));
const target = fileURLToPath(new URL('../core/facts/rule-list.ts', import.meta.url));

/** The text of the list for these ids. */
export const ruleListText = (ids) => {
  const sorted = [...ids].sort();
  const name = (index) => `r${index}`;
  return [
    '// Written by src/build/rule-list.mjs from the files of shared/tables/rules. Add a file there, not a line here.',
    ...sorted.map((id, i) => `import ${name(i)} from '#shared/tables/rules/${id}.json' with { type: 'json' };`),
    '',
    'export const ruleFiles = {',
    ...sorted.map((id, i) => `  '${id}': ${name(i)},`),
    '};',
    '',
  ].join('\n');
};

export const ruleIds = () => readdirSync(folder).filter((file) => file.endsWith('.json')).map((file) => file.slice(0, -'.json'.length));

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const text = ruleListText(ruleIds());
  if (!existsSync(target) || readFileSync(target, 'utf8') !== text) writeFileSync(target, text);
}
