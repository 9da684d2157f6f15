/** Where can the limb land, and what does it sweep? */
import { standing as fact } from '../facts/standing.ts';
import { cos, degrees, radians } from '../formulas/angles.ts';
import { firstTouch, flightFrom, hingeSpin, type Limb, shapes } from '../formulas/falling-limb.ts';
import { fallDuration } from '../formulas/gravity.ts';
import { type Box, type Ends, keptBy, landing, lastAngle, longestClear, longestWithin, startsClear, type Worst } from '../formulas/landing.ts';
import { answer, defineCalculator, type InputProblem, type InputsOf, outside, type Ranges, type RawFinding, type RawStep } from '../kit/calculator.ts';
import { choice, guess, quantity } from '../kit/inputs.ts';

const inputs = {
  cutHeight: quantity('m', { min: 1.2, max: 15, step: 0.1, example: 3.5, tolerance: guess({ share: 0.15, least: 0.3 }, { least: 0.1 }) }),
  limbLength: quantity('m', { min: 0.3, max: 8, step: 0.1, example: 2, tolerance: guess({ share: 0.2 }, { least: 0.1 }), floor: 0.1 }),
  limbAngle: quantity('deg', { min: -60, max: 85, step: 5, example: 20, tolerance: guess({ least: 10 }, { least: 3 }), floor: -89, ceiling: 89 }),
  shape: choice(['whole', 'pole'], 'whole'),
  spread: quantity('m', { min: 0, max: 6, step: 0.1, example: 1, tolerance: guess({ share: 0.2 }, { least: 0.1 }) }),
  cutToStem: quantity('m', { min: 0, max: 5, step: 0.1, example: 0.4 }),
  release: choice(['free', 'mayHold', 'hangs'], 'mayHold'),
  groundSlope: quantity('deg', { min: -25, max: 25, step: 1, example: 0, tolerance: guess({ least: 5 }, { least: 1 }) }),
  swing: quantity('deg', { min: 0, max: 90, step: 5, example: 20 }),
  margin: quantity('m', { min: 0, max: 10, step: 0.1, example: 1 }),
  basketLow: quantity('m', { min: 0, max: 25, step: 0.1, example: 0 }),
  basketHigh: quantity('m', { min: 0, max: 27, step: 0.1, example: 2.2 }),
  standing: choice(['beside', 'stemSide', 'tipSide'], 'beside'),
  standOff: quantity('m', { min: 0, max: 15, step: 0.1, example: 2 }),
};
type Given = InputsOf<typeof inputs>;
type AllEnds = { readonly [K in keyof Given]?: Ends };

/** How far the limb may turn before it lets go, radians. */
const spanOf = (release: Given['release']): number =>
  release === 'hangs' ? Math.PI : radians(fact(release === 'free' ? 'releases-free' : 'releases-late'));

const ends = (value: number, box: Ends | undefined): Ends => box ?? [value, value];
const inRadians = ([low, high]: Ends): Ends => [radians(low), radians(high)];
const boxOf = (i: Given, box: AllEnds): Box => ({
  cutHeight: ends(i.cutHeight, box.cutHeight),
  length: ends(i.limbLength, box.limbLength),
  start: inRadians(ends(i.limbAngle, box.limbAngle)),
  slope: inRadians(ends(i.groundSlope, box.groundSlope)),
  shape: shapes[i.shape],
  span: spanOf(i.release),
  low: i.basketLow,
  high: i.basketHigh,
});

/** Where the worst fall of a figure began, as inputs. */
const there = (worst: Worst) => ({
  cutHeight: worst.cutHeight, limbLength: worst.length, limbAngle: degrees(worst.start), groundSlope: degrees(worst.slope),
});

/** Inputs that differ from those entered. */
type At = { readonly [input: string]: number };
/** A limb may hang still on a strip of bark and then drop: it topples a full length either way, whatever was planned. */
const reaching = (worst: Worst, length: number): number => Math.max(worst.value, length);

type Reaches = { outward: number; inward: number; beside: number; keepOut: number };
const reaches = (i: Given, outward: number, inward: number, spread: number): Reaches => {
  const far = Math.max(outward, inward) + i.margin;
  const half = spread / 2 + i.margin;
  // The strip it falls in, turned by the swing, crosses the square at this distance, and never beyond its own end.
  const beside = Math.max(half, Math.min(far, half / cos(i.swing)));
  return { outward, inward, beside, keepOut: Math.max(far, beside, fact('bystander-distance')) };
};

/** The longest piece whose spread keeps clear of one who stands square beside; spread taken in proportion. Null: any. */
const longestBeside = (i: Given, length: number, spread: number): number | null => {
  const room = i.standOff * cos(i.swing) - i.margin;
  if (room <= 0) return 0;
  const longest = spread === 0 ? Infinity : (2 * room * length) / spread;
  return longest > inputs.limbLength.max ? null : longest;
};

