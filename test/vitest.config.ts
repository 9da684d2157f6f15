import { defineConfig } from 'vitest/config';

/**
 * `unit`: core, words, shared data and the house rules; `site`: reads dist; `browser`: real Chromium on dist.
 * In this order, so that the browser has the machine for itself.
 * Run from the top: vitest run --root . --config test/vitest.config.ts [--project unit]
 */
export default defineConfig({
  test: {
    coverage: {
      provider: 'v8',
      include: ['src/core/**/*.ts'],
      reporter: [['text', { skipFull: true }]],
      reportsDirectory: '.cache/coverage',
      reportOnFailure: true,
      thresholds: { branches: 100 },
    },
    projects: [
      {
        test: {
          name: 'unit',
          include: ['test/{core,shared,content,drawings,islands,components,device,layouts,architecture,build,worker}/**/*.test.{ts,tsx}'],
          testTimeout: 30_000,
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
      {
        test: {
          name: 'site',
          include: ['test/site/**/*.test.ts'],
          testTimeout: 60_000,
          globalSetup: ['test/site/built.ts'],
          sequence: { groupOrder: 2 },
        },
      },
      {
        test: {
          name: 'browser',
          include: ['test/browser/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 180_000,
          fileParallelism: false,
          globalSetup: ['test/browser/setup.ts'],
          sequence: { groupOrder: 3 },
        },
      },
    ],
  },
});
