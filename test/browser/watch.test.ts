/** The harness itself: a page that misbehaves must not pass. */
import { expect, launch, Site, test as plain, Watch } from './harness.ts';

const misbehaving: [what: string, body: string, seen: RegExp][] = [
  ['writes an error', '<script>console.error("broken")</script>', /broken/],
  ['throws', '<script>throw new Error("thrown here")</script>', /thrown here/],
  [
    'runs what its policy does not name',
    '<meta http-equiv="content-security-policy" content="script-src \'self\'"><script>1</script>',
    /policy: script-src/,
  ],
  ['asks another origin', '<img src="http://127.0.0.1:9/mark.png">', /left the origin/],
];

plain.for(misbehaving)('a page that %s is seen', async ([, body, seen], { site }) => {
  await site.restart({ instead: () => ({ status: 200, body: `<!doctype html><head>${body}</head>` }) });
  const watch = new Watch();
  const context = await (await launch()).newContext();
  await watch.over(context, site.origin);
  const page = await context.newPage();
  await page.goto(site.at('/'));
  await expect.poll(() => watch.problems.join('\n')).toMatch(seen);
  await context.close();
});

plain('a stopped server refuses, a restarted one has the same address', async () => {
  const site = await new Site().start();
  const home = site.at('/');
  await site.stop();
  await expect(fetch(home)).rejects.toThrow();
  await site.restart();
  expect((await fetch(home)).status).toBe(200);
  expect(site.at('/')).toBe(home);
  await site.stop();
});
