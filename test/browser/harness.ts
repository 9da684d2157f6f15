/**
 * What every browser test starts from. `import { test, expect } from './harness.ts'`, then ask for what is needed:
 *
 *   test('a page opens', async ({ site, page }) => {
 *     await page.goto(site.at('/terms/'));
 *   });
 *
 * Each test has a server of its own and a browser profile of its own. At its end it fails if the page wrote an error to the
 * console, broke its content security policy, threw, or asked anything of another origin; `allow(/…/)` takes an error that
 * the test brings about.
 */
import { chromium, type Browser, type BrowserContext, type BrowserContextOptions, type LaunchOptions, type Page } from 'playwright-core';
import { expect, inject, test as base } from 'vitest';
import { serve, type Served, type ServeOptions } from '../../src/build/serve.ts';
import { DIST } from '../site/built.ts';
import { LAUNCH_ARGUMENTS } from './find-browser.ts';

export { expect };

let shared: Browser | undefined;
/** One browser for a test file; with options of one's own, another that the caller closes. */
export const launch = async (options?: LaunchOptions): Promise<Browser> => {
  const start = () => chromium.launch({ executablePath: inject('chromium'), args: LAUNCH_ARGUMENTS, ...options });
  if (options) return start();
  shared ??= await start();
  return shared;
};

export class Site {
  private served: Served | undefined;
  private options: ServeOptions;
  constructor(options: Partial<ServeOptions> = {}) {
    this.options = { dir: DIST, port: 0, base: '/', ...options };
  }
  async start(changed: Partial<ServeOptions> = {}): Promise<this> {
    this.options = { ...this.options, ...changed };
    this.served = await serve(this.options);
    this.options.port = this.served.port;
    return this;
  }
  async stop(): Promise<void> {
    await this.served?.close();
    this.served = undefined;
  }
  /** The same address again, as if the host had been given other files or other ways. */
  async restart(changed: Partial<ServeOptions> = {}): Promise<void> {
    await this.stop();
    await this.start(changed);
  }
  /** @param path from the handbook's top, beginning with a slash; it may carry a query */
  at(path: string): string {
    return `http://localhost:${this.options.port}${this.options.base}${path.slice(1)}`;
  }
  get origin(): string {
    return `http://localhost:${this.options.port}`;
  }
}

/** Notes everything that a page must not do. */
export class Watch {
  private seen: string[] = [];
  private allowed: RegExp[] = [];
  allow = (pattern: RegExp): void => void this.allowed.push(pattern);

  async over(context: BrowserContext, origin: string): Promise<void> {
    await context.addInitScript(() => {
      addEventListener('securitypolicyviolation', (event) => console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`));
    });
    context.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') this.seen.push(`${message.type()}: ${message.text()} (${message.location().url})`);
    });
    context.on('weberror', (error) => this.seen.push(`thrown: ${error.error().stack ?? error.error().message}`));
    context.on('request', (request) => {
      if (!request.url().startsWith(`${origin}/`) && !/^(data|blob|about):/.test(request.url())) this.seen.push(`left the origin: ${request.url()}`);
    });
  }
  get problems(): string[] {
    return this.seen.filter((problem) => !this.allowed.some((pattern) => pattern.test(problem)));
  }
}

type Fixtures = {
  watch: Watch;
  /** Takes an error that the test brings about. */
  allow: (pattern: RegExp) => void;
  site: Site;
  /** A profile of its own; more of them with `profile`. */
  context: BrowserContext;
  page: Page;
  profile: (options?: BrowserContextOptions) => Promise<BrowserContext>;
};

export const test = base.extend<Fixtures>({
  watch: async ({}, use) => {
    const watch = new Watch();
    await use(watch);
    expect(watch.problems).toEqual([]);
  },
  allow: async ({ watch }, use) => use(watch.allow),
  site: async ({}, use) => {
    const site = await new Site().start();
    await use(site);
    await site.stop();
  },
  profile: async ({ site, watch }, use) => {
    const made: BrowserContext[] = [];
    await use(async (options = {}) => {
      const context = await (await launch()).newContext({ viewport: { width: 390, height: 844 }, ...options });
      await watch.over(context, site.origin);
      if (options.serviceWorkers === 'block') watch.allow(/registration blocked by Playwright/);
      made.push(context);
      return context;
    });
    for (const context of made) await context.close();
  },
  context: async ({ profile }, use) => use(await profile()),
  page: async ({ context }, use) => use(await context.newPage()),
});

/** Waits until the whole edition is on the device and answers for this page. */
export const untilKept = async (page: Page): Promise<void> => {
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated', undefined, { timeout: 60_000 });
};