/** The longest piece that, like every shorter one, lands short of one who stands on its stem or tip side. */
const longestAlong = (i: Given, box: Box): { piece: number; at: At } => {
  const found = longestWithin(box, i.standing === 'stemSide' ? 'inward' : 'outward', i.standOff - i.margin, inputs.limbLength.min);
  // Lowest and drooping most, it stands on the ground soonest. A piece under the least a field takes is none.
  if (found === null) return { piece: 0, at: { cutHeight: box.cutHeight[0], limbAngle: degrees(box.start[0]), groundSlope: degrees(box.slope[1]) } };
  const { limbLength: _, ...at } = there(found.at);
  return { piece: found.length, at };
};

const longestOf = (i: Given, box: Box, length: number, spread: number): { piece: number | null; at: At } =>
  i.standing === 'beside' ? { piece: longestBeside(i, length, spread), at: { limbLength: length, spread } } : longestAlong(i, box);

type Said = { outward: number; inward: number; longestPiece: number | null; limbLength: number; passingOut: number; passingIn: number };
/** What is to be said of these figures; the tip grounds soonest from the lowest cut, the longest limb, the steepest ground. */
const findingsOf = (i: Given, f: Said, box: Box): (RawFinding | false)[] => {
  const place = { cutHeight: box.cutHeight[0], start: box.start[0], slope: box.slope[1] };
  const limb: Limb = { length: box.length[1], shape: box.shape };
  const last = startsClear(limb.length, place) ? lastAngle(limb, place, box.span) : null;
  return [
    f.longestPiece !== null && f.longestPiece < f.limbLength && { id: 'tooLong', values: { standOff: i.standOff, longestPiece: f.longestPiece, limbLength: f.limbLength } },
    f.inward > i.cutToStem && { id: 'throwsBack', values: { inward: f.inward, cutToStem: i.cutToStem } },
    last?.grounds === true && { id: 'grounds', values: { grounding: degrees(last.angle) } },
    f.passingOut + f.passingIn > 0 && { id: 'passes', values: { basketLow: i.basketLow, basketHigh: i.basketHigh, passingOut: f.passingOut, passingIn: f.passingIn } },
  ];
};

const ranges = (i: Given, given: AllEnds): Ranges => {
  if (Object.keys(given).length === 0) return { outputs: {}, findings: [], beyond: null };
  const box = boxOf(i, given);
  const found = landing(box)!;
  const shortest = box.length[0];
  // The place of the box where a limb hangs clear of the ground soonest, and the longest that does.
  const clearest = { cutHeight: box.cutHeight[1], start: box.start[1], slope: box.slope[0] };
  const longest = Math.min(box.length[1], longestClear(clearest));
  const spread = ends(i.spread, given.spread);
  const top = reaches(i, reaching(found.outward, longest), reaching(found.inward, longest), spread[1]);
  const least = reaches(i, shortest, shortest, spread[0]);
  const further = found.outward.value > found.inward.value ? found.outward : found.inward;
  const hanging = { cutHeight: clearest.cutHeight, limbLength: longest * (1 - 1e-9), limbAngle: degrees(clearest.start), groundSlope: degrees(clearest.slope) };
  const at = (worst: Worst) => (worst.value > longest && startsClear(worst.length, worst) ? there(worst) : hanging);
  const far = at(further);
  const clear = (slope: number): boolean => startsClear(box.length[1], { cutHeight: box.cutHeight[0], start: box.start[0], slope });
  const alongHigh = Math.max(0, i.standOff - i.margin);
  const along = longestOf(i, box, shortest, spread[1]);
  const piece = {
    low: along.piece ?? inputs.limbLength.max,
    high: i.standing === 'beside' ? (longestBeside(i, longest, spread[0]) ?? inputs.limbLength.max) : alongHigh,
  };
  return {
    outputs: {
      outward: { low: least.outward, high: top.outward, at: at(found.outward) },
      inward: { low: least.inward, high: top.inward, at: at(found.inward) },
      beside: { low: least.beside, high: top.beside, at: { ...far, spread: spread[1] } },
      keepOut: { low: least.keepOut, high: top.keepOut, at: { ...far, spread: spread[1] } },
      passingOut: { low: 0, high: found.passingOut.value, at: there(found.passingOut) },
      passingIn: { low: 0, high: found.passingIn.value, at: there(found.passingIn) },
      longestPiece: { ...piece, at: along.at },
      // Let go at once, the butt is down no later than a stone: no fall of the box takes longer at its shortest.
      fallTime: { low: found.time.value, high: fallDuration(box.cutHeight[1]), at: there(found.time) },
      impactSpeed: { low: 0, high: found.hit.value, at: there(found.hit) },
    },
    findings: findingsOf(i, { ...top, longestPiece: piece.low, limbLength: longest, passingOut: found.passingOut.value, passingIn: found.passingIn.value }, box),
    beyond: clear(box.slope[0]) && clear(box.slope[1]) ? null : outside('tipInGround', { cutHeight: box.cutHeight[0], limbLength: box.length[1] }),
  };
};

