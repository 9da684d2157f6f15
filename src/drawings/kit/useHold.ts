/** The frame of a drawing while one of its handles is dragged: it must not move under the finger. */
import { useState } from 'preact/hooks';
import type { Frame } from './frame.ts';

export const useHold = () => {
  const [held, set] = useState<Frame | null>(null);
  return { held, hold: (frame: Frame) => (on: boolean) => set(on ? frame : null) };
};
