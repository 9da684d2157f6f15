/**
 * The invented plan, worked through by hand: every figure with its working, from the plan's own facts and the published
 * figures it leans on. Nothing here is taken from the code under test; where a search cannot be done by hand (where a
 * falling limb lands) the figure is held to what the calculator itself says of the same inputs.
 */
import { describe, expect, it } from 'vitest';
import species from '#shared/tables/species.json';
import { turnedBy } from '#core/plan/facts.ts';
import { wayNames } from '#core/plan/ways.ts';
import type { PieceWork } from '#core/plan/work.ts';
import { planOn } from '#core/plan/feed.ts';
import { workPlan } from '#core/plan/work.ts';
import { landingOutline, stripTo } from '#core/formulas/landing-outline.ts';
import { evaluate } from '#core/registry.ts';
import { changed, invented as plan } from './invented.ts';

const work = workPlan(plan);
const [low, long, dead] = work.limbs.map(({ pieces }) => pieces);
const only = (pieces: readonly PieceWork[] | undefined): PieceWork => {
  expect(pieces).toHaveLength(1);
  return pieces![0]!;
};
const deg = Math.PI / 180;
const tan = (d: number) => Math.tan(d * deg);
const cos = (d: number) => Math.cos(d * deg);
const sin = (d: number) => Math.sin(d * deg);
const atan = (x: number) => Math.atan(x) / deg;

