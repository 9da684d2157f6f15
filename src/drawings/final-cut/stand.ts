/** Where to stand so that the bar lies in the plane of the cut, from above: the limb to the right, the cut at the origin. */
import type { Outcome } from '#core/kit/outcome.ts';
import { quantityOf } from '../kit/figures.ts';
import { inset } from '../kit/frame.ts';
import { circle, segment } from '../kit/path.ts';
import { sketch, type View } from '../kit/picture.ts';
import type { Box, Point } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';
import { less, times, unit } from '../kit/vector.ts';
import { dimension } from '../marks/dimension.ts';
import { limb } from '../marks/limb.ts';
import { personAbove } from '../marks/person.ts';
import { pole } from '../marks/pole.ts';
import type { Face } from './geometry.ts';
import type { Scene } from './scene.ts';

export const stand = (scene: Scene, outcome: Outcome, view: View<Face>, box: Box) => {
  const { inputs, stemWidth } = scene;
  const { poleLength, poleAngle, branchDiameter } = inputs;
  const level = poleLength * Math.cos((poleAngle * Math.PI) / 180);
  const along = quantityOf(outcome, 'shiftAlong')?.value ?? null;
  const aside = along === null ? level : Math.sqrt(Math.max(0, level * level - along * along));
  const feet: Point = [along ?? 0, -aside];
  const stem = (Math.min(stemWidth, 800) / 2000);
  const s = sketch(
    { left: Math.min(-stem * 2 - 0.3, feet[0] - 0.5), right: Math.max(1.6, feet[0] + 0.6), bottom: -Math.max(aside, 0.9) - 0.5, top: stem + 0.3 },
    box, inset(10, { left: box.width * 0.12, right: box.width * 0.12 }), view.held,
  );
  const text = (name: string) => say(word(view.labels, name), scene.figures);
  s.draw(limb({ from: s.at(-stem, 0), to: s.at(1.2, 0), fromWidth: s.px(branchDiameter / 1000), toWidth: s.px(branchDiameter / 1000), start: 'butt' }));
  s.draw({ mark: 'stem', d: circle(s.at(-stem, 0), Math.max(s.px(stem), 6)) });
  const cut = s.at(0, 0);
  const half = Math.max(s.px(branchDiameter / 2000) + 8, 14);
  s.draw({ mark: 'cut', d: segment([cut[0], cut[1] - half], [cut[0], cut[1] + half]) });
  s.draw({ mark: 'guide', d: segment(cut, s.at(0, -Math.max(aside, 0.9))) });
  s.asks.push({ text: text('tip'), at: s.at(1.2, 0), places: ['above', 'right', 'above-left'], leader: false, gap: 12 });
  if (along === null) {
    s.asks.push({ text: text('nowhere'), at: s.at(0, -level / 2), places: ['right', 'left'], strong: true, wrap: 18, leader: false, gap: 12 });
    return { s, handles: [] };
  }
  const rear = s.at(...feet);
  const ahead = unit(less(cut, rear));
  s.draw(pole(rear, cut, Math.max(s.px(0.3), 14)));
  s.draw(personAbove(less(rear, times(ahead, s.px(0.1))), rear, ahead, s.frame.scale));
  const shift = dimension(s.at(0, -aside), s.at(along, -aside), along > 0 ? -20 : 20);
  if (Math.abs(along) > 0.05) {
    s.draw(shift.shapes);
    s.asks.push({ text: text(along > 0 ? 'towardsTip' : 'towardsStem'), at: shift.middle, places: ['below', 'below-right', 'below-left', 'left', 'right'], gap: 5, strong: true, wrap: 16, leader: false });
  } else {
    s.asks.push({ text: text('square'), at: rear, places: ['right', 'left'], gap: 22, strong: true, wrap: 16 });
  }
  return { s, handles: [] };
};
