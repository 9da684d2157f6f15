/** What the plans of a site are made of, seen from above. Not to scale: people and saw are drawn large enough to see. */
import { circle, ellipse, polygon, segment } from '../kit/path.ts';
import type { Sketch } from '../kit/picture.ts';
import type { Point } from '../kit/placed.ts';
import { same, word } from '../kit/say.ts';
import { less } from '../kit/vector.ts';
import { limb, section } from '../marks/limb.ts';
import { personAbove } from '../marks/person.ts';
import { bar } from '../marks/pole.ts';

export type Labels = Readonly<Record<string, string>>;
/** px a metre for people: larger than the ground they stand on. */
export const large = 46;
export const told = (labels: Labels) => (name: string) => same(word(labels, name));

/** Somebody standing, facing `way`, the hands close to the body. */
export const someone = (s: Sketch, at: Point, way: Point): void => {
  const feet = s.at(...at);
  s.draw(personAbove(feet, [feet[0] + way[0] * 7, feet[1] - way[1] * 7], [way[0] * 0.1, way[1] * -0.1], large));
  s.keepOff.push({ x: feet[0] - 13, y: feet[1] - 13, width: 26, height: 26 });
};

/** A vehicle from above, its front to the right. */
export const vehicle = (s: Sketch, left: number, bottom: number, length: number, width: number): void => {
  const corner = (x: number, y: number) => s.at(left + x * length, bottom + y * width);
  s.draw({ mark: 'vessel', d: polygon([corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)]) + segment(corner(0.72, 0), corner(0.72, 1)) });
  const [x, y] = corner(0, 1);
  s.keepOff.push({ x, y, width: s.px(length), height: s.px(width) });
};

/** A stem, a limb pointing right from it, the ground it may land on, and somebody sawing from square beside it. */
export const job = (s: Sketch, stem: Point, sawing: Point | null): void => {
  const [x, y] = stem;
  const cut = s.at(x + 0.75, y);
  s.draw({ mark: 'landing', d: ellipse(s.at(x + 1.75, y), s.px(1.65), s.px(1.05)) });
  s.draw(limb({ from: s.at(x, y), to: s.at(x + 2.6, y), fromWidth: 15, toWidth: 9, start: 'butt' }));
  s.draw({ mark: 'stem', d: circle(s.at(x, y), 15) }, { mark: 'bark', d: section(s.at(x, y), 15) });
  s.keepOff.push({ x: s.at(x, y)[0] - 16, y: s.at(x, y)[1] - 16, width: s.px(2.6) + 16, height: 32 });
  if (!sawing) return;
  const feet = s.at(...sawing);
  s.draw(personAbove(feet, feet, less(cut, feet), large), { mark: 'pole', d: segment(feet, [cut[0], cut[1] + 14]) }, bar([cut[0], cut[1] + 14], [0, -1], 20, 5));
  s.keepOff.push({ x: feet[0] - 14, y: cut[1], width: 28, height: feet[1] - cut[1] + 14 });
};
