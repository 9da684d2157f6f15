/** How the scripts of the pages are cut into files. */
import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

const helper = '\0vite/preload-helper.js';

/**
 * Parts loaded when asked for, without the bundler's preloading: the service worker holds every file already, none of
 * these parts brings styles of its own, and the helper would cost each page 0.8 KB.
 */
export const plainLazyParts = (): Plugin => ({
  name: 'plain-lazy-parts',
  enforce: 'pre',
  // The list of what would be preloaded goes with it.
  configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
  load: (id) => (id === helper ? 'export const __vitePreload = (load) => load();' : undefined),
});

/** What every page loads before the reader acts comes as one file: six small ones pack half a kilobyte worse. */
export const oneFrame = {
  output: {
    codeSplitting: {
      groups: [{ name: 'frame', test: /src[\\/](device[\\/](store|settings|progress)\.ts|layouts[\\/])|src[\\/]worker[\\/](register|device)\.ts|preload-helper/ }],
    },
  },
};

/** Where the words of the frame stand, and the mark of one group of them. */
const words = /[\\/]content[\\/]interface\.json$/;
const group = /[\\/]content[\\/]interface\.json\?group=(\w+)$/;

/**
 * In the browser each top key of content/interface.json is a module of its own, so that a page carries only the words of
 * the parts it runs. `import { search } from '#content/interface.json'` takes one.
 */
export const wordsByGroup = (): Plugin => ({
  name: 'words-by-group',
  enforce: 'pre',
  applyToEnvironment: ({ name }) => name === 'client',
  resolveId: (id) => (group.test(id) ? id : undefined),
  load(id) {
    const [, name] = group.exec(id) ?? [];
    const file = id.replace(/\?.*$/, '');
    if (!words.test(file)) return undefined;
    this.addWatchFile(file);
    const all = JSON.parse(readFileSync(file, 'utf8')) as Record<string, unknown>;
    const code = name
      ? `export default JSON.parse(${JSON.stringify(JSON.stringify(all[name]))});`
      : Object.keys(all).map((key) => `export { default as ${key} } from ${JSON.stringify(`${file}?group=${key}`)};`).join('\n');
    return { code, moduleType: 'js', moduleSideEffects: false };
  },
});
