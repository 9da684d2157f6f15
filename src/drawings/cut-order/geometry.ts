/**
 * The limb as it is held, its bend drawn far larger than it is, squeezed and stretched faces hatched, the cuts numbered in
 * order. Faces go by the sign of the moment of the same beam as the sums; the place of no moment is shown when it is near.
 */
import type { cutOrder } from '#core/calculators/cut-order.ts';
import { moment, type Support } from '#core/formulas/beam.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { said } from '../kit/figures.ts';
import { inset, onStep } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { circle, polygon, segment } from '../kit/path.ts';
import { finish, sketch, type View } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';
import { add, apart, between, less, times, unit } from '../kit/vector.ts';
import { arrow } from '../marks/arrow.ts';
import { ground } from '../marks/ground.ts';
import { limb, onLimb, section, type Limb } from '../marks/limb.ts';
import { stem } from '../marks/stem.ts';

export type Face = 'side';
export type Inputs = InputsOf<(typeof cutOrder)['inputs']>;
export type Move = { cutAt: number };

const beams = { free: 'free', tipResting: 'propped', hungBoth: 'hung', heldBoth: 'held' } as const satisfies Record<Inputs['support'], Support>;
const bows = { free: 0.75, tipResting: 0.15, hungBoth: -0.7, heldBoth: -0.3 } as const satisfies Record<Inputs['support'], number>;
const pieces = 24;

