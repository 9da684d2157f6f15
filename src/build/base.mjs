// Plain JavaScript, so that astro.config.mjs can read it on any Node.
/**
 * The path the handbook is hosted under, with a slash at both ends, whichever way BASE_PATH was written.
 * @param {string | undefined} path e.g. `handbook`, `/handbook` or `/handbook/`
 */
export const basePath = (path = process.env.BASE_PATH) => `/${(path ?? '').split('/').filter(Boolean).join('/')}/`.replace('//', '/');
