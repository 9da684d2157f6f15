/** How the scripts of the pages are cut into files. */
import type { Plugin } from 'vite';

const helper = '\0vite/preload-helper.js';

/**
 * Parts loaded when asked for, without the bundler's preloading: the service worker holds every file already, none of
 * these parts brings styles of its own, and the helper would cost each page 0.8 KB.
 */
export const plainLazyParts = (): Plugin => ({
  name: 'plain-lazy-parts',
  enforce: 'pre',
  load: (id) => (id === helper ? 'export const __vitePreload = (load) => load();' : undefined),
});

/** What every page loads before the reader acts comes as one file: six small ones pack half a kilobyte worse. */
export const oneFrame = {
  output: {
    codeSplitting: {
      groups: [{ name: 'frame', test: /src[\\/](device|layouts)[\\/]|src[\\/]worker[\\/](register|device)\.ts|preload-helper/ }],
    },
  },
};