export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  const s = sketch({ left: 0, right: 10, bottom: 0, top: 6.2 }, box, inset(6, { bottom: 22 }), view.held);
  const text = (name: string, figures = {}) => say(word(view.labels, name), figures);
  const { support } = inputs;
  const atStem = support === 'free' || support === 'tipResting';
  const tilt = support === 'hungBoth' || support === 'heldBoth' ? 0 : (Math.min(30, Math.max(-30, inputs.limbAngle)) / 30) * 1.1;
  const y0 = support === 'tipResting' ? 3.4 : 3.1;
  const end: Point = support === 'tipResting' ? s.at(9.5, 1.0) : s.at(9.5, y0 + tilt);
  const l: Limb = { from: s.at(atStem ? 1.5 : 0.4, y0), to: end, fromWidth: s.px(1.35), toWidth: s.px(inputs.shape === 'pole' ? 0.55 : 1), bow: s.px(bows[support]), start: atStem ? 'butt' : 'on', end: 'cut', bare: true };
  const loads = { length: inputs.length, spread: inputs.shape === 'whole' ? 'even' : 'taper', weight: inputs.weight, extraLoad: inputs.extraLoad, extraAt: Math.min(inputs.extraAt, inputs.length) } as const;
  const signAt = (t: number): number => Math.sign(moment(loads, beams[support], t * inputs.length));
  if (support === 'tipResting') s.draw(ground(s.at(0, 0.35), s.at(10, 0.35)));
  if (atStem) {
    s.draw(stem(s.at(0.9, 0.35), s.at(0, 5.6)[1], s.px(1.2)));
    s.keepOff.push(...along(s.at(1.5, 0.35), s.at(1.5, 5.6)));
  }
  s.draw(limb(l));
  const radius = s.px(0.45);
  const other = (t: number, side: 1 | -1): void => {
    const half = (l.fromWidth + (l.toWidth - l.fromWidth) * t) / 2;
    const at = add(onLimb(l, t), [0, -side * (half + radius)]);
    s.draw({ mark: 'section', d: circle(at, radius) }, { mark: 'bark', d: section(at, radius) });
  };
  if (support === 'hungBoth') for (const t of [0.04, 0.96]) other(t, -1);
  if (support === 'heldBoth') for (const t of [0.04, 0.96]) for (const side of [1, -1] as const) other(t, side);

  // Faces, piece by piece along the limb, joined where the sign stays.
  const strip = (from: number, to: number, side: number): string => {
    const ts = [0, 0.25, 0.5, 0.75, 1].map((k) => from + (to - from) * k);
    return polygon([...ts.map((t) => onLimb(l, t, side * 0.96)), ...ts.toReversed().map((t) => onLimb(l, t, side * 0.25))]);
  };
  for (let i = 0, from = 0; i < pieces; i++) {
    const sign = signAt((i + 0.5) / pieces);
    if (i < pieces - 1 && signAt((i + 1.5) / pieces) === sign) continue;
    const to = (i + 1) / pieces;
    if (sign !== 0) s.draw({ mark: 'squeezed', d: strip(from, to, sign) }, { mark: 'pulled', d: strip(from, to, -sign) });
    from = to;
  }

  const t = Math.min(1, inputs.cutAt / inputs.length);
  const answer = outcome.kind === 'answer' ? outcome : null;
  const chosen = answer?.outputs['firstCutSide'];
  const side = chosen && 'also' in chosen ? chosen.value : 'either';
  const [upper, under] = [onLimb(l, t, 1), onLimb(l, t, -1)];
  const back = Math.min(s.px(0.4), 8) / apart(l.from, l.to);
  const cut = (at: number, face: 1 | -1, deep: number): string => segment(onLimb(l, at, face * 1.3), onLimb(l, at, face * (1 - 2 * deep)));
  const off = times(unit(less(upper, under)), 18);
  const depth = Math.max(0.06, inputs.undercut / 100);
  if (side === 'either') {
    s.draw({ mark: 'cut', d: cut(t, 1, 0.12) + cut(t, -1, 0.12) });
    const [one, two] = [add(upper, off), less(under, off)];
    s.badges.push({ x: one[0], y: one[1], text: '?' }, { x: two[0], y: two[1], text: '?' });
    s.asks.push({ text: text('nick'), at: one, places: ['above-right', 'right', 'above'], gap: 14, strong: true, leader: false, wrap: 18 });
  } else {
    const first = side === 'top' ? 1 : -1;
    const step = Math.max(0, t - back);
    s.draw({ mark: 'cut', d: cut(t, first, depth) + cut(step, -first as 1 | -1, Math.min(0.6, 0.95 - depth)) });
    const other2 = less(onLimb(l, step, -first), times(off, first));
    const mine = add(first === 1 ? upper : under, times(off, first));
    s.badges.push({ x: mine[0], y: mine[1], text: '1' }, { x: other2[0], y: other2[1], text: '2' });
    s.asks.push(
      { text: text('first'), at: mine, places: first === 1 ? ['above-right', 'right'] : ['below-right', 'right'], gap: 14, strong: true, leader: false, wrap: 18 },
      { text: text('release'), at: other2, places: first === 1 ? ['below-left', 'below-right', 'left'] : ['above-left', 'above-right', 'left'], gap: 14, strong: true, leader: false, wrap: 18 },
    );
  }
  const near = answer?.findings.find((f) => f.id === 'nearTurn')?.values['noMoment'];
  if (typeof near === 'number') {
    const at = onLimb(l, near / inputs.length);
    s.draw({ mark: 'othercut', d: circle(at, 7) });
    s.asks.push({ text: text('turns'), at, places: ['above-right', 'below-right'], gap: 16, wrap: 16 });
  }
  if (inputs.extraLoad > 0) {
    const at = onLimb(l, loads.extraAt / inputs.length, 1);
    s.draw(arrow([at[0], at[1] - 34], at));
    s.asks.push({ text: said('kg', inputs.extraLoad), at: [at[0], at[1] - 34], places: ['above', 'right'], gap: 4, leader: false });
  }
  s.asks.push(
    { text: text('squeezed'), at: [6, box.height - 12], places: ['right'], gap: 22, leader: false, wrap: 24 },
    { text: text('pulled'), at: [box.width / 2, box.height - 12], places: ['right'], gap: 22, leader: false, wrap: 24 },
  );
  const swatch = (x: number): Point[] => [[x, box.height - 19], [x + 18, box.height - 19], [x + 18, box.height - 5], [x, box.height - 5]];
  for (const [mark, x] of [['squeezed', 6], ['pulled', box.width / 2]] as const) s.draw({ mark, d: polygon(swatch(x)) }, { mark: 'dim', d: polygon(swatch(x)) });
  s.keepOff.push(...along(onLimb(l, 0, 1), onLimb(l, 1, 1), 5), ...along(onLimb(l, 0, -1), onLimb(l, 1, -1), 5), ...along(upper, under, 12));
  const place = between(upper, under, 0.5);
  const span = l.to[0] - l.from[0];
  const handles: Handle<Move>[] = [{
    id: 'cutAt', label: word(view.labels, 'moveCut'), way: 'across', x: place[0], y: place[1], min: 0, max: Math.min(10, inputs.length), step: 0.05, value: inputs.cutAt, says: said('m', inputs.cutAt),
    at: ([x]) => onStep(((x - l.from[0]) / span) * inputs.length, 0, Math.min(10, inputs.length), 0.05),
    move: (value) => ({ cutAt: value }),
  }];
  return { ...finish(s), handles };
};
