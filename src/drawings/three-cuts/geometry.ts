/**
 * Taking a limb off in three cuts, from beside: an undercut on the squeezed face, the release cut on the stretched one a
 * step towards the stem, the last one just outside the collar. Not to scale: the step is drawn larger than it is cut.
 */
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { pen, polygon, segment } from '../kit/path.ts';
import { finish, sketch, type Picture } from '../kit/picture.ts';
import type { Point } from '../kit/placed.ts';
import { same, word } from '../kit/say.ts';
import { add, between, less, times, unit } from '../kit/vector.ts';
import { arrow } from '../marks/arrow.ts';
import { dimension } from '../marks/dimension.ts';
import { limb, onLimb, type Limb } from '../marks/limb.ts';

export type Face = 'side';

/** Places along the limb, from the stem (0) to where the drawing ends (1). */
const last = 0.115;
const release = 0.5;
const undercut = 0.6;

export const geometry: Picture<Face> = (view, box) => {
  const s = sketch({ left: 0, right: 10, bottom: 0, top: 6.2 }, box, inset(6));
  const say = (name: string) => same(word(view.labels, name));
  const whole: Limb = { from: s.at(1.35, 2.55), to: s.at(9.7, 4.0), fromWidth: s.px(1.42), toWidth: s.px(1.05), bow: s.px(0.16), start: 'butt', bare: true };
  const on = (t: number, across: number) => onLimb(whole, t, across);

  // The stem with its swelling under the limb, then the limb out of it.
  const p = (x: number, y: number) => s.at(x, y);
  const stem = pen();
  stem.moveTo(...p(0.1, 6.1));
  stem.bezierCurveTo(...p(0.5, 6.3), ...p(0.9, 5.9), ...p(1.3, 6.1));
  stem.lineTo(...p(1.32, 4.0));
  stem.quadraticCurveTo(...p(1.36, 3.5), ...on(0.045, 1));
  stem.lineTo(...on(0.115, -1.0));
  stem.bezierCurveTo(...p(1.95, 1.75), ...p(1.5, 1.5), ...p(1.42, 0.7));
  stem.lineTo(...p(1.42, 0.1));
  stem.bezierCurveTo(...p(1.0, 0.3), ...p(0.5, -0.1), ...p(0.04, 0.1));
  stem.closePath();
  const stays = [0, 0.2, 0.4, undercut];
  s.draw(
    limb(whole, 'piece'),
    { mark: 'limb', d: polygon([...stays.map((t) => on(t, 1)), ...stays.toReversed().map((t) => on(t, -1))]) },
    { mark: 'stem', d: stem.toString() },
  );

  // The two faces between the stem and the cuts; what goes.
  const strip = (from: number, to: number, inner: number, outer: number) =>
    polygon([...[0, 0.25, 0.5, 0.75, 1].map((k) => on(from + (to - from) * k, outer)), ...[1, 0.75, 0.5, 0.25, 0].map((k) => on(from + (to - from) * k, inner))]);
  s.draw(
    { mark: 'pulled', d: strip(last + 0.02, release, 0.45, 0.97) },
    { mark: 'squeezed', d: strip(last + 0.02, undercut, -0.45, -0.97) },
  );

  // The cuts.
  const cut = (a: Point, b: Point, more: number) => segment(less(a, times(unit(less(b, a)), more)), b);
  const one = [on(undercut, -1), on(undercut, -0.4)] as const;
  const two = [on(release, 1), on(release, -0.15)] as const;
  const three = [on(0.06, 1.02), on(last + 0.012, -1.0)] as const;
  s.draw(
    { mark: 'cut', d: cut(...one, 9) + cut(...two, 9) + cut(...three, 9) },
  );
  const badge = (text: string, end: Point, other: Point, off: number) => {
    const [x, y] = less(end, times(unit(less(other, end)), off));
    s.badges.push({ x, y, text });
    return [x, y] as Point;
  };
  const b1 = badge('1', ...one, 22);
  const b2 = badge('2', ...two, 22);
  const b3 = badge('3', ...three, 22);

  const step = dimension(on(release, 1.25), on(undercut, 1.25), 8);
  const fall = [onLimb(whole, 0.88, -1.35), onLimb(whole, 0.88, -2.6)] as const;
  s.draw(step.shapes, arrow(fall[0], add(fall[0], [0, fall[1][1] - fall[0][1]])));
  s.asks.push(
    { text: say('undercut'), at: b1, places: ['below', 'right'], gap: 14, wrap: 18, strong: true, leader: false },
    { text: say('pulled'), at: on(0.25, 0.7), places: ['above', 'above-right'], gap: 20, wrap: 12 },
    { text: say('release'), at: b2, places: ['left', 'above'], gap: 14, wrap: 16, strong: true, leader: false },
    { text: say('last'), at: b3, places: ['above', 'right'], gap: 13, wrap: 12, strong: true, leader: false },
    { text: say('step'), at: step.middle, places: ['above', 'above-right', 'right'], gap: 5, wrap: 24 },
    { text: say('squeezed'), at: on(0.3, -0.7), places: ['below', 'below-left'], gap: 22, wrap: 14 },
    { text: say('collar'), at: p(1.62, 1.75), places: ['below-right', 'right'], gap: 16, wrap: 12 },
    { text: say('goes'), at: between(on(undercut, 0), on(1, 0), 0.56), places: ['on'], leader: false },
  );
  s.keepOff.push(...along(on(0, 1), on(1, 1)), ...along(on(0.1, -1), on(1, -1)), ...along(fall[0], fall[1]), ...along(on(release, 1), add(on(release, 1), [0, -s.px(0.5)])));
  return { ...finish(s), handles: [] };
};
