/** The plan from above: true to scale, turned as its bearings are, clean with three limbs and with none that fits, labels apart. */
import { describe, expect, it } from 'vitest';
import { invented, changed } from '../core/plan/invented.ts';
import { type Plan, turnedBy } from '#core/plan/facts.ts';
import { workPlan } from '#core/plan/work.ts';
import { clipped, edgePoint } from '#drawings/kit/clip.ts';
import { Drawing } from '#drawings/plan/Drawing.tsx';
import { geometry, type Seen } from '#drawings/plan/geometry.ts';
import { sceneOf } from '#drawings/plan/scene.ts';
import { expectDrawn, expectSvg, overlaps, pathsOf, phone, pointsOf, wide, wordsOf } from './kit.ts';

const words = wordsOf('plan', 'plan');
const tall = { width: 358, height: 300 };
const seenOf = (plan: Plan, chosen: number | null = 0): Seen => ({ plan, work: workPlan(plan), chosen });
const draw = (plan: Plan, chosen: number | null = 0, box = tall) => geometry(seenOf(plan, chosen), { face: 'plan', labels: words.labels }, box);
const far = (a: readonly [number, number], b: readonly [number, number]) => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe('the scene', () => {
  const { limbs } = sceneOf(invented, workPlan(invented));
  it('has the worker as far from plumb under the cut as they stand, at their bearing', () => {
    for (const { feet, cuts, standOff } of limbs) expect(far(feet!, cuts.at(-1)!)).toBeCloseTo(standOff, 9);
    const [x, y] = limbs[2]!.feet!;
    // The dead limb: cut 0.3 m out at 9 o'clock, the worker 1.6 m from there at 6.
    expect([x, y]).toEqual([expect.closeTo(-0.3, 9), expect.closeTo(-1.6, 9)]);
  });
  it('keeps the worker out of every landing of the limb they cut', () => {
    for (const { feet, cuts, landings } of limbs) {
      landings.forEach((outline, i) => {
        const way = Math.atan2(feet![0] - cuts[i]![0], feet![1] - cuts[i]![1]);
        const near = outline.toSorted((a, b) => turn(a, cuts[i]!, way) - turn(b, cuts[i]!, way))[0]!;
        // The last piece's worker; further out they stand further out too.
        if (i === landings.length - 1) expect(far(near, cuts[i]!)).toBeLessThanOrEqual(far(feet!, cuts[i]!) + 0.15);
      });
    }
  });
  it('turns as one', () => {
    const turned = sceneOf(turnedBy(invented, 90), workPlan(turnedBy(invented, 90))).limbs;
    // A quarter turn clock-wise: up the page becomes to the right.
    turned.forEach(({ tip: [x, y] }, i) => expect([x, y]).toEqual([expect.closeTo(limbs[i]!.tip[1], 9), expect.closeTo(-limbs[i]!.tip[0], 9)]));
  });
});
const turn = (p: readonly [number, number], c: readonly [number, number], way: number): number => {
  const by = Math.abs(Math.atan2(p[0] - c[0], p[1] - c[1]) - way);
  return Math.min(by, 2 * Math.PI - by);
};