describe('the dead limb over the wall, worked by hand', () => {
  const piece = only(dead);
  // The ground falls 3° towards 195°; the worker stands at 180°. Half an hour of the clock more, and it rises straight to the cut at 3°, and may at 4°.
  const rises = 3 + 1;
  // Cut 3.4 m (measured: 3.5 at the most), hand 1.1 m (1.05 at the least).
  const rise = 3.5 - 1.05;
  // Spread 0.5 m judged, so 0.6; half of it and a metre of margin, swung by 20°, and seen half an hour of the clock off square: 15°.
  const beside = (0.6 / 2 + 1) / cos(20 + 15);

  it('the landing reaches 1.59 m beside it', () => {
    expect(piece.landing?.towards).toBeCloseTo(beside, 9);
    expect(piece.stance.inputs['landingReach']).toBeCloseTo(beside, 9);
  });
  it('which is further than the limit angle keeps you back: 2.45 ÷ (tan 60° − tan 4°) = 1.474 m', () => {
    expect(rise / (tan(60) - tan(rises))).toBeCloseTo(1.474, 3);
    expect(beside).toBeCloseTo(1.587, 3);
    expect(planOn(piece.stance.outcome, 'nearestStandOff')).toBeCloseTo(beside, 9);
  });
  it('a pole of 4.15 m reaches from 3.18 m: s² + (2.45 + s tan 4°)² = 4.15²', () => {
    const s = piece.stand?.furthest ?? 0;
    expect(s ** 2 + (rise + s * tan(rises)) ** 2).toBeCloseTo(4.15 ** 2, 9);
    expect(s).toBeCloseTo(3.175, 3);
  });
  it('you stand at the next tenth, 1.6 m, the pole at no more than 58.1° and 3.03 m of it out', () => {
    expect(piece.stand?.standOff).toBe(1.6);
    expect(piece.stand?.poleAngle).toBeCloseTo(atan((rise + 1.6 * tan(rises)) / 1.6), 9);
    expect(piece.stand?.pole).toBeCloseTo(Math.hypot(1.6, rise + 1.6 * tan(rises)), 9);
  });
  it('the bar: 60 mm cut 25° off square, and 50 mm more', () => {
    expect(planOn(work.limbs[2]!.bar.outcome, 'barNeeded')).toBeCloseTo((50 * 1.2) / cos(15 + 10) + 50, 9);
  });
  it('the weight: half a cylinder 57.5 mm thick and 1.6 m long, of lime full of water', () => {
    const basic = species.rows.find((row) => row.id === 'common-lime')!.basic;
    // Wood Handbook: as much water as the pores hold, solid wood being 1.54 times as heavy as water.
    const full = basic * (1 + 1000 / basic - 1 / 1.54);
    expect(piece.weight).toBeCloseTo(((Math.PI / 4) * 0.0575 ** 2 * 1.6 * full) / 2, 2);
  });
  it('the order: from below, 40 to 60 mm thick so a quarter of 50; the stub as heavy a metre as the limb', () => {
    const order = piece.order!;
    expect(order.inputs).toMatchObject({ length: 1.8, cutAt: 0.3, diameter: 50, shape: 'pole' });
    expect(order.inputs['weight']).toBeCloseTo((piece.weight! * 1.8) / 1.5, 9);
    expect(order.outcome).toMatchObject({ kind: 'answer', outputs: { firstCutSide: { value: 'bottom' }, firstCutDepth: { value: 12.5 } } });
  });
  it('the line: 14 m away and 9 m up, seen from where you stand and allowing for slope and bearings', () => {
    const inputs = piece.clearance[0]!.inputs;
    // From the stem: the cut 0.3 m out at 270°, the feet 1.6 m from there at 180°, the line 14 m off at 0°.
    const feet = { x: -0.3, y: -1.6 };
    const downTo = (x: number, y: number) => x * sin(195) + y * cos(195);
    const up = -tan(3) * (downTo(0, 14) - downTo(feet.x, feet.y));
    // A degree of slope more or less over 15.6 m. And the way it falls: turned by 15°, the end of each leg lies 2 sin 7.5° of its length elsewhere.
    const less = (tan(4) - tan(3)) * Math.hypot(0.3, 15.6) + tan(3) * 2 * sin(7.5) * (14 + 0.3 + 1.6);
    expect(inputs['lineHeight']).toBeCloseTo(9 + up - less, 9);
    // The limb lies square to the way to the line, or 15° nearer; the worker straight behind, or 15° round.
    expect(inputs['lineOffset']).toBeCloseTo(14 - 0.3 * cos(75), 9);
    expect(inputs['standOff']).toBeCloseTo(1.6 * cos(15), 9);
    // Over your feet the cut stands higher by what the ground rises.
    expect(inputs['cutHeight']).toBeCloseTo(3.4 - tan(3) * (downTo(-0.3, 0) - downTo(feet.x, feet.y)) + (tan(4) - tan(3)) * 1.6 + tan(3) * 2 * sin(7.5) * 1.6, 9);
    // Raised hands 2 m up, a step of a metre, pole and bar 4.45 m; the line 0.3 m lower and 0.2 m nearer than measured.
    const reach = Math.hypot(14 - 0.3 * cos(75) - 0.2 + 1.6 * cos(15) - 1, 9 + up - less - 0.3 - 2) - (4.25 + 0.2);
    // Ten feet by the rule set, a metre of the line's own movement.
    expect(piece.margin).toBeCloseTo(reach - 10 * 0.3048 - 1, 9);
  });
});

describe('what the hands carry at the dead limb, by hand', () => {
  const { load } = only(dead);
  it('the pole as flat as it may be there: the cut 3.3 m up, the hand at 1.15 m, the ground rising at 2°', () => {
    expect(load!.inputs['poleAngle']).toBeCloseTo(atan((3.3 - 1.15 + 1.6 * tan(2)) / 1.6), 9);
  });
  it('the front hand: 6.4 kg and a twentieth more, 1.55 m out, held 0.7 m apart', () => {
    const flattest = load!.inputs['poleAngle'] as number;
    expect(planOn(load!.outcome, 'frontHand')).toBeCloseTo((6.4 * 1.05 * 9.80665 * 1.55 * cos(flattest)) / 0.7, 6);
  });
  it('nothing weighed, nothing worked out; nor for a pole that points down', () => {
    expect(workPlan(changed((p) => (p.facts.mass.value = null))).limbs[2]!.pieces[0]!.load).toBeNull();
    const below = changed((p) => {
      p.choices.workingFrom = 'platform';
      p.facts.platformHeight = { value: 3, got: 'measured' };
    });
    expect(workPlan(below).limbs[2]!.pieces[0]).toMatchObject({ load: null, stand: { poleAngle: expect.any(Number) } });
  });
});

