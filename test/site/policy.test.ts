/** What a page may run: nothing inline that its policy does not name by hash, wherever it stands. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { integrityOf } from '../../src/build/files.ts';
import { parseHeaders } from '../../src/build/header-rules.ts';
import { DIST, pagesOf } from './built.ts';
import { attribute, elementsOf, textOf, type Element } from './document.ts';

const isPolicy = (element: Element) =>
  element.tagName === 'meta' && attribute(element, 'http-equiv')?.toLowerCase() === 'content-security-policy';
const directivesOf = (policy: string) =>
  new Map(policy.split(';').map((directive) => directive.trim().split(/\s+/)).map(([name, ...values]) => [name ?? '', values]));

describe.each(pagesOf(DIST))('$path', ({ html }) => {
  const elements = elementsOf(html);
  const policies = elements.filter(isPolicy);
  const directives = directivesOf(attribute(policies[0]!, 'content') ?? '');

  test('has one policy, above everything it must hold', () => {
    expect(policies).toHaveLength(1);
    const before = elements.slice(0, elements.indexOf(policies[0]!)).map(({ tagName }) => tagName);
    expect(before).toEqual(['html', 'head', 'meta']);
  });

  test('allows nothing inline by rule and nothing from elsewhere', () => {
    expect(directives.get('default-src')).toEqual(["'self'"]);
    expect(directives.get('script-src')).toEqual(expect.arrayContaining(["'self'", "'wasm-unsafe-eval'"]));
    for (const [name, values] of directives) {
      const others = values.filter((value) => !/^('self'|'none'|'wasm-unsafe-eval'|'sha256-[A-Za-z0-9+/=]+')$/.test(value));
      expect(others, name).toEqual([]);
    }
  });

  test.each([
    ['script', 'script-src'],
    ['style', 'style-src'],
  ])('every inline %s is named by its hash, and no hash is left over', (tag, directive) => {
    const inline = elements.filter((element) => element.tagName === tag && attribute(element, 'src') === undefined);
    const run = inline.filter((element) => !/json/.test(attribute(element, 'type') ?? ''));
    const hashes = new Set(run.map((element) => `'${integrityOf(textOf(element))}'`));
    expect(new Set((directives.get(directive) ?? []).filter((value) => value.startsWith("'sha")))).toEqual(hashes);
  });

  test('no attribute that the policy would refuse', () => {
    const refused = elements.flatMap(({ tagName, attrs }) =>
      attrs.filter(({ name }) => name === 'style' || /^on[a-z]+$/.test(name)).map(({ name, value }) => `${tagName} ${name}="${value}"`),
    );
    expect(refused).toEqual([]);
  });
});

test('the headers file holds what meta cannot, and nothing that needs a hash', () => {
  expect(existsSync(join(DIST, '_headers'))).toBe(true);
  const rules = parseHeaders(readFileSync(join(DIST, '_headers'), 'utf8'));
  const everywhere = new Map(rules.filter(({ path }) => path === '/*').flatMap(({ headers }) => headers));
  expect(everywhere.get('Content-Security-Policy')).toBe("frame-ancestors 'none'");
  expect(everywhere.get('X-Content-Type-Options')).toBe('nosniff');
  for (const [name, value] of rules.flatMap(({ headers }) => headers)) {
    expect(`${name}: ${value}`).not.toMatch(/(script|style|default|worker|connect)-src/);
  }
});
