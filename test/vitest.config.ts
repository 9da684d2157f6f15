import { defineConfig } from 'vitest/config';

/**
 * `unit`: core, words, shared data and the house rules; `site`: reads dist; `browser`: real Chromium on dist.
 * Run from the top: vitest run --root . --config test/vitest.config.ts [--project unit]
 */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['test/{core,shared,content,drawings,islands,components,device,architecture,build,worker}/**/*.test.{ts,tsx}'],
        },
      },
      { test: { name: 'site', include: ['test/site/**/*.test.ts'], testTimeout: 60_000, globalSetup: ['test/site/built.ts'] } },
      {
        test: {
          name: 'browser',
          include: ['test/browser/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 180_000,
          fileParallelism: false,
          globalSetup: ['test/browser/setup.ts'],
        },
      },
    ],
  },
});
