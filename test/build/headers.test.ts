import { describe, expect, test } from 'vitest';
import { headersFor, parseHeaders } from '../../src/build/header-rules.ts';

const TEXT = `# a comment
/*
  X-Content-Type-Options: nosniff
  Content-Security-Policy: frame-ancestors 'none'; base-uri 'none'

/pages/one/
  X-Only: here
`;

describe('headers as a host reads them', () => {
  const rules = parseHeaders(TEXT);
  test('a star covers everything under it; a plain path itself alone', () => {
    expect(headersFor(rules, '/pages/two/').map(([name]) => name)).toEqual(['X-Content-Type-Options', 'Content-Security-Policy']);
    expect(headersFor(rules, '/pages/one/').at(-1)).toEqual(['X-Only', 'here']);
  });
  test('a value may hold colons and semicolons', () => {
    expect(new Map(headersFor(rules, '/')).get('Content-Security-Policy')).toBe("frame-ancestors 'none'; base-uri 'none'");
  });
  test.each([
    ['  X-Header: first', /line 1: a header before any path/],
    ['/*\n  no colon here', /line 2: neither/],
    ['pages/', /line 1: neither/],
  ])('%j is refused with its line', (text, message) => expect(() => parseHeaders(text)).toThrow(message));
});
