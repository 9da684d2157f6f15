import { describe, expect, test } from 'vitest';
import { integrityOf } from '../../src/build/files.ts';
import { tightened } from '../../src/build/policy.ts';

const hash = (text: string) => `'${integrityOf(text)}'`;
const policy = (...hashes: string[]) =>
  `<meta http-equiv="content-security-policy" content="default-src 'self'; script-src 'self' ${hashes.join(' ')}; style-src 'self' ${hash('p{}')};">`;

describe('a page’s policy', () => {
  const html = `<!DOCTYPE html><html><head><meta charset="utf-8"><script>one</script><style>p{}</style>${policy(hash('one'), hash('elsewhere'))}</head><body><script src="x.js"></script></body></html>`;
  const tight = tightened(html, 'index.html');

  test('stands before everything but the character set', () => {
    expect(tight).toContain('<head><meta charset="utf-8"><meta http-equiv="content-security-policy"');
  });
  test('keeps the hashes of what stands inline here and drops the rest, also the last of a directive', () => {
    expect(tight).toContain(hash('one'));
    expect(tight).toContain(hash('p{}'));
    expect(tight).not.toContain(hash('elsewhere'));
    expect(tight).not.toContain(hash(''));
  });
  test('never vouches for what it was not told of', () => {
    const foreign = tightened(html.replace('one</script>', 'two</script>'), 'index.html');
    expect(foreign).not.toContain(hash('two'));
  });
  test('a page without one fails the build', () => {
    expect(() => tightened('<html><head></head></html>', 'x.html')).toThrow(/x\.html has no content security policy/);
  });
});
