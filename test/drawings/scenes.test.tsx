import { describe, expect, it } from 'vitest';
import { figureOf } from '#components/figure.ts';
import type { Box, Placed, Point } from '#drawings/kit/placed.ts';
import { Drawing as Basket } from '#drawings/basket/Drawing.tsx';
import { geometry as basket } from '#drawings/basket/geometry.ts';
import { Drawing as SawParts } from '#drawings/saw-parts/Drawing.tsx';
import { geometry as sawParts, type Face as Part } from '#drawings/saw-parts/geometry.ts';
import { Drawing as Site } from '#drawings/site/Drawing.tsx';
import { geometry as site, type Face as Ground } from '#drawings/site/geometry.ts';
import { Drawing as TreeSigns } from '#drawings/tree-signs/Drawing.tsx';
import { geometry as treeSigns, type Face as Look } from '#drawings/tree-signs/geometry.ts';
import { expectDrawn, expectSvg, numbersOf, overlaps, pathsOf, pointsOf, wordsOf } from './kit.ts';

const views: readonly (readonly [id: string, view: string])[] = [
  ...['plan', 'crew', 'road', 'help', 'fuel'].map((view) => ['site', view] as const),
  ...['before', 'after'].map((view) => ['tree-signs', view] as const),
  ['basket', 'along'], ['saw-parts', 'chain'], ['saw-parts', 'hoses'],
];
const draw = (id: string, view: string, box: Box = figureOf(id, view).box): Placed => {
  const { labels } = wordsOf(id, view);
  return id === 'site' ? site({ face: view as Ground, labels }, box)
    : id === 'tree-signs' ? treeSigns({ face: view as Look, labels }, box)
      : id === 'basket' ? basket({ face: 'along', labels }, box)
        : sawParts({ face: view as Part, labels }, box);
};
const svg = (id: string, view: string) => {
  const [box, words] = [figureOf(id, view).box, wordsOf(id, view)];
  if (id === 'site') return <Site id="s" face={view as Ground} box={box} words={words} />;
  if (id === 'tree-signs') return <TreeSigns id="t" face={view as Look} box={box} words={words} />;
  return id === 'basket' ? <Basket id="b" face="along" box={box} words={words} /> : <SawParts id="p" face={view as Part} box={box} words={words} />;
};
const middle = (points: readonly Point[]): Point => [points.reduce((sum, p) => sum + p[0], 0) / points.length, points.reduce((sum, p) => sum + p[1], 0) / points.length];

describe.each(views)('%s, %s', (id, view) => {
  it('is drawn clean, its labels apart and on the sheet', () => {
    for (const wide of [1, 1.4, 1.75]) {
      const { width, height } = figureOf(id, view).box;
      const placed = draw(id, view, { width: width * wide, height: Math.round(height * wide) });
      expectDrawn(placed);
      expect(overlaps(placed), `${wide}`).toEqual([]);
    }
    expectSvg(svg(id, view), wordsOf(id, view));
  });
});

describe('What the pictures say', () => {
  it('nothing of the basket, its boom or its machine is in the fall path; the crossed-out basket is', () => {
    const placed = draw('basket', 'along');
    const [a, b, c, d] = pointsOf(pathsOf(placed, 'landing')[0]!) as [Point, Point, Point, Point];
    /** Left edge of the fall path at a height of the page. */
    const edge = (y: number) => a[0] + ((d[0] - a[0]) * (y - a[1])) / (d[1] - a[1]);
    for (const mark of ['platform', 'vessel']) {
      for (const path of pathsOf(placed, mark)) {
        const xs = numbersOf(path).filter((_, i) => i % 2 === 0).slice(0, 4);
        expect(Math.max(...xs)).toBeLessThan(edge(d[1]));
      }
    }
    const [x, y] = middle(pointsOf(pathsOf(placed, 'ghost')[0]!));
    expect(x).toBeGreaterThan(edge(y));
    expect(x).toBeLessThan(b[0] + ((c[0] - b[0]) * (y - b[1])) / (c[1] - b[1]));
  });

  it('the operator stands square beside the limb and outside the drop zone, the spotter within sight on the left', () => {
    const placed = draw('site', 'plan');
    const pole = pointsOf(pathsOf(placed, 'pole').at(-1)!.split('A')[0]!);
    const stem = numbersOf(pathsOf(placed, 'stem')[0]!);
    const drop = numbersOf(pathsOf(placed, 'landing')[0]!);
    const ys = drop.filter((_, i) => i % 2 === 1);
    expect(Math.abs(pole[0]![0] - pole[1]![0])).toBeLessThan(1);
    expect(pole[0]![1]).toBeGreaterThan(Math.max(...ys));
    expect(pole[0]![0]).toBeGreaterThan(stem[0]!);
  });

  it('the look before names more than the look after, and both name what hangs', () => {
    const said = (view: string) => draw('tree-signs', view).labels.map((l) => l.lines.metric.join(' '));
    expect(said('before').length).toBeGreaterThan(said('after').length);
    for (const view of ['before', 'after']) expect(said(view).some((text) => /hung|hangs/.test(text))).toBe(true);
  });
});
