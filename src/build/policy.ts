/**
 * Tightens the content security policy that Astro writes into each page: it lists the hash of every script and style of
 * the whole site at the end of the head. What is left here are the hashes of what stands inline on that page, and the
 * policy moves to the front of the head, so that nothing above it runs unpoliced. No hash is added: what Astro and
 * astro.config.mjs did not vouch for stays refused.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { filesUnder, integrityOf, read } from './files.ts';

const META = /<meta http-equiv="content-security-policy" content="([^"]*)">/i;
const INLINE = /<(?:script|style)\b[^>]*>([\s\S]*?)<\/(?:script|style)>/g;

/** @throws when a page has no policy or no place for it. */
export const tightened = (html: string, path: string): string => {
  const [meta, policy] = META.exec(html) ?? [];
  if (!meta || !policy) throw new Error(`${path} has no content security policy`);
  const contents = [...html.matchAll(INLINE)].map(([, content]) => content ?? '').filter(Boolean);
  const inline = new Set(contents.map((content) => `'${integrityOf(content)}'`));
  const needed = (word: string) => !/^'sha(256|384|512)-/.test(word) || inline.has(word);
  const kept = policy.split(';').map((directive) => directive.split(' ').filter(needed).join(' '));
  const tight = meta.replace(policy, () => kept.join(';'));
  const rest = html.replace(meta, '');
  const head = /<head[^>]*>\s*(<meta charset="utf-8"[^>]*>)?/i.exec(rest);
  if (!head) throw new Error(`${path} has no head`);
  const place = head.index + head[0].length;
  return rest.slice(0, place) + tight + rest.slice(place);
};

export const policy = (): AstroIntegration => ({
  name: 'policy',
  hooks: {
    'astro:build:done': ({ dir }) => {
      const root = fileURLToPath(dir);
      for (const path of filesUnder(root).filter((file) => file.endsWith('.html'))) {
        writeFileSync(join(root, path), tightened(read(root, path).toString('utf8'), path));
      }
    },
  },
});