/** The worst fall of one way, as a trainer would work it: how far turned, how fast the tip, how long it flies, where it touches. */
const steps = (way: 'outward' | 'inward', i: Given, worst: Worst, total: number): RawStep[] => {
  const limb: Limb = { length: worst.length, shape: shapes[i.shape] };
  const place = { cutHeight: worst.cutHeight, start: worst.start, slope: worst.slope };
  const kept = keptBy(limb, place, worst.release, worst.angle);
  const touch = firstTouch(limb, flightFrom(limb, place, worst.release, kept), worst.slope);
  const letGo = degrees(worst.release);
  const tipSpeed = hingeSpin(limb, worst.start, worst.release, kept) * worst.length;
  const touches = way === 'outward' ? 'touchOut' : 'touchIn';
  return [
    { id: i.shape, values: { letGo, limbLength: i.limbLength, limbAngle: i.limbAngle, kept: 100 * kept }, result: { name: 'tipSpeed', value: tipSpeed } },
    { id: touches, values: { tipSpeed, letGo, kept: 100 * kept, cutHeight: i.cutHeight }, result: { name: touches, value: way === 'outward' ? touch.x : -touch.x } },
    { id: way, values: { [touches]: way === 'outward' ? touch.x : -touch.x, limbLength: i.limbLength }, result: { name: way, value: total } },
  ];
};

const reachMoves = { cutHeight: 'bends', limbLength: 'bends', limbAngle: 'bends', groundSlope: 'bends' } as const;

const passMoves = { ...reachMoves, basketLow: 'bends', basketHigh: 'bends' } as const;

export const dropZone = defineCalculator({
  id: 'drop-zone',
  inputs,
  outputs: {
    outward: { kind: 'quantity', unit: 'm', protects: 'up', moves: reachMoves },
    inward: { kind: 'quantity', unit: 'm', protects: 'up', moves: reachMoves },
    beside: { kind: 'quantity', unit: 'm', protects: 'up', moves: { ...reachMoves, spread: 'up', swing: 'up', margin: 'up' } },
    keepOut: { kind: 'quantity', unit: 'm', protects: 'up', moves: { ...reachMoves, spread: 'up', swing: 'up', margin: 'up' } },
    passingOut: { kind: 'quantity', unit: 'm', protects: 'up', moves: passMoves },
    passingIn: { kind: 'quantity', unit: 'm', protects: 'up', moves: passMoves },
    longestPiece: { kind: 'quantity', unit: 'm', protects: 'down', moves: { ...reachMoves, spread: 'bends', swing: 'down', margin: 'down', standOff: 'up' } },
    fallTime: { kind: 'quantity', unit: 's', protects: 'down', moves: reachMoves },
    impactSpeed: { kind: 'quantity', unit: 'm/s', protects: 'up', moves: reachMoves },
  },
  lead: ['inward', 'outward', 'beside', 'keepOut'],
  middle: { letGo: 'deg', touchOut: 'm', touchIn: 'm', tipSpeed: 'm/s', kept: '%', reach: 'm', grounding: 'deg', bystander: 'm' },
  findings: {
    tooLong: { level: 'stop' },
    throwsBack: { level: 'caution' },
    grounds: { level: 'caution' },
    passes: { level: 'caution' },
    anyPiece: { level: 'note' },
    bystanders: { level: 'note' },
  },
  limits: ['tipInGround'],
  relate: ({ basketLow, basketHigh }): InputProblem[] =>
    // Two heights nearer than a millimetre are one.
    basketLow + 0.001 > basketHigh ? [{ input: 'basketHigh', problem: 'basketOrder', values: { basketLow } }] : [],
  ranges,
  compute: (i) => {
    const box = boxOf(i, {});
    const clear = startsClear(i.limbLength, { cutHeight: i.cutHeight, start: box.start[0], slope: box.slope[0] });
    const found = clear ? landing(box) : null;
    if (found === null) return outside('tipInGround', { cutHeight: i.cutHeight, limbLength: i.limbLength });
    const all = reaches(i, reaching(found.outward, i.limbLength), reaching(found.inward, i.limbLength), i.spread);
    const longestPiece = longestOf(i, box, i.limbLength, i.spread).piece;
    const [passingOut, passingIn] = [found.passingOut.value, found.passingIn.value];
    return answer(
      { ...all, passingOut, passingIn, longestPiece, fallTime: found.time.value, impactSpeed: found.hit.value },
      [
        ...findingsOf(i, { ...all, longestPiece, limbLength: i.limbLength, passingOut, passingIn }, box),
        longestPiece === null && { id: 'anyPiece' },
        { id: 'bystanders', values: { keepOut: all.keepOut } },
      ],
      [
        ...steps('inward', i, found.inward, all.inward),
        ...steps('outward', i, found.outward, all.outward),
        { id: 'beside', values: { spread: i.spread, margin: i.margin, swing: i.swing }, result: { name: 'beside', value: all.beside } },
        { id: 'keepOut', values: { outward: all.outward, inward: all.inward, margin: i.margin, bystander: fact('bystander-distance') }, result: { name: 'keepOut', value: all.keepOut } },
        { id: 'fallTime', values: { cutHeight: i.cutHeight }, result: { name: 'fallTime', value: found.time.value } },
      ],
    );
  },
});
