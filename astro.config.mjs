import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';

export default defineConfig({
  output: 'static',
  base: process.env.BASE_PATH ?? '/',
  trailingSlash: 'always',
  integrations: [mdx(), preact()],
  markdown: { syntaxHighlight: false },
  prerenderConflictBehavior: 'error',
  devToolbar: { enabled: false },
  server: { port: 4321 },
});
