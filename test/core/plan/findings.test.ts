/** Where a plan does not go: no place to stand, a line too near, a calculator that refuses; each said at the fact that would mend it. */
import { describe, expect, it } from 'vitest';
import type { Plan } from '#core/plan/facts.ts';
import { findingsOf, gateFindings } from '#core/plan/findings.ts';
import { planOn } from '#core/plan/feed.ts';
import { mostPieces, workPlan } from '#core/plan/work.ts';
import { changed, invented as plan } from './invented.ts';

const work = workPlan(plan);
const cos = (degrees: number) => Math.cos((degrees * Math.PI) / 180);

describe('where it does not go', () => {
  const findings = (of: Plan) => findingsOf(of, workPlan(of)).map(({ level, part, id, limb, mends }) => ({ level, part, id, limb, mends }));
  it('no place to stand: the pole too short for any piece', () => {
    const short = changed((p) => {
      p.facts.poleLongest = { value: 2.7, got: 'measured' };
      p.facts.poleShortest = { value: 2.4, got: 'measured' };
    });
    const limb = workPlan(short).limbs[1]!;
    expect(limb.fits).toBe(false);
    expect(limb.pieces).toHaveLength(1);
    expect(limb.pieces[0]).toMatchObject({ fits: false, stand: null, clearance: [], margin: null });
    // The limb itself is asked for all the same; what can stand has nothing of that.
    expect(limb.pieces[0]!.limbAlone).toHaveLength(2);
    expect(work.limbs[2]!.pieces[0]).toMatchObject({ limbAlone: [], limbGap: null });
    expect(findings(short).find(({ limb: of }) => of === 1)).toEqual({ level: 'stop', part: 'stance', id: 'poleTooShort', limb: 1, mends: expect.arrayContaining(['poleLongest', 'workingFrom']) });
  });
  // A limb 3 m long, level, its cut 6 m up and 0.5 m out from the stem at 190°: too high for the pole.
  const high = (offset: number, lineHeight: number) => changed((p) => {
    p.limbs[1].facts.cutHeight = { value: 6, got: 'measured' };
    p.limbs[1].facts.limbAngle = { value: 0, got: 'measured' };
    p.facts.groundSlope = { value: 0, got: 'measured' };
    p.facts.lineHeight = { value: lineHeight, got: 'measured' };
    p.facts.lineOffset = { value: offset, got: 'measured' };
  });
  it('no place to stand: the limb’s own gap to the line is worked out all the same, worked by hand', () => {
    const piece = workPlan(high(0, 15)).limbs[1]!.pieces[0]!;
    expect(piece).toMatchObject({ fits: false, stand: null, clearance: [], margin: null });
    // The line passes over the stem, so the limb may point along under it. Its cut may be 0.1 m higher and spring up by 0.5 m, it may be
    // 0.1 m longer and rise by 3°. The line may be 0.3 m lower, and a degree of slope over the 0.5 m between cut and line lowers it more.
    const gap = 15 - 0.3 - Math.tan(Math.PI / 180) * 0.5 - (6 + 0.1 + 0.5) - 3.1 * cos(87);
    expect(piece.limbGap).toBeLessThanOrEqual(gap + 1e-9);
    // The gap is taken on a ladder of depths, each a fiftieth further down.
    expect(piece.limbGap).toBeGreaterThan(gap * 0.97);
    expect(findings(high(0, 15)).filter(({ limb, part }) => limb === 1 && part === 'lineClearance').map(({ id }) => id)).toEqual(['parentSprings']);
  });
  it('no place to stand, and the limb may come too near the line: a second stop for it, and nothing of what one would reach standing there', () => {
    const near = findings(high(6, 7.5)).filter(({ limb }) => limb === 1);
    expect(near).toContainEqual({ level: 'stop', part: 'stance', id: 'poleTooShort', limb: 1, mends: expect.arrayContaining(['poleLongest']) });
    expect(near).toContainEqual({ level: 'stop', part: 'lineClearance', id: 'limbNear', limb: 1, mends: expect.arrayContaining(['lineOffset', 'limbLength']) });
    expect(near.filter(({ part }) => part === 'lineClearance').map(({ id }) => id).sort()).toEqual(['askFirst', 'limbNear']);
  });
  it('no place to stand: the gap is that of the same limb where one can stand', () => {
    const level = (longest: number) => changed((p) => {
      p.facts.groundSlope = { value: 0, got: 'measured' };
      Object.assign(p.facts, { poleLongest: { value: longest, got: 'measured' }, poleShortest: { value: 1.2, got: 'measured' } });
    });
    for (const [at, one] of workPlan(level(4.2)).limbs.entries()) {
      const alone = workPlan(level(1.3)).limbs[at]!.pieces[0]!;
      expect(alone.stand).toBeNull();
      if (one.pieces.length > 1) continue;
      const stood = Math.min(...one.pieces[0]!.clearance.map(({ outcome }) => planOn(outcome, 'limbGap') as number));
      // But for what a degree of slope, as a measured 0° may be out, makes over the stand-off: heights are taken from the feet.
      expect(Math.abs(alone.limbGap! - stood)).toBeLessThan(Math.tan(Math.PI / 180) * 2 * one.pieces[0]!.stand!.standOff);
    }
  });
  it('no place to stand: the landing wider than the pole is long, however short the piece', () => {
    const wide = changed((p) => (p.facts.margin.value = 4));
    expect(workPlan(wide).limbs.every(({ fits }) => !fits)).toBe(true);
    expect(findings(wide).filter(({ id }) => id === 'nowhere').map(({ limb, level }) => [limb, level])).toEqual([[0, 'stop'], [1, 'stop'], [2, 'stop']]);
  });
  it('under it, at its tip: a stop that names the bearing', () => {
    const tip = changed((p) => (p.limbs[0].bearings.worker = 105));
    expect(findings(tip)).toContainEqual({ level: 'stop', part: 'stance', id: 'tipSide', limb: 0, mends: ['worker'] });
  });
  it('off square the landing reaches further, and its stem side is said', () => {
    const off = changed((p) => (p.limbs[2].bearings.worker = 150));
    expect(workPlan(off).limbs[2]!.pieces[0]!.landing?.towards).toBeCloseTo(1.3 / cos(20 + 30 + 15), 9);
    const stem = changed((p) => (p.limbs[2].bearings.worker = 90));
    expect(findings(stem)).toContainEqual({ level: 'caution', part: 'stance', id: 'stemSide', limb: 2, mends: ['worker'] });
    const { landing } = workPlan(stem).limbs[2]!.pieces[0]!;
    expect(landing?.towards).toBeCloseTo(landing!.inward + 1, 9);
  });
  it('a way out that leads back under it', () => {
    const back = changed((p) => (p.limbs[0].bearings.wayOut = 20));
    expect(findings(back)).toContainEqual({ level: 'caution', part: 'plan', id: 'wayBack', limb: 0, mends: ['wayOut'] });
  });
  it('two ways out that are as one, with one that is another', () => {
    const two = (wayOut2: number) => changed((p) => (p.limbs[0].bearings.wayOut2 = wayOut2));
    const said = (of: Plan) => findingsOf(of, workPlan(of)).filter(({ id }) => id === 'waysAlike');
    const { wayOut, wayOut2 } = plan.limbs[0]!.bearings;
    const [alike] = said(two(wayOut + 30));
    expect(alike).toMatchObject({ level: 'caution', part: 'plan', limb: 0, mends: ['wayOut2'], values: { way: 'wayOut2' } });
    // What is named instead is 45° off the first at the least, and nothing is said of it.
    const take = alike!.values['take'] as number;
    expect(Math.abs(take - wayOut)).toBeGreaterThanOrEqual(45);
    expect(said(two(take))).toEqual([]);
    expect(said(two(wayOut2))).toEqual([]);
    // All ways back from the long limb go towards the line: none is named.
    const none = changed((p) => {
      p.limbs[1].bearings.wayOut2 = p.limbs[1].bearings.wayOut;
      p.facts.lineOffset.value = 10;
      p.bearings.line = 90;
      p.facts.groundSlope.value = 0;
    });
    expect(said(none).map(({ limb, values }) => ({ limb, values }))).toEqual([{ limb: 1, values: { way: 'wayOut2' } }]);
    // With no place to stand, there is nothing to come away from.
    const short = changed((p) => Object.assign(p.facts, { poleLongest: { value: 1.5, got: 'measured' }, poleShortest: { value: 1.4, got: 'measured' } }));
    short.limbs.forEach((limb) => Object.assign(limb.bearings, { wayOut2: limb.bearings.wayOut }));
    expect(said(short)).toEqual([]);
  });
  it('a line too near is a stop before all cautions; a voltage nobody knows another, and no gap is worked out', () => {
    const near = changed((p) => (p.facts.lineOffset.value = 5));
    expect(findings(near)[0]).toMatchObject({ level: 'stop', part: 'lineClearance' });
    const unknown = changed((p) => (p.choices.toldBy = 'look'));
    expect(findings(unknown)[0]).toEqual({ level: 'stop', part: 'approachDistance', id: 'outside', limb: null, mends: ['voltage', 'toldBy'] });
    expect(workPlan(unknown)).toMatchObject({ required: null, limbs: [{ pieces: [{ clearance: [], margin: null }] }, {}, {}] });
  });
  it('no line: said, and nothing is worked out for it', () => {
    const none = changed((p) => (p.choices.wires = 'no'));
    expect(workPlan(none)).toMatchObject({ distance: null, required: null });
    expect(findings(none)).toContainEqual({ level: 'caution', part: 'plan', id: 'noWires', limb: null, mends: ['wires'] });
  });
  it('what a calculator refuses is said at the plan’s own fact', () => {
    const refused = changed((p) => (p.choices.workingFrom = 'platform'));
    expect(findings(refused)).toContainEqual({ level: 'stop', part: 'lineClearance', id: 'cannotWork', limb: 0, mends: ['platformHeight'] });
    const cracked = changed((p) => (p.limbs[0].choices.fault = 'cracked'));
    // No figure makes cracked wood fit to be cut: nothing is named that would.
    expect(findings(cracked)[0]).toEqual({ level: 'stop', part: 'cutOrder', id: 'outside', limb: 0, mends: [] });
    const top = changed((p) => (p.limbs[0].facts.limbAngle.value = 75));
    expect(findings(top)).toContainEqual({ level: 'stop', part: 'cutOrder', id: 'outside', limb: 0, mends: ['limbAngle'] });
    const heavy = changed((p) => Object.assign(p.limbs[0].facts, { limbLength: { value: 8, got: 'judged' }, limbDiameter: { value: 60, got: 'judged' } }));
    const over = findings(heavy).find(({ id, limb }) => id === 'overAlready' && limb === 0)!;
    expect(over.mends[0]).toBe('limbLength');
    expect(over.mends).not.toContain('strength');
    const weightless = changed((p) => (p.limbs[0].facts.limbDiameter.value = 600));
    expect(workPlan(weightless).limbs[0]!.pieces[0]).toMatchObject({ weight: null, order: null });
    const below = changed((p) => (p.limbs[0].facts.limbAngle.value = 80));
    expect(workPlan(below).limbs[0]!.pieces[0]!.fits).toBe(true);
    const deep = changed((p) => Object.assign(p.limbs[0].facts, { cutHeight: { value: 1.2, got: 'measured' }, limbLength: { value: 8, got: 'measured' }, limbAngle: { value: -60, got: 'measured' } }));
    expect(findings(deep).filter(({ level }) => level === 'stop').map(({ part, id }) => `${part}.${id}`)).toContain('dropZone.outside');
  });
  it('from a platform the floor counts, and what passes its heights', () => {
    const platform = changed((p) => {
      p.choices.workingFrom = 'platform';
      p.facts.platformHeight = { value: 2, got: 'measured' };
    });
    const piece = workPlan(platform).limbs[0]!.pieces[0]!;
    expect(piece.stance.inputs['platformHeight']).toBe(2);
    expect(piece.dropZone.inputs).toMatchObject({ basketLow: 2, basketHigh: 4.2 });
    expect(piece.clearance[0]!.inputs).toMatchObject({ workingFrom: 'platform', platformHeight: 2, boomReach: 4 });
  });
  it('too thin to ask when it goes: a thin tip has no order of its own', () => {
    const thin = changed((p) => (p.limbs[1].facts.limbDiameter.value = 22));
    expect(workPlan(thin).limbs[1]!.pieces.map(({ order }) => order === null)).toEqual([true, false]);
    expect(findings(thin).filter(({ level }) => level === 'stop').map(({ limb }) => limb)).not.toContain(2);
  });
  it('no room for the next tenth, nor for the pole pushed in: you stand at the nearest as it is', () => {
    const tight = changed((p) => Object.assign(p.facts, { poleShortest: { value: 3.06, got: 'measured' }, poleLongest: { value: 3.067, got: 'measured' } }));
    const { stand } = workPlan(tight).limbs[2]!.pieces[0]!;
    expect(stand!.standOff).toBeCloseTo(1.3 / cos(35), 9);
    expect(stand!.furthest).toBeLessThan(1.6);
  });
  it('a figure of the operator’s own that is larger leads, and is said', () => {
    const own = changed((p) => (p.facts.ownDistance.value = 5));
    expect(workPlan(own).required).toBe(5);
    expect(findings(own)).toContainEqual({ level: 'note', part: 'approachDistance', id: 'ownFigure', limb: null, mends: [] });
  });
  it('a gate unanswered or answered no', () => {
    const gate = changed((p) => Object.assign(p.gate, { wind: 'no', second: null }));
    expect(gateFindings(gate).map(({ level, id, values }) => [level, id, values['gate']])).toEqual([['stop', 'gateNo', 'wind'], ['caution', 'gateOpen', 'second']]);
    // Each no is said; of what is open the first.
    const more = changed((p) => Object.assign(p.gate, { lines: 'no', wind: 'no', below: null, second: null }));
    expect(gateFindings(more).map(({ id, values }) => [id, values['gate']])).toEqual([['gateNo', 'lines'], ['gateNo', 'wind'], ['gateOpen', 'below']]);
  });
  it('of pieces and line ends that say the same, the worst figure is said', () => {
    const worst = { 'dropZone.throwsBack': ['inward', Math.max], 'lineClearance.limbNear': ['limbGap', Math.min], 'lineClearance.tooNear': ['leastGap', Math.min], 'lineClearance.notIfYouStumble': ['reachGap', Math.min] } as const;
    const [kept, told] = [new Set<string>(), new Set<string>()];
    // The long limb drooping and rising, this way and that, the line nearer and nearer.
    for (const angle of [-30, 45]) for (const points of [30, 150, 210, 300]) for (const offset of [2, 5, 8]) {
      const near = changed((p) => {
        Object.assign(p.limbs[1].facts, { limbLength: { value: 4, got: 'judged' }, limbAngle: { value: angle, got: 'judged' } });
        Object.assign(p.limbs[1].bearings, { points, worker: (points + 90) % 360 });
        Object.assign(p.facts, { lineOffset: { value: offset, got: 'measured' }, poleLongest: { value: 5.5, got: 'measured' } });
      });
      const done = workPlan(near);
      const runs = done.limbs[1]!.pieces.flatMap((piece) => [piece.dropZone, ...piece.clearance, ...piece.limbAlone]);
      for (const { part, id, limb, values } of findingsOf(near, done)) {
        const by = limb === 1 && worst[`${part}.${id}` as keyof typeof worst];
        if (!by) continue;
        const all = runs.flatMap((run) => (run.part === part && run.outcome.kind === 'answer' ? run.outcome.findings : [])).filter((one) => one.id === id).map((one) => one.values[by[0]] as number);
        expect(values[by[0]], `${id} at ${angle}, ${points}, ${offset}`).toBe(by[1](...all));
        told.add(id);
        if (all[0] !== by[1](...all)) kept.add(id);
      }
    }
    expect(told.size).toBe(4);
    // Where the first of them was not the worst.
    expect([...kept]).toContain('tooNear');
  });
  it('with a memo that was filled the same figures, and never more than a few kept', () => {
    const memo = new Map();
    workPlan(plan, memo);
    const again = workPlan(plan, memo);
    expect(again).toEqual(work);
    for (let k = 0; k < 400; k++) memo.set(`other ${k}`, again.distance!.outcome);
    expect(workPlan(plan, memo)).toEqual(work);
    expect(memo.size).toBeLessThan(100);
    expect(mostPieces).toBe(6);
  });
});
