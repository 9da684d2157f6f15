/** How much of the live crown goes with these cuts, and what still fits? */
import { crown } from '../facts/crown.ts';
import { crownShare as shareOf, largestCut, singleCut } from '../formulas/crown.ts';
import { circleArea } from '../formulas/section.ts';
import { answer, defineCalculator, type InputProblem, outside } from '../kit/calculator.ts';
import { choice, guess, list, quantity } from '../kit/inputs.ts';

const moves = { stemDiameter: 'down', cuts: 'up', earlier: 'up' } as const;
const roomMoves = { stemDiameter: 'up', cuts: 'down', earlier: 'down' } as const;
const room = { kind: 'quantity', unit: '%', protects: 'down', moves: roomMoves } as const;

/** The strictest share a year for such a tree; null where the source gives none: only if necessary. */
const limitFor = { young: 'young-a-year', middle: 'middle-a-year', mature: 'mature-a-year', old: null } as const;

export const crownShare = defineCalculator({
  id: 'crown-share',
  exampleGot: 'measured',
  inputs: {
    stemDiameter: quantity('mm', { min: 40, max: 1500, step: 5, example: 250, tolerance: guess({ share: 0.15 }, { least: 5 }), girth: true }),
    cuts: list('mm', { min: 5, max: 400, shortest: 1, longest: 60, example: [60, 45, 45], tolerance: guess({ share: 0.2 }, { share: 0.02, least: 3 }), girth: true }),
    earlier: quantity('%', { min: 0, max: 100, step: 1, example: 0 }),
    vigour: choice(['young', 'middle', 'mature', 'old'], 'mature'),
  },
  outputs: {
    share: { kind: 'quantity', unit: '%', protects: 'up', moves },
    room,
    largestMore: { kind: 'quantity', unit: 'mm', protects: 'down', moves: roomMoves },
    limit: { kind: 'quantity', unit: '%', protects: 'down', moves: {} },
    roomAmerican: room,
    roomBritish: room,
    roomCouncil: room,
    singleCut: { kind: 'quantity', unit: 'mm', protects: 'up', moves: { cuts: 'up' } },
    cutArea: { kind: 'quantity', unit: 'mm2', protects: 'up', moves: { cuts: 'up' } },
  },
  lead: ['share', 'room', 'largestMore'],
  middle: { stemArea: 'mm2', british: '%', council: '%', thisTime: '%' },
  findings: {
    tooMuch: { level: 'caution', at: 'share' },
    onlyIfNecessary: { level: 'caution' },
    severe: { level: 'caution', at: 'share' },
    askFirst: { level: 'note', at: 'share' },
  },
  limits: ['moreThanCrown'],
  relate: ({ stemDiameter, cuts }): InputProblem[] =>
    cuts.some((cut) => cut > stemDiameter) ? [{ input: 'cuts', problem: 'cutLarger', values: { stemDiameter } }] : [],
  compute: ({ stemDiameter, cuts, earlier, vigour }) => {
    const thisTime = 100 * shareOf(cuts, stemDiameter);
    const share = thisTime + earlier;
    if (share > 100) return outside('moreThanCrown', { share });
    const key = limitFor[vigour];
    const limit = key === null ? null : crown(key);
    const british = 100 * crown('severe-from');
    const council = crown('permit-from');
    const single = singleCut(cuts);
    const cutArea = circleArea(single);
    const left = limit === null ? null : limit - share;
    const largestMore = left === null ? null : largestCut(Math.max(0, left) / 100, stemDiameter);
    return answer(
      {
        share,
        room: left,
        largestMore,
        limit,
        roomAmerican: vigour === 'mature' ? crown('a-season-1995') - share : null,
        roomBritish: british - share,
        roomCouncil: council - share,
        singleCut: single,
        cutArea,
      },
      [
        limit !== null && share > limit && { id: 'tooMuch', values: { share, limit } },
        limit === null && { id: 'onlyIfNecessary' },
        share > british && { id: 'severe', values: { share } },
        share > council && { id: 'askFirst', values: { share } },
      ],
      [
        { id: 'cutArea', values: { singleCut: single }, result: { name: 'cutArea', value: cutArea } },
        { id: 'stemArea', values: { stemDiameter }, result: { name: 'stemArea', value: circleArea(stemDiameter) } },
        { id: 'thisTime', values: { cutArea, stemArea: circleArea(stemDiameter) }, result: { name: 'thisTime', value: thisTime } },
        { id: 'share', values: { thisTime, earlier }, result: { name: 'share', value: share } },
        ...(limit === null || left === null || largestMore === null ? [] : [
          { id: 'room', values: { limit, share }, result: { name: 'room', value: left } },
          { id: 'largestMore', values: { stemDiameter, room: Math.max(0, left) }, result: { name: 'largestMore', value: largestMore } },
        ]),
      ],
    );
  },
});
