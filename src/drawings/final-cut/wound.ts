/** The wound seen square on, and the outline of what a flush cut would open, to the same scale. */
import { inset } from '../kit/frame.ts';
import { ellipse } from '../kit/path.ts';
import { sketch, type View } from '../kit/picture.ts';
import type { Box } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';
import { dimension } from '../marks/dimension.ts';
import type { Face } from './geometry.ts';
import type { Scene } from './scene.ts';

export const wound = (scene: Scene, view: View<Face>, box: Box) => {
  const { inputs, woundLength: long, flushLength } = scene;
  const { branchDiameter: wide, collarSwell } = inputs;
  const most = Math.max(long, flushLength) / 2;
  const half = (collarSwell * wide) / 2;
  const s = sketch({ left: -half, right: half, bottom: -most, top: most }, box, inset(12, { left: 80, right: 80, top: 10, bottom: 30 }), view.held);
  const centre = s.at(0, 0);
  const ring = (k: number) => ellipse(centre, (s.px(wide) / 2) * k, (s.px(long) / 2) * k);
  s.draw({ mark: 'othercut', d: ellipse(centre, s.px(half), s.px(flushLength) / 2) });
  s.draw({ mark: 'section', d: ring(1) }, { mark: 'bark', d: [0.75, 0.5, 0.25].map(ring).join('') });
  const tall = dimension(s.at(half, -long / 2), s.at(half, long / 2), -14);
  const broad = dimension(s.at(-wide / 2, -most), s.at(wide / 2, -most), -12);
  s.draw(tall.shapes, broad.shapes);
  const text = (name: string) => say(word(view.labels, name), scene.figures);
  if ('woundLength' in scene.figures) {
    s.asks.push(
      { text: text('woundLength'), at: tall.middle, places: ['right', 'below-right'], gap: 6, leader: false, wrap: 10 },
      { text: text('woundWidth'), at: broad.middle, places: ['below'], gap: 4, leader: false, wrap: 24 },
      { text: text('woundArea'), at: s.at(-wide / 2, -long * 0.1), places: ['left', 'below-left'], gap: 10, strong: true, wrap: 11 },
      { text: text('flushArea'), at: s.at(-half * 0.8, flushLength * 0.3), places: ['left', 'above-left'], gap: 10, wrap: 11 },
    );
  }
  return { s, handles: [] };
};
