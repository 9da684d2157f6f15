/** What an island is shown by: it comes alive at the reader's first act, which keeps the page within its budget. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const folder = 'content/calculators';
const pages = readdirSync(folder).filter((file) => file.endsWith('.mdx'));

test('there are calculators', () => expect(pages.length).toBeGreaterThan(2));

test.each(pages)('%s shows one island, alive at the first act', (file) => {
  const directives = readFileSync(`${folder}/${file}`, 'utf8').match(/client:\w+/g);
  expect(directives).toEqual(['client:act']);
});
