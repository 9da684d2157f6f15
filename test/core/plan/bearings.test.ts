/**
 * What a bearing may be out: plane geometry worked out here, bearing by bearing within the half hour, never finds a line
 * nearer than the plan plans on. And the ways out: worked by hand, led under the limb, led to the line, turned clear.
 */
import { describe, expect, it } from 'vitest';
import { feedClearance } from '#core/plan/clearance.ts';
import type { Fact, Plan } from '#core/plan/facts.ts';
import { planOn } from '#core/plan/feed.ts';
import { findingsOf } from '#core/plan/findings.ts';
import { apartBetween, bearingSlack, mostOffSquare, standingOf } from '#core/plan/turn.ts';
import { isClear } from '#core/plan/ways.ts';
import { workPlan } from '#core/plan/work.ts';
import { changed, invented as plan } from './invented.ts';

const deg = Math.PI / 180;
const cos = (d: number) => Math.cos(d * deg);
const sin = (d: number) => Math.sin(d * deg);
const tan = (d: number) => Math.tan(d * deg);

/** Numbers by chance that are the same at each run. Park and Miller's minimal standard generator. */
const chance = (seed: number) => {
  let state = seed;
  return (from: number, to: number): number => {
    state = (state * 48_271) % 2_147_483_647;
    return from + ((to - from) * state) / 2_147_483_647;
  };
};

describe('half an hour either way', () => {
  it('between two bearings, never less than none nor more than half a turn', () => {
    expect(bearingSlack).toBe(15);
    expect(apartBetween(350, 20)).toEqual({ least: 15, most: 45 });
    expect(apartBetween(90, 95)).toEqual({ least: 0, most: 20 });
    expect(apartBetween(0, 172)).toEqual({ least: 157, most: 180 });
    expect(mostOffSquare(90, 190)).toBe(25);
    expect(mostOffSquare(90, 100)).toBe(90);
  });
  it('no bearing within it brings the line nearer to the cut, or to the feet, than one of what is asked', () => {
    const next = chance(91);
    for (let k = 0; k < 300; k++) {
      const [offset, out, standOff, points, worker] = [next(0, 8), next(0, 5), next(0, 4), next(0, 360), next(0, 360)];
      const one = changed((p) => {
        p.facts.groundSlope = { value: 0, got: 'measured' };
        p.facts.lineOffset = { value: offset, got: 'measured' };
        p.bearings.line = next(0, 360);
        p.limbs[0].facts.cutToStem = { value: out, got: 'measured' };
        Object.assign(p.limbs[0].bearings, { points, worker });
      });
      const fed = feedClearance(one, one.limbs[0]!, { from: 0, length: 1 }, { standOff, poleAngle: 50 }, 3).map((seen) => {
        const level = (seen['lineOffset'] as Fact).value!;
        return { cut: Math.abs(level), feet: Math.abs(level + (seen['standOff'] as number)) };
      });
      const [toCut, toFeet] = (['cut', 'feet'] as const).map((part) => Math.min(...fed.map((at) => at[part]))) as [number, number];
      for (let turn = -15; turn <= 15; turn += 2.5) {
        for (let round = -15; round <= 15; round += 2.5) {
          const cut = offset - out * cos(points + turn - one.bearings.line);
          expect(Math.abs(cut)).toBeGreaterThanOrEqual(toCut - 1e-9);
          expect(Math.abs(cut - standOff * cos(worker + round - one.bearings.line))).toBeGreaterThanOrEqual(toFeet - 1e-9);
        }
      }
    }
  });
  it('no way that the ground falls within it lowers the line, or lifts the cut, more than is allowed for', () => {
    const next = chance(7);
    for (let k = 0; k < 100; k++) {
      const slope = next(0, 25);
      const one = changed((p) => {
        p.facts.groundSlope = { value: slope, got: 'measured' };
        p.bearings.downhill = next(0, 360);
        p.bearings.line = next(0, 360);
        p.limbs[2].bearings.worker = next(0, 360);
      });
      const { worker, points } = one.limbs[2]!.bearings;
      const from = next(0, 1);
      const fed = feedClearance(one, one.limbs[2]!, { from, length: 1.5 - from }, { standOff: 2, poleAngle: 50 }, 3)[0]!;
      for (let turn = -15; turn <= 15; turn += 5) {
        const fall = (bearing: number) => tan(slope) * cos(bearing - one.bearings.downhill - turn);
        const feet = (0.3 + from * cos(10)) * fall(points) + 2 * fall(worker);
        expect((fed['lineHeight'] as Fact).value).toBeLessThanOrEqual(9 + feet - 14 * fall(one.bearings.line) + 1e-9);
        expect((fed['cutHeight'] as Fact).value).toBeGreaterThanOrEqual(3.4 + from * sin(10) + feet - 0.3 * fall(points) - 1e-9);
      }
    }
  });
  it('at the edge of the tip side it is a stop that standing squarer lifts; further round the calculator’s own', () => {
    const at = (worker: number) => findingsOf(...worked(changed((p) => (p.limbs[2].bearings.worker = worker)))).filter(({ id }) => /(tip|stem)Side/i.test(id));
    // The limb points to 270°: square beside it is 180°.
    expect(at(210)).toEqual([]);
    expect(at(215)).toMatchObject([{ level: 'stop', part: 'plan', id: 'mayBeTipSide', guess: false, mends: ['worker'] }]);
    expect(at(230)).toMatchObject([{ level: 'stop', part: 'stance', id: 'tipSide', guess: false, mends: ['worker'] }]);
    expect(at(145)).toMatchObject([{ level: 'caution', part: 'plan', id: 'mayBeStemSide', guess: false, mends: ['worker'] }]);
    expect(standingOf(270, 215, 35)).toBe('beside');
    expect(standingOf(270, 215, mostOffSquare(270, 215))).toBe('tipSide');
  });
  it('the ground rises to the cut as much as the half hour allows; to a cut under the hand, as little', () => {
    expect(workPlan(plan).limbs[2]!.pieces[0]!.stance.inputs['groundRise']).toBeCloseTo(3, 9);
    const high = changed((p) => {
      p.choices.workingFrom = 'platform';
      p.facts.platformHeight = { value: 3, got: 'measured' };
      p.facts.groundSlope = { value: 10, got: 'measured' };
      p.bearings.downhill = 180;
    });
    const { inputs } = workPlan(high).limbs[2]!.pieces[0]!.stance;
    expect(inputs['groundRise']).toBeCloseTo(Math.atan(tan(10) * cos(15)) / deg, 9);
  });
});

