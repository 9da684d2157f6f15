/**
 * A pole held still, from beside: the forces at both hands and along the pole, to one scale that stays the same while the
 * angle is dragged. Lengths in m, origin on the ground under the rear hand.
 */
import type { poleLoad } from '#core/calculators/pole-load.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { planOn, said, worked } from '../kit/figures.ts';
import { inset, onStep, unplace } from '../kit/frame.ts';
import { along, type Place } from '../kit/labels.ts';
import { circle, segment } from '../kit/path.ts';
import { finish, sketch, type View } from '../kit/picture.ts';
import type { Box, Handle, Placed, Point } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';
import { add, less, times, unit } from '../kit/vector.ts';
import { arrow } from '../marks/arrow.ts';
import { ground } from '../marks/ground.ts';
import { person } from '../marks/person.ts';
import { pole } from '../marks/pole.ts';

export type Face = 'side';
export type Inputs = InputsOf<(typeof poleLoad)['inputs']>;
export type Move = { poleAngle: number };

/** Height of the rear hand, and how far before it the feet stand; only how the drawing looks. */
const looks = { grip: 1.05, feet: 0.3, steepest: 75 };

export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  const { balance, gripSpacing, poleAngle, strapShare, strapAt } = inputs;
  const angle = (poleAngle * Math.PI) / 180;
  const ahead: Point = [Math.cos(angle), Math.sin(angle)];
  const across: Point = [-ahead[1], ahead[0]];
  const length = Math.max(balance * 1.5, balance + 0.5, gripSpacing + 0.6, 1.8);
  const top = looks.grip + length * Math.sin((Math.max(poleAngle, 20) * Math.PI) / 180);
  const s = sketch({ left: -0.75, right: length + 0.15, bottom: -0.1, top: Math.max(top, 2) + 0.1 }, box, inset(8, { top: 12, bottom: 18 }), view.held);
  const at = ([x, y]: Point): Point => s.at(x, y + looks.grip);
  const onPole = (distance: number): Point => times(ahead, distance);
  const [rear, tip] = [at([0, 0]), at(onPole(length))];

  s.draw(ground(s.at(-0.75, 0), s.at(length + 0.15, 0)));
  const feet = s.at(looks.feet, 0);
  const figure = person(feet, rear, less(tip, rear), s.frame.scale);
  s.draw(figure.behind, pole(rear, tip, Math.max(s.px(0.25), 15)), figure.before);
  s.draw({ mark: 'other', d: circle(at(onPole(balance)), 6) });

  // One scale: what the front hand carries with the pole level is drawn a little less than a metre long.
  const weight = worked(outcome, 'weight') ?? 0;
  const most = weight * Math.max(1, balance / gripSpacing);
  const metres = (newton: number): number => (0.95 * newton) / most;
  const force = (to: Point, way: Point, newton: number): Point => {
    const from = less(to, times(way, metres(Math.max(newton, 0))));
    const [a, b] = [at(from), at(to)];
    if (Math.hypot(a[0] - b[0], a[1] - b[1]) > 12) {
      s.draw({ mark: 'edge', d: segment(a, b) }, arrow(a, b));
      s.keepOff.push(...along(a, b, 8));
    }
    return a;
  };
  const speak = (name: string, output: string, point: Point, places: Place[], strong = false): void => {
    const value = planOn(outcome, output);
    if (value !== null) s.asks.push({ text: say(word(view.labels, name), { value: said('N', value, 'up') }), at: point, places, gap: 8, wrap: 14, strong });
  };
  const rearForce = worked(outcome, 'rear') ?? 0;
  const frontAt = force(onPole(gripSpacing), across, worked(outcome, 'frontHand') ?? 0);
  const rearWay = times(across, rearForce < 0 ? -1 : 1);
  const rearAt = force([0, 0], rearWay, Math.abs(rearForce));
  const alongAt = force([0, 0], ahead, worked(outcome, 'alongPole') ?? 0);
  const down = add(onPole(balance), [0, -metres(weight)]);
  s.draw(arrow(at(onPole(balance)), at(down)));
  s.keepOff.push(...along(at(onPole(balance)), at(down), 8), ...along(rear, tip, 8));
  s.keepOff.push({ x: feet[0] - s.px(0.3), y: s.at(0, 1.85)[1], width: s.px(0.5), height: s.px(1.85) });
  if (strapShare > 0) {
    const hook = at(onPole(strapAt));
    const pull: Point = [hook[0], hook[1] - s.px(metres((weight * strapShare) / 100))];
    s.draw({ mark: 'edge', d: segment(hook, pull) }, arrow(hook, pull));
    s.asks.push({ text: say(word(view.labels, 'strap')), at: pull, places: ['above', 'right', 'left'], gap: 5, leader: false });
  }
  speak('front', 'frontHand', frontAt, ['below', 'below-right', 'right'], true);
  speak(rearForce < 0 ? 'rearDown' : 'rearUp', 'rearHand', rearAt, ['left', 'above-left', 'above', 'below-left']);
  speak('along', 'alongPole', alongAt, ['below-left', 'left', 'below']);
  s.asks.push({ text: say(word(view.labels, 'weight'), { value: said('N', weight) }), at: at(down), places: ['right', 'below-right', 'below', 'left'], gap: 6, leader: false });

  s.asks.push({ text: said('deg', poleAngle), at: tip, places: ['right', 'below-right', 'left'], gap: 16, leader: false });

  const handles: Handle<Move>[] = [{
    id: 'poleAngle', label: word(view.labels, 'moveAngle'), way: 'up', x: tip[0], y: tip[1], min: 0, max: looks.steepest, step: 1, value: poleAngle, says: said('deg', poleAngle),
    at: (point) => {
      const [x, y] = unplace(s.frame, point);
      const [dx, dy] = unit([x, y - looks.grip]);
      return onStep((Math.atan2(dy, dx) * 180) / Math.PI, 0, looks.steepest, 1);
    },
    move: (value) => ({ poleAngle: value }),
  }];
  return { ...finish(s), handles };
};
