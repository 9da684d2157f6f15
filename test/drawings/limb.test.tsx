/** Drop zone and order of cuts, drawn: whole over the range of the inputs, true to scale, faces by the sign of the moment. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, example } from '#core/registry.ts';
import { geometry as cuts, type Inputs as CutInputs } from '#drawings/cut-order/geometry.ts';
import { type Face, geometry as drop, type Inputs as DropInputs, type Moment } from '#drawings/drop-zone/geometry.ts';
import { lastPose, sceneOf } from '#drawings/drop-zone/scene.ts';
import { geometry as stand, type Inputs as StandInputs } from '#drawings/stance/geometry.ts';
import { anyInputs, expectDrawn, extremes, pathsOf, phone, pointsOf, wordsOf } from './kit.ts';

const dropLabels = wordsOf('drop-zone', 'side').labels;
const cutLabels = wordsOf('cut-order', 'side').labels;
const dropped = (change: object = {}, face: Face = 'side', moment: Moment | null = null) => {
  const inputs = { ...example('drop-zone'), ...change } as DropInputs;
  return drop(inputs, evaluate('drop-zone', inputs, 'exact'), { face, labels: dropLabels, moment }, phone);
};
const sawn = (change: object = {}) => {
  const inputs = { ...example('cut-order'), ...change } as CutInputs;
  return cuts(inputs, evaluate('cut-order', inputs, 'exact'), { face: 'side', labels: cutLabels }, phone);
};

describe('drop zone, drawn', () => {
  it.each(['side', 'plan'] as const)('%s holds nothing but numbers over the whole range of the inputs', (face) => {
    fc.assert(fc.property(anyInputs('drop-zone'), fc.integer({ min: 0, max: lastPose }), (inputs, at) => {
      const outcome = evaluate('drop-zone', inputs, 'judged');
      const moment: Moment = { way: at % 2 === 0 ? 'inward' : 'outward', at };
      if (outcome.kind === 'answer') expectDrawn(drop(inputs as DropInputs, outcome, { face, labels: dropLabels, moment }, phone));
    }), { numRuns: 60 });
  });
  it.each(extremes('drop-zone'))('$title', ({ inputs, outcome }) => {
    if (outcome.kind === 'answer') expectDrawn(drop(inputs as DropInputs, outcome, { face: 'side', labels: dropLabels, moment: null }, phone));
  });

  it('both falls begin at the cut, keep the limb\'s length, and end where the limb may lie', () => {
    const inputs = { ...example('drop-zone'), release: 'hangs' } as DropInputs;
    const scene = sceneOf(inputs, evaluate('drop-zone', inputs, 'exact'));
    for (const way of ['inward', 'outward'] as const) {
      const poses = scene.poses[way];
      expect(poses).toHaveLength(lastPose + 1);
      expect(poses[0]!.butt).toEqual([0, 3.5]);
      for (const { butt, tip } of poses) expect(Math.hypot(tip[0] - butt[0], tip[1] - butt[1])).toBeCloseTo(2, 6);
      const end = poses[lastPose]!;
      const far = way === 'inward' ? -Math.min(end.butt[0], end.tip[0]) : Math.max(end.butt[0], end.tip[0]);
      expect(Math.abs(far - scene[way])).toBeLessThan(0.1);
    }
  });
  it('what only the stem would stop is marked apart', () => {
    expect(pathsOf(dropped({ cutToStem: 0.4 }), 'steep')).toHaveLength(1);
    expect(pathsOf(dropped({ cutToStem: 5 }), 'steep')).toHaveLength(0);
  });
  it('what passes between two heights is drawn at those heights, as far as it is told', () => {
    const given = { basketLow: 2, basketHigh: 3.4, limbAngle: 0 };
    const inputs = { ...example('drop-zone'), ...given } as DropInputs;
    const scene = sceneOf(inputs, evaluate('drop-zone', inputs, 'exact'));
    const placed = dropped(given);
    const uprights = pathsOf(placed, 'need').map(pointsOf);
    const [back, out] = uprights.map((points) => points[0]!).sort((a, b) => a[0] - b[0]);
    // The cut, 3.5 m up, stands plumb over nought; the ground is level.
    const cut = placed.handles.find((h) => h.id === 'cutHeight')!;
    expect(out![0] - cut.x).toBeGreaterThan(0);
    expect((cut.x - back![0]) / (out![0] - cut.x)).toBeCloseTo(scene.passingIn / scene.passingOut, 2);
    const heights = uprights[0]!.map(([, y]) => y - cut.y);
    expect(Math.max(...heights) / Math.min(...heights)).toBeCloseTo((3.5 - 2) / (3.5 - 3.4), 0);
    expect(pathsOf(dropped({ basketLow: 20, basketHigh: 22 }), 'need')).toHaveLength(0);
  });
  it('what can be dragged lies where its figure says', () => {
    const placed = dropped();
    for (const handle of placed.handles) expect(handle.at([handle.x, handle.y])).toBeCloseTo(handle.value, 1);
  });
});

describe('order of cuts, drawn', () => {
  it('holds nothing but numbers over the whole range of the inputs', () => {
    fc.assert(fc.property(anyInputs('cut-order'), (inputs) => {
      const outcome = evaluate('cut-order', inputs, 'judged');
      if (outcome.kind === 'answer') expectDrawn(cuts(inputs as CutInputs, outcome, { face: 'side', labels: cutLabels }, phone));
    }), { numRuns: 150 });
  });
  it('a free limb has one squeezed face, one held at both ends has three stretches', () => {
    // One more of each in the key.
    expect(pathsOf(sawn(), 'squeezed')).toHaveLength(2);
    expect(pathsOf(sawn({ support: 'heldBoth' }), 'squeezed')).toHaveLength(4);
  });
  it('numbers the cuts, or asks where either face may close', () => {
    expect(sawn().badges.map((b) => b.text)).toEqual(['1', '2']);
    expect(sawn({ support: 'tipResting', cutAt: 1.5 }).badges.map((b) => b.text)).toEqual(['?', '?']);
  });
  it('shows where the moment turns over when it is near', () => {
    expect(pathsOf(sawn({ support: 'heldBoth', cutAt: 0.55 }), 'othercut')).toHaveLength(1);
    expect(pathsOf(sawn(), 'othercut')).toHaveLength(0);
  });
  it('the cut can be dragged to where its figure says', () => {
    const [handle] = sawn({ support: 'hungBoth', cutAt: 1.2, limbAngle: 0 }).handles;
    expect(Math.abs(handle!.at([handle!.x, handle!.y]) - 1.2)).toBeLessThanOrEqual(0.05);
  });
});

describe('the drop zone carried on to where to stand', () => {
  /** A closed outline as the share of its own length that each of its sides has: the same for the same shape at any scale and turn. */
  const shapeOf = (path: string): number[] => {
    const points = pointsOf(path);
    const sides = points.map(([x, y], i) => { const [a, b] = points[(i + 1) % points.length]!; return Math.hypot(a - x, b - y); });
    const whole = sides.reduce((sum, side) => sum + side);
    return sides.map((side) => side / whole);
  };
  const big = { width: 4000, height: 4000 };
  const inputs = { ...example('drop-zone') } as DropInputs;
  const outcome = evaluate('drop-zone', inputs, 'judged');
  const planOn = (name: string): number => {
    const found = (outcome as { outputs: Record<string, { planOn: number }> }).outputs[name]!;
    return found.planOn;
  };
  const given = { ...example('stance'), landingReach: planOn('beside'), landingOut: planOn('outward') + inputs.margin, landingBack: planOn('inward') + inputs.margin, landingSwing: inputs.swing };
  const standing = (change: object = {}) => {
    const all = { ...given, ...change } as StandInputs;
    return stand(all, evaluate('stance', all, 'judged'), { face: 'plan', labels: wordsOf('stance', 'plan').labels }, big);
  };
  it('draws the same outline there as here', () => {
    const here = shapeOf(pathsOf(drop(inputs, outcome, { face: 'plan', labels: dropLabels, moment: null }, big), 'landing')[0]!);
    const there = shapeOf(pathsOf(standing(), 'landing')[0]!);
    expect(there).toHaveLength(here.length);
    expect(here.length).toBeGreaterThan(100);
    here.forEach((side, i) => expect(there[i]!).toBeCloseTo(side, 3));
    expectDrawn(standing());
  });
  it('an old link, with the reach alone, draws the reach alone; so does one who does not stand beside', () => {
    const alone = pathsOf(standing({ landingOut: null, landingBack: null, landingSwing: null }), 'landing')[0]!;
    expect(pathsOf(standing({ landingSwing: null }), 'landing')[0]).not.toBe(alone);
    expect(pointsOf(pathsOf(standing({ standing: 'stemSide' }), 'landing')[0]!).length).toBeLessThan(20);
    expect(pointsOf(alone).length).toBeLessThan(20);
  });
});