const worked = (of: Plan) => [of, workPlan(of)] as const;

describe('the ways out', () => {
  const { pieces } = workPlan(plan).limbs[1]!;
  it('is followed to where no part of the piece lands, and what is left to the line there, by hand', () => {
    // The inner half of the long limb: its cut 0.5 m out at 180°, the feet 2.4 m from there at 90°, the way to 45°, the line 14 m off at 0°.
    const { landing, ways, stand } = pieces[1]!;
    expect(stand!.standOff).toBe(2.4);
    const furthest = Math.max(landing!.outward, landing!.inward) + 1;
    const long = Math.sqrt(furthest ** 2 - (2.4 * sin(45)) ** 2) - 2.4 * cos(45);
    const end = { x: 2.4 + long * sin(45), y: -0.5 + long * cos(45) };
    expect(Math.hypot(end.x, end.y + 0.5)).toBeCloseTo(furthest, 9);
    // Nearer by half an hour, each: the limb 15° off straight away, the worker 15° off square, the way at 30° to the line.
    const level = 14 + 0.5 * cos(15) - 2.4 * cos(75) - long * cos(30);
    const downTo = (x: number, y: number) => x * sin(195) + y * cos(195);
    const up = -tan(3) * (downTo(0, 14) - downTo(end.x, end.y));
    const less = (tan(4) - tan(3)) * Math.hypot(end.x, 14 - end.y) + tan(3) * 2 * sin(7.5) * (14 + 0.5 + 2.4 + long);
    const reach = Math.hypot(level - 0.2 - 1, 9 + up - less - 0.3 - 2) - (4.25 + 0.2);
    expect(ways!.wayOut.lineRoom).toBeCloseTo(reach - 10 * 0.3048 - 1, 9);
    expect(ways!.wayOut2).toEqual({ under: false, nearer: null, lineRoom: null });
  });
  it('goes by what the line’s distance from the stem may be out, where that is more than from the feet', () => {
    const judged = changed((p) => (p.facts.lineOffset.got = 'judged'));
    const [measured, out] = [pieces[1]!, workPlan(judged).limbs[1]!.pieces[1]!].map((piece) => piece.ways!.wayOut.nearer!.inputs['lineOffset'] as number) as [number, number];
    // Nothing to spare where it was measured: 0.2 m either way.
    expect(out).toBeCloseTo(measured - 0.2 * (14 - measured), 9);
  });
  it('the invented plan’s all keep clear', () => {
    expect(workPlan(plan).limbs.flatMap((limb) => limb.pieces.flatMap(({ ways }) => [ways!.wayOut, ways!.wayOut2])).every(isClear)).toBe(true);
  });
  const of = (change: (p: any) => void) => {
    const one = changed(change);
    return { one, said: findingsOf(...worked(one)).filter(({ id }) => id.startsWith('way')) };
  };
  it('back to where it may land, round the end of the strip: a caution, and the half hour that keeps clear', () => {
    // The limb points to 180°, the worker stands at 90°: a way at 10° runs along it, and the strip widens by 35° towards its stem side.
    const { one, said } = of((p) => (p.limbs[1].bearings.wayOut = 10));
    expect(said).toMatchObject([{ level: 'caution', id: 'wayBack', limb: 1, values: { way: 'wayOut' }, mends: ['wayOut'] }]);
    const take = said[0]!.values['take'] as number;
    expect(take).toBeGreaterThan(10);
    expect(take).toBeLessThanOrEqual(45);
    // Sampled here: from the feet along it, no place is within what the strip may cover.
    const turned = changed((p) => (p.limbs[1].bearings.wayOut = take));
    expect(findingsOf(...worked(turned)).filter(({ id }) => id.startsWith('way'))).toEqual([]);
    for (const { landing, stand } of workPlan(one).limbs[1]!.pieces) {
      const inside = (bearing: number) => Array.from({ length: 100 }, (_, k) => k / 20).some((far) => {
        const [x, y] = [stand!.standOff + far * sin(bearing), far * cos(bearing)];
        const off = (Math.atan2(x, y) / deg);
        const reach = Math.min(landing!.inward + 1, landing!.half / sin(Math.max(1e-9, off - 35)));
        return far > 0 && Math.hypot(x, y) < reach - 1e-6;
      });
      expect(inside(10)).toBe(true);
      expect(inside(take)).toBe(false);
    }
  });
  it('never two ways out side by side', () => {
    const { said } = of((p) => Object.assign(p.limbs[1].bearings, { wayOut: 10, wayOut2: 75 }));
    expect(said).toMatchObject([{ id: 'wayBack', values: { way: 'wayOut', take: 120 } }]);
  });
  it('to the line: a stop, and the half hour that keeps clear', () => {
    const low = (p: any) => Object.assign(p.facts, { lineOffset: { value: 10, got: 'measured' }, lineHeight: { value: 6, got: 'measured' } });
    const { one, said } = of(low);
    expect(workPlan(one).limbs[1]!.pieces.every(({ margin }) => margin! >= 0)).toBe(true);
    expect(said).toMatchObject([{ level: 'stop', id: 'wayToLine', limb: 1, values: { way: 'wayOut' }, mends: ['wayOut'] }]);
    const take = said[0]!.values['take'] as number;
    expect(findingsOf(...worked(changed((p) => {
      low(p);
      p.limbs[1].bearings.wayOut = take;
    }))).filter(({ id }) => id.startsWith('way'))).toEqual([]);
  });
  it('no way back keeps clear: the worker or the line is to move', () => {
    const { one, said } = of((p) => {
      p.facts.lineOffset.value = 10;
      p.bearings.line = 90;
      p.facts.groundSlope.value = 0;
    });
    expect(workPlan(one).limbs[1]!.pieces.every(({ margin }) => margin! >= 0)).toBe(true);
    expect(said.filter(({ limb }) => limb === 1)).toMatchObject([
      { level: 'stop', id: 'wayToLine', values: { way: 'wayOut' }, mends: ['worker', 'line'] }, { level: 'stop', id: 'wayToLine', values: { way: 'wayOut2' }, mends: ['worker', 'line'] },
    ]);
    expect(said.every(({ values }) => !('take' in values))).toBe(true);
  });
  it('beyond the line one goes away from it, not over it', () => {
    // The line passes between the cut and the worker: 1 m from the stem, where they stand.
    const { one } = of((p) => {
      p.facts.lineOffset.value = 1;
      p.bearings.line = 90;
    });
    const { ways } = workPlan(one).limbs[1]!.pieces[1]!;
    expect(ways!.wayOut).toMatchObject({ nearer: null, lineRoom: null });
    const back = workPlan(changed((p) => {
      p.facts.lineOffset.value = 1;
      p.bearings.line = 90;
      p.limbs[1].bearings.wayOut = 300;
    })).limbs[1]!.pieces[1]!.ways!;
    // Over it on the way: no distance level is left, and it is measured straight up.
    expect(back.wayOut.nearer!.inputs['lineOffset']).toBe(0);
    expect(back.wayOut.lineRoom).toBeLessThan(0);
  });
  it('there is none on foot from a platform, nor from nowhere; with no line only the landing counts', () => {
    const high = workPlan(changed((p) => {
      p.choices.workingFrom = 'platform';
      p.facts.platformHeight = { value: 2, got: 'measured' };
    }));
    expect(high.limbs.flatMap((limb) => limb.pieces.map(({ ways }) => ways))).toEqual(expect.arrayContaining([null]));
    expect(workPlan(changed((p) => (p.facts.margin.value = 4))).limbs[0]!.pieces[0]!.ways).toBeNull();
    const none = workPlan(changed((p) => (p.choices.wires = 'no'))).limbs[1]!.pieces[0]!;
    expect(none.ways!.wayOut).toEqual({ under: false, nearer: null, lineRoom: null });
  });
  it('where one stands further off than any of it lands there is no way to go', () => {
    const far = workPlan(changed((p) => {
      Object.assign(p.limbs[2].facts, { limbLength: { value: 0.3, got: 'measured' }, spread: { value: 0.1, got: 'measured' }, cutHeight: { value: 1.6, got: 'measured' } });
      Object.assign(p.facts, { poleShortest: { value: 4, got: 'measured' }, margin: { value: 0.2, got: 'judged' } });
      p.limbs[2].bearings.wayOut = 0;
    })).limbs[2]!.pieces[0]!;
    expect(far.stand!.standOff).toBeGreaterThan(Math.max(far.landing!.outward, far.landing!.inward) + 0.2);
    expect(far.ways!.wayOut2.under).toBe(false);
    expect(planOn(far.stance.outcome, 'nearestStandOff')).toBeLessThan(far.stand!.standOff);
  });
});
