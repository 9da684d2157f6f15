/** Finds a Chromium to test in, or gets one, or says what to do. */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';

const NAMES = ['chromium', 'chromium-browser'];

const onPath = (name: string): string | undefined =>
  (process.env['PATH'] ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find((file) => existsSync(file));

const system = () => NAMES.map(onPath).find((file) => file !== undefined);

const playwrights = (): string | undefined => {
  const file = chromium.executablePath();
  return existsSync(file) ? file : undefined;
};

const isRoot = process.getuid?.() === 0;

const installed = (): string | undefined => {
  if (!isRoot || !onPath('apt-get')) return undefined;
  console.log('No Chromium found: installing the one of this Debian with apt-get.');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  execFileSync('apt-get', ['update', '-q'], { env, stdio: 'inherit' });
  execFileSync('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium'], { env, stdio: 'inherit' });
  return system();
};

const HELP = `The browser tests need a Chromium, and none was found.
Do one of these, then run the tests again:
  - set CHROMIUM_PATH to the program file of a Chromium-based browser on this machine
  - install one: "apt-get install chromium" (as root, on Debian), or the package of your system
  - npx playwright-core install chromium`;

/** @throws with what to do, where none is there and none can be installed. */
export const findBrowser = (): string => {
  const named = process.env['CHROMIUM_PATH'];
  if (named) {
    if (!existsSync(named)) throw new Error(`CHROMIUM_PATH says ${named}, but there is no such file.`);
    return named;
  }
  const found = system() ?? playwrights() ?? installed();
  if (!found) throw new Error(HELP);
  return found;
};

/** As root Chromium's own sandbox cannot start. */
export const LAUNCH_ARGUMENTS = ['--disable-gpu', '--disable-background-networking', ...(isRoot ? ['--no-sandbox'] : [])];
