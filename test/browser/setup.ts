/** Before the browser tests: a built handbook, the same under a sub-path, and a browser. */
import type { TestProject } from 'vitest/node';
import built from '../site/built.ts';
import { findBrowser } from './find-browser.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    chromium: string;
  }
}

export default function setup({ provide }: TestProject): void {
  built();
  provide('chromium', findBrowser());
}
