/**
 * Serves the built handbook as a plain static host would: the files, `404.html` for what is not there, the headers of
 * `_headers`. `node src/build/serve.ts` stays in the foreground; PORT and BASE_PATH as in the README.
 */
import { existsSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sirv from 'sirv';
import { basePath } from './base.mjs';
import { headersFor, parseHeaders } from './header-rules.ts';

export type ServeOptions = {
  dir: string;
  /** 0 takes any free port. */
  port: number;
  /** With slashes at both ends. */
  base?: string;
  /** Sent with every answer on top of those in `_headers`. */
  extraHeaders?: Record<string, string>;
  /** Called with the path under the base before a file is looked up; what it returns is sent in the file's place. */
  instead?: (path: string) => { status: number; body: string } | undefined;
};
export type Served = { address: string; port: number; close: () => Promise<void> };

/** @throws when the port is taken or the folder holds no built handbook. */
export const serve = async ({ dir, port, base = '/', extraHeaders = {}, instead }: ServeOptions): Promise<Served> => {
  if (!existsSync(join(dir, 'index.html'))) throw new Error(`Nothing is built in ${dir}: run "npm run build" first.`);
  const headersFile = join(dir, '_headers');
  const rules = existsSync(headersFile) ? parseHeaders(readFileSync(headersFile, 'utf8')) : [];
  // `dev` looks at the disk at each request, so that a rebuild shows at once.
  const files = sirv(dir, { dev: true, etag: true });

  const server = createServer((request, response) => {
    const [pathname = '/', query] = (request.url ?? '/').split('?');
    const fail = (status: number, body: string) => {
      response.writeHead(status, { 'Content-Type': 'text/html;charset=utf-8' }).end(body);
    };
    if (!pathname.startsWith(base)) return fail(404, `Nothing here. The handbook is at <a href="${base}">${base}</a>.`);

    const path = `/${pathname.slice(base.length)}`;
    for (const [name, value] of [...headersFor(rules, path), ...Object.entries(extraHeaders)]) response.setHeader(name, value);
    const other = instead?.(path);
    if (other) return fail(other.status, other.body);

    request.url = query === undefined ? path : `${path}?${query}`;
    files(request, response, () => {
      const notFound = join(dir, '404.html');
      fail(404, existsSync(notFound) ? readFileSync(notFound, 'utf8') : 'No such page.');
    });
  });

  await new Promise<void>((done, refused) => {
    server.once('error', refused);
    server.listen(port, () => done());
  });
  const taken = (server.address() as AddressInfo).port;
  return {
    address: `http://localhost:${taken}${base}`,
    port: taken,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
};

if (import.meta.main) {
  const port = Number(process.env.PORT ?? 4321);
  try {
    const { address } = await serve({ dir: fileURLToPath(new URL('../../dist', import.meta.url)), port, base: basePath() });
    console.log(`\nStanding Clear is open at ${address}\nStop it with Ctrl+C.`);
  } catch (error) {
    const taken = (error as NodeJS.ErrnoException).code === 'EADDRINUSE';
    console.error(taken ? `Port ${port} is in use. Choose another: PORT=4400 npm start` : (error as Error).message);
    process.exit(1);
  }
}
