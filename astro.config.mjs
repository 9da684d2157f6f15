import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { act } from './src/build/act.ts';
import { basePath } from './src/build/base.mjs';
import { integrityOf } from './src/build/files.ts';
import { oneFrame, plainLazyParts, wordsByGroup } from './src/build/lazy.ts';
import { offline } from './src/build/offline.ts';
import { policy } from './src/build/policy.ts';
import { search } from './src/build/search.ts';
import { headScript } from './src/layouts/head-script.ts';

export default defineConfig({
  output: 'static',
  base: basePath(),
  trailingSlash: 'always',
  integrations: [mdx(), preact(), act(), policy(), search(), offline()],
  markdown: { syntaxHighlight: false },
  prerenderConflictBehavior: 'error',
  devToolbar: { enabled: false },
  server: { port: 4321 },
  vite: {
    plugins: [plainLazyParts(), wordsByGroup()],
    // Each MDX file brings a directive meant for Astro alone; the warning about it would hide others.
    build: { rolldownOptions: { checks: { moduleLevelDirective: false } } },
    environments: { client: { build: { rolldownOptions: oneFrame } } },
  },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'self'",
      ],
      scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"], hashes: [integrityOf(headScript)] },
      styleDirective: { resources: ["'self'"] },
    },
  },
});
