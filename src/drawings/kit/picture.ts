/** What a geometry is asked for: which view, and the words for its labels. */
import { fit, inset, place, type Extent, type Frame, type Inset } from './frame.ts';
import { placeLabels, type Ask } from './labels.ts';
import type { Badge, Box, Placed, Point, Rect, Shape } from './placed.ts';

export type View<Face extends string> = {
  face: Face;
  labels: Readonly<Record<string, string>>;
  /** The frame to keep to, while a handle is dragged. */
  held?: Frame | null;
};
/** A geometry of a picture that hangs on no figures. */
export type Picture<Face extends string> = (view: View<Face>, box: Box) => Placed;

/** A drawing in hand: the frame it is drawn in, and what has been put on it so far. */
export type Sketch = {
  box: Box;
  frame: Frame;
  at: (x: number, y: number) => Point;
  px: (length: number) => number;
  shapes: Shape[];
  asks: Ask[];
  badges: Badge[];
  keepOff: Rect[];
  draw: (...shapes: readonly (Shape | readonly Shape[])[]) => void;
};

export const sketch = (extent: Extent, box: Box, room: Inset = inset(12), held?: Frame | null): Sketch => {
  const frame = held ?? fit(extent, box, room);
  const shapes: Shape[] = [];
  return {
    box,
    frame,
    at: (x, y) => place(frame, x, y),
    px: (length) => length * frame.scale,
    shapes,
    asks: [],
    badges: [],
    keepOff: [],
    draw: (...more) => shapes.push(...more.flat()),
  };
};

export const finish = (s: Sketch): Omit<Placed, 'handles'> => ({
  box: s.box,
  frame: s.frame,
  shapes: s.shapes,
  badges: s.badges,
  labels: placeLabels(s.asks, s.box, [
    ...s.keepOff,
    ...s.badges.map(({ x, y }) => ({ x: x - 13, y: y - 13, width: 26, height: 26 })),
  ]),
});
