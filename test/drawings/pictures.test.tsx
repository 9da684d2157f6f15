import { describe, expect, it } from 'vitest';
import { figureOf } from '#components/figure.ts';
import { holds, type Held } from '#drawings/bending/faces.ts';
import { Drawing as Bending } from '#drawings/bending/Drawing.tsx';
import { geometry as bending } from '#drawings/bending/geometry.ts';
import { Drawing as Node } from '#drawings/node/Drawing.tsx';
import { geometry as node } from '#drawings/node/geometry.ts';
import { Drawing as Palm } from '#drawings/palm/Drawing.tsx';
import { geometry as palm } from '#drawings/palm/geometry.ts';
import { Drawing as ThreeCuts } from '#drawings/three-cuts/Drawing.tsx';
import { geometry as threeCuts } from '#drawings/three-cuts/geometry.ts';
import { Drawing as Union } from '#drawings/union/Drawing.tsx';
import { geometry as union, type Face as UnionFace } from '#drawings/union/geometry.ts';
import { expectDrawn, expectSvg, overlaps, pathsOf, pointsOf, wordsOf } from './kit.ts';

const boxes = [358, 480, 620].map((width) => ({ width, height: Math.round(width * 0.72) }));
const unionFaces: readonly UnionFace[] = ['collar', 'no-collar', 'flush', 'codominant'];
const [box] = boxes;
const labelsOf = (id: string, view: string) => wordsOf(id, view).labels;

describe('union, drawn', () => {
  const draw = (face: UnionFace, at = box!) => union({ face, labels: labelsOf('union', face) }, at);

  it('draws every view clean, its labels apart', () => {
    for (const at of boxes) {
      for (const face of unionFaces) {
        expectDrawn(draw(face, at));
        expect(overlaps(draw(face, at)), `${face} ${at.width}`).toEqual([]);
      }
    }
    for (const face of unionFaces) expectSvg(<Union id="u" face={face} box={box!} words={wordsOf('union', face)} />, wordsOf('union', face));
  });

  it('mirrors the ridge about the line of the stem where no collar shows (University of Florida: the mirror angle)', () => {
    const placed = draw('no-collar');
    const fromUpright = ([a, b]: readonly (readonly [number, number])[]) => (Math.atan2(Math.abs(b![0] - a![0]), b![1] - a![1]) * 180) / Math.PI;
    const ridge = pointsOf(pathsOf(placed, 'ridge')[0]!);
    const cut = pointsOf(pathsOf(placed, 'cut')[0]!);
    expect(Math.abs(fromUpright([ridge[0]!, ridge.at(-1)!]) - fromUpright(cut))).toBeLessThan(3);
    expect(ridge.at(-1)![0]).toBeLessThan(ridge[0]![0]);
    expect(cut.at(-1)![0]).toBeGreaterThan(cut[0]![0]);
  });

  it('cuts outside the ridge, and flush only where flush is shown', () => {
    const lean = (face: UnionFace) => {
      const [a, b] = pointsOf(pathsOf(draw(face), 'cut')[0]!);
      return Math.abs(b![0] - a![0]) / Math.abs(b![1] - a![1]);
    };
    expect(lean('flush')).toBeLessThan(0.1);
    expect(lean('collar')).toBeGreaterThan(0.3);
    const ridgeTop = pointsOf(pathsOf(draw('collar'), 'ridge')[0]!)[0]!;
    const [a, b] = pointsOf(pathsOf(draw('collar'), 'cut')[0]!);
    const at = a![0] + ((b![0] - a![0]) * (ridgeTop[1] - a![1])) / (b![1] - a![1]);
    expect(at).toBeGreaterThan(ridgeTop[0]);
    // The flush cut is the longest.
    const long = (face: UnionFace) => {
      const [p, q] = pointsOf(pathsOf(draw(face), 'cut')[0]!);
      return Math.hypot(q![0] - p![0], q![1] - p![1]);
    };
    expect(long('flush')).toBeGreaterThan(long('collar') * 1.4);
  });
});

describe('three cuts, drawn', () => {
  const draw = (at = box!) => threeCuts({ face: 'side', labels: labelsOf('three-cuts', 'side') }, at);

  it('is clean, its labels apart', () => {
    for (const at of boxes) {
      expectDrawn(draw(at));
      expect(overlaps(draw(at)), String(at.width)).toEqual([]);
    }
    expectSvg(<ThreeCuts id="t" face="side" box={box!} words={wordsOf('three-cuts', 'side')} />, wordsOf('three-cuts', 'side'));
  });

  it('puts the undercut under, the release cut over and nearer the stem, the last cut nearest', () => {
    const [undercut, release, last] = draw().badges;
    expect([undercut?.text, release?.text, last?.text]).toEqual(['1', '2', '3']);
    expect(undercut!.y).toBeGreaterThan(release!.y);
    expect(release!.x).toBeLessThan(undercut!.x);
    expect(last!.x).toBeLessThan(release!.x);
  });
});

