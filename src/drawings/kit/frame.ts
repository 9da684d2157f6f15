/** From metres (x to the right, y up) to px of a box (y down), true to scale, and back. */
import type { Box, Point } from './placed.ts';

export type Extent = { left: number; right: number; bottom: number; top: number };
/** `scale` in px a metre; `x0`, `y0`: where the origin lies. */
export type Frame = { scale: number; x0: number; y0: number };
export type Inset = { top: number; right: number; bottom: number; left: number };

export const inset = (all: number, more: Partial<Inset> = {}): Inset => ({ top: all, right: all, bottom: all, left: all, ...more });

/** The largest scale at which the extent fits in the box less its inset; what room is left is shared out evenly. */
export const fit = (extent: Extent, box: Box, room: Inset): Frame => {
  const width = box.width - room.left - room.right;
  const height = box.height - room.top - room.bottom;
  const scale = Math.min(width / (extent.right - extent.left), height / (extent.top - extent.bottom));
  return {
    scale,
    x0: room.left + width / 2 - ((extent.left + extent.right) / 2) * scale,
    y0: room.top + height / 2 + ((extent.bottom + extent.top) / 2) * scale,
  };
};

export const place = (frame: Frame, x: number, y: number): Point => [frame.x0 + x * frame.scale, frame.y0 - y * frame.scale];
export const unplace = (frame: Frame, [x, y]: Point): Point => [(x - frame.x0) / frame.scale, (frame.y0 - y) / frame.scale];

/** Within bounds, and on a step counted from the lower one. */
export const onStep = (value: number, min: number, max: number, step: number): number => {
  const n = Math.round((Math.min(Math.max(value, min), max) - min) / step);
  return Math.min(Number((min + n * step).toFixed(6)), max);
};
