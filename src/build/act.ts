/** Makes `client:act` known to Astro: islands that come alive at the reader's first act. */
import type { AstroIntegration } from 'astro';

export const act = (): AstroIntegration => ({
  name: 'act',
  hooks: {
    'astro:config:setup': ({ addClientDirective }) => addClientDirective({ name: 'act', entrypoint: './src/islands/kit/act.ts' }),
  },
});