describe('the low limb over the path, by hand', () => {
  const piece = only(low);
  it('the landing leads: half of 0.96 m and a metre, swung by 20° and 15° off square', () => {
    expect(planOn(piece.stance.outcome, 'nearestStandOff')).toBeCloseTo((0.96 / 2 + 1) / cos(35), 9);
  });
  it('pushed in the pole is too long there: you stand where 2.45 m of it reach', () => {
    // Rise 1.6 m at the least, on ground that may rise at 2°: s² + (1.6 + s tan 2°)² = 2.45².
    const s = planOn(piece.stance.outcome, 'shortestReach') ?? 0;
    expect(s ** 2 + (2.7 - 1.15 + s * tan(2)) ** 2).toBeCloseTo(2.45 ** 2, 9);
    expect(piece.stand?.standOff).toBe(1.9);
  });
  it('weighs no more than half a cylinder 69 mm thick and 1.9 m long of lime full of water', () => {
    const full = 467 * (1 + 1000 / 467 - 1 / 1.54);
    expect(piece.weight).toBeCloseTo(((Math.PI / 4) * 0.069 ** 2 * 1.9 * full) / 2, 2);
  });
});

describe('the long limb over the drive', () => {
  it('needs two pieces: whole, its landing reaches further than the pole lets you stand', () => {
    // Spread 3.2 m judged: 3.84; half and a metre, swung and off square. Whole, the landing reaches 3.6 m; the pole 2.9 m.
    expect((3.84 / 2 + 1) / cos(35)).toBeGreaterThan(2.9);
    expect(long?.map(({ piece }) => piece)).toEqual([{ from: 1.5, length: 1.5 }, { from: 0, length: 1.5 }]);
    expect(long?.[0]?.landing?.towards).toBeCloseTo((1.92 / 2 + 1) / cos(35), 9);
    expect(long?.every(({ stand, landing }) => stand!.standOff >= landing!.towards && stand!.standOff <= stand!.furthest)).toBe(true);
  });
  it('the tip first; its cut is as high over the ground under it as the slope says', () => {
    // The limb points to 180°, fifteen degrees off downhill.
    expect(long?.[0]?.stance.inputs['cutHeight']).toBeCloseTo(3.9 + 1.5 * tan(3) * cos(15), 9);
    expect(long?.[0]?.height).toBe(3.9);
    expect([long![0]!.spot.x, long![0]!.spot.y]).toEqual([expect.closeTo(2 * sin(180), 9), expect.closeTo(2 * cos(180), 9)]);
  });
  it('the outer half is no heavier than its share, and thinner; both together no heavier than said', () => {
    expect(long?.[0]?.weight).toBeCloseTo(long![1]!.weight! / 2, 9);
    expect(long?.[0]?.order?.inputs['diameter']).toBeCloseTo(80 * Math.sqrt(0.5), 9);
  });
});