describe('node and palm, drawn', () => {
  it('are clean, their labels apart', () => {
    for (const at of boxes) {
      for (const [id, placed] of [['node', node({ face: 'cuts', labels: labelsOf('node', 'cuts') }, at)], ['palm', palm({ face: 'line', labels: labelsOf('palm', 'line') }, at)]] as const) {
        expectDrawn(placed);
        expect(overlaps(placed), `${id} ${at.width}`).toEqual([]);
      }
    }
    expectSvg(<Node id="n" face="cuts" box={box!} words={wordsOf('node', 'cuts')} />, wordsOf('node', 'cuts'));
    expectSvg(<Palm id="p" face="line" box={box!} words={wordsOf('palm', 'line')} />, wordsOf('palm', 'line'));
  });

  it('the right cut slants down from the bud, and lies nearer to it than the one too far out', () => {
    const placed = node({ face: 'cuts', labels: labelsOf('node', 'cuts') }, box!);
    const [[bx, by], [ax, ay]] = pointsOf(pathsOf(placed, 'cut')[0]!) as unknown as [[number, number], [number, number]];
    expect(bx).toBeGreaterThan(ax);
    expect(by).toBeLessThan(ay);
    const [far] = pathsOf(placed, 'othercut').map((d) => pointsOf(d)[0]![1]);
    expect(far).toBeLessThan(by);
  });

  it('the palm’s line is level', () => {
    const [[, from], [, to]] = pointsOf(pathsOf(palm({ face: 'line', labels: labelsOf('palm', 'line') }, box!), 'limit')[0]!) as unknown as [[number, number], [number, number]];
    expect(from).toBe(to);
  });
});

describe('bending, drawn', () => {
  it('is clean, its labels apart', () => {
    for (const at of boxes) {
      const placed = bending({ face: 'sides', labels: labelsOf('bending', 'sides') }, at);
      expectDrawn(placed);
      expect(overlaps(placed), String(at.width)).toEqual([]);
    }
    expectSvg(<Bending id="b" face="sides" box={box!} words={wordsOf('bending', 'sides')} />, wordsOf('bending', 'sides'));
  });

  it('keeps each name over its own limb, at the height a chapter gives it', () => {
    const { labels } = wordsOf('bending', 'sides');
    const at = figureOf('bending', 'sides').box;
    const placed = bending({ face: 'sides', labels }, at);
    const rect = (name: string) => placed.labels.find((l) => l.lines.metric.join(' ') === labels[name])!.rect;
    for (const [i, name] of ['free', 'resting', 'hung', 'held'].entries()) {
      expect(rect(name).x, name).toBeGreaterThanOrEqual(i % 2 === 0 ? 0 : at.width / 2 - 2);
      expect(rect(name).x + rect(name).width, name).toBeLessThanOrEqual(i % 2 === 0 ? at.width / 2 : at.width);
      expect(rect(name).y > at.height * 0.35, name).toBe(i > 1);
    }
  });

  it('draws every picture in the box that a chapter gives it, nothing over its edge', () => {
    for (const [id, views] of Object.entries({ union: unionFaces, 'three-cuts': ['side'], bending: ['sides'] })) {
      for (const view of views) {
        const { box: at, words } = figureOf(id, view);
        const placed = id === 'union' ? union({ face: view as UnionFace, labels: words.labels }, at) : id === 'bending' ? bending({ face: 'sides', labels: words.labels }, at) : threeCuts({ face: 'side', labels: words.labels }, at);
        const points = placed.shapes.filter((s) => !s.d.includes('A')).flatMap((s) => s.d.match(/(?<=[MLCQ ,])-?[\d.]+,-?[\d.]+/g) ?? []).map((pair) => pair.split(',').map(Number));
        const [xs, ys] = [points.map((p) => p[0]!), points.map((p) => p[1]!)];
        expect(Math.min(...xs), `${id} ${view}`).toBeGreaterThanOrEqual(-1);
        expect(Math.min(...ys), `${id} ${view}`).toBeGreaterThanOrEqual(-9);
        expect(Math.max(...xs), `${id} ${view}`).toBeLessThanOrEqual(at.width + 1);
        expect(Math.max(...ys), `${id} ${view}`).toBeLessThanOrEqual(at.height + 1);
      }
    }
  });

  /**
   * Bending moment of an evenly loaded beam of span 1 and load 1, sagging positive (upper face squeezed): beam tables in
   * statics textbooks, e.g. the US engineers' steel manual, cases of a cantilever, a propped cantilever, a simple beam,
   * and a beam fixed at both ends.
   */
  const moments: { readonly [H in Held]: (x: number) => number } = {
    free: (x) => -((1 - x) ** 2) / 2,
    resting: (x) => (3 * (1 - x)) / 8 - (1 - x) ** 2 / 2,
    hung: (x) => (x * (1 - x)) / 2,
    held: (x) => (6 * x - 1 - 6 * x * x) / 12,
  };

  for (const [name, { stretches, supports, cutAt }] of Object.entries(holds)) {
    it(`names the squeezed face as the beam tables do: ${name}`, () => {
      const [a, b] = supports;
      for (const { from, to, squeezed } of stretches) {
        for (let k = 1; k < 20; k += 1) {
          const moment = moments[name as Held]((from + ((to - from) * k) / 20 - a) / (b - a));
          expect(moment > 0 ? 'upper' : 'under').toBe(squeezed);
        }
      }
      expect(stretches.some(({ from, to }) => from < cutAt && cutAt < to)).toBe(true);
    });
  }
});