const cases: [string, Plan][] = [
  ['the invented plan', invented],
  ['a line close by', changed((p) => (p.facts.lineOffset.value = 6))],
  ['a line far off, aslant', changed((p) => Object.assign(p.bearings, { line: 300 }))],
  ['a line whose voltage nobody knows', changed((p) => Object.assign(p, { choices: { ...p.choices, toldBy: 'nobody' }, facts: { ...p.facts, lineOffset: { value: 6, got: 'measured' } } }))],
  ['no line, level ground', changed((p) => (p.choices.wires = 'no', p.facts.groundSlope.value = 0))],
  ['no place to stand', changed((p) => (p.facts.margin.value = 4))],
  ['a wood nothing lands of', changed((p) => Object.assign(p.limbs[0].facts, { cutHeight: { value: 1.2, got: 'measured' }, limbLength: { value: 8, got: 'measured' }, limbAngle: { value: -60, got: 'measured' } }))],
];
describe('the plan, drawn', () => {
  it.each(cases)('%s: clean, on the sheet, labels apart', (_, plan) => {
    for (const chosen of [0, 1, 2, null]) for (const box of [tall, wide, phone]) {
      const placed = draw(plan, chosen, box);
      expectDrawn(placed);
      expect(overlaps(placed)).toEqual([]);
      for (const mark of ['line', 'steep', 'landing']) for (const d of pathsOf(placed, mark)) for (const [x, y] of pointsOf(d.replaceAll('Z', ''))) {
        expect(x >= -1 && y >= -1 && x <= box.width + 1 && y <= box.height + 1, `${mark} leaves the sheet`).toBe(true);
      }
    }
  });
  it('a line close by stands in its band, true to scale', () => {
    const placed = draw(cases[1]![1]);
    const band = pointsOf(pathsOf(placed, 'limit')[0]!.replaceAll('Z', ''));
    const [line] = pointsOf(pathsOf(placed, 'line')[0]!.replaceAll('Z', ''));
    // The line lies up the page: the band's near edge is ten feet and a metre under it.
    expect((Math.max(...band.map(([, y]) => y)) - line![1]) / placed.frame.scale).toBeCloseTo(10 * 0.3048 + 1, 1);
  });
  it('a limb put in since has no figures yet, and is not drawn', () => {
    const more = changed((p) => p.limbs.push(p.limbs[0]));
    expect(sceneOf(more, workPlan(invented)).limbs).toHaveLength(3);
    expectDrawn(geometry({ plan: more, work: workPlan(invented), chosen: 3 }, { face: 'plan', labels: words.labels }, tall));
  });
  it('handles turn what they name, wherever they are dragged to, all the way round', () => {
    const placed = draw(invented, 1);
    expect(placed.handles.map(({ id }) => id)).toEqual(['line', 'downhill', 'points', 'worker']);
    for (const handle of placed.handles) {
      expect(handle.at([handle.x, handle.y])).toBe(handle.value % 360);
      expect(handle.move(handle.min)).toEqual({ [handle.id]: 355 });
      expect(handle.move(360)).toEqual({ [handle.id]: 0 });
    }
    expect(draw(invented, null).handles.map(({ id }) => id)).toEqual(['line', 'downhill']);
  });
  it('is an image with its words', () => {
    const svg = expectSvg(<Drawing id="t" words={words} seen={seenOf(invented)} box={tall} onMove={() => undefined} />, words);
    expect(svg.match(/role="slider"/g)).toHaveLength(4);
    expectSvg(<Drawing id="p" words={words} seen={seenOf(invented, null)} box={tall} />, words);
  });
});

describe('what is cut to the sheet', () => {
  const box = { width: 10, height: 10 };
  it('a square over a corner, one inside, one outside, one all round', () => {
    expect(clipped([[-5, -5], [5, -5], [5, 5], [-5, 5]], box).toSorted()).toEqual([[0, 0], [0, 5], [5, 0], [5, 5]].toSorted());
    expect(clipped([[1, 1], [2, 1], [2, 2]], box)).toHaveLength(3);
    expect(clipped([[11, 1], [12, 1], [12, 2]], box)).toEqual([]);
    expect(clipped([[-9, -9], [19, -9], [19, 19], [-9, 19]], box).toSorted()).toEqual([[0, 0], [0, 10], [10, 0], [10, 10]].toSorted());
  });
  it('a ray stops short of the edge it meets', () => {
    expect(edgePoint([5, 5], [1, 0], box, 2)).toEqual([8, 5]);
    expect(edgePoint([5, 5], [0, -1], box, 2)).toEqual([5, 2]);
    expect(edgePoint([5, 6], [Math.SQRT1_2, Math.SQRT1_2], box, 2)).toEqual([expect.closeTo(7, 9), expect.closeTo(8, 9)]);
    expect(edgePoint([11, 5], [1, 0], box, 2)).toEqual([11, 5]);
  });
});