describe('every figure', () => {
  const runs = work.limbs.flatMap((limb) => [limb.bar, limb.weight, ...limb.pieces.flatMap((p) => [p.stance, p.dropZone, p.order!, p.load!, ...p.clearance, ...wayNames.flatMap((name) => p.ways![name].nearer ?? [])])]).concat(work.distance!);
  const ids = { stance: 'stance', dropZone: 'drop-zone', barLength: 'bar-length', limbWeight: 'limb-weight', cutOrder: 'cut-order', approachDistance: 'approach-distance', lineClearance: 'line-clearance', poleLoad: 'pole-load' };
  it('is what the calculator says that is opened with the same', () => {
    // Of the ways out one leads nearer to the line, from both places where one stands for the long limb.
    expect(runs.length).toBe(33);
    for (const { part, inputs, got, outcome } of runs) expect(evaluate(ids[part], inputs, got)).toEqual(outcome);
  });
  it('of where it lands goes to where to stand, whose own page draws the outline that the plan draws', () => {
    for (const { pieces } of work.limbs) {
      for (const { landing, stance } of pieces) {
        const { landingOut, landingBack, landingReach, landingSwing } = stance.inputs as { [name: string]: number };
        const there = landingOutline(stripTo(landingOut!, landingBack!, landingReach!, landingSwing!));
        const here = landingOutline({ outward: landing!.outward + 1, inward: landing!.inward + 1, half: landing!.half, swing: landing!.swing });
        expect(there).toEqual(here.map(([x, y]) => [expect.closeTo(x, 9), expect.closeTo(y, 9)]));
      }
    }
    // A limb that cannot be drawn has none to hand on.
    const deep = changed((p) => Object.assign(p.limbs[0].facts, { cutHeight: { value: 1.2, got: 'measured' }, limbLength: { value: 8, got: 'measured' }, limbAngle: { value: -60, got: 'measured' } }));
    expect(workPlan(deep).limbs[0]!.pieces[0]!.stance.inputs).toMatchObject({ landingOut: null, landingBack: null, landingSwing: null });
  });
  it('stays when everything turns together', () => {
    for (const by of [1, 77, 180, 301.5]) {
      const turned = workPlan(turnedBy(plan, by));
      const figures = (of: typeof work) => of.limbs.flatMap(({ pieces }) => pieces.flatMap((p) => [p.stand!.standOff, p.stand!.poleAngle, p.landing!.towards, p.margin!, p.weight!, planOn(p.order!.outcome, 'readyAt')!, p.ways!.wayOut.lineRoom ?? 0, p.ways!.wayOut2.lineRoom ?? 0]));
      figures(turned).forEach((figure, i) => expect(figure).toBeCloseTo(figures(work)[i]!, 6));
    }
  });
  it('of a pole along the line is that of a pole across it turned by a right angle, on level ground', () => {
    const level = changed((p) => {
      p.facts.groundSlope = { value: 0, got: 'measured' };
      p.bearings.line = 90;
    });
    const { clearance } = workPlan(level).limbs[2]!.pieces[0]!;
    // The worker at 180°, the line at 90°: seen along the line the feet are under the cut, but for half an hour to either side.
    const { standOff, poleAngle } = workPlan(level).limbs[2]!.pieces[0]!.stand!;
    for (const { inputs } of clearance) {
      expect(inputs['standOff']).toBeCloseTo(standOff * sin(15), 9);
      expect(inputs['poleAngle']).toBeCloseTo(atan(tan(poleAngle) / sin(15)), 6);
    }
  });
  it('on the line’s side of the cut the line is on yours', () => {
    const near = changed((p) => (p.bearings.line = 180));
    expect(workPlan(near).limbs[2]!.pieces[0]!.clearance[0]!.inputs['lineOffset']).toBeCloseTo(-(14 - 0.3 * cos(75)), 9);
  });
  it('is asked at both ends of what the line may be out, where the limb brings its cut nearer', () => {
    const out = changed((p) => {
      p.facts.lineOffset = { value: 14, got: 'judged' };
      p.bearings.line = 180;
    });
    const inputs = workPlan(out).limbs[1]!.pieces[0]!.clearance.map((run) => Math.abs(run.inputs['lineOffset'] as number));
    // A fifth of 14 m against a fifth of 12: the cut stands 2 m out towards the line, or half an hour round from there.
    const round = 14 - 2 * cos(15);
    expect(inputs.sort()).toEqual([expect.closeTo(12 - 0.4, 9), expect.closeTo(round + 0.2 * (14 - round), 9)]);
  });
});
