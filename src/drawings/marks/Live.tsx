/** A sheet with its handles: what a calculator draws, at build and live. */
import type { UnitSystem } from '#core/kit/units.ts';
import type { Frame } from '../kit/frame.ts';
import type { DrawingWords, OnMove, Placed } from '../kit/placed.ts';
import { Handle } from './Handle.tsx';
import { Sheet } from './Sheet.tsx';

export type LiveProps<Move> = {
  /** Unique on the page. */
  id: string;
  words: DrawingWords;
  /** The last good state, while a figure has a problem. */
  quiet?: boolean;
  /** For the value of a handle as it is read out. */
  units?: UnitSystem;
  /** Half the size of a handle's target, in units of the box: 24 px as rendered. */
  reach?: number;
  /** Without it nothing can be dragged. */
  onMove?: OnMove<Move>;
};
type Props<Move> = LiveProps<Move> & { placed: Placed<Move>; hold: (frame: Frame) => (on: boolean) => void };

export function Live<Move>({ placed, hold, onMove, units = 'metric', reach = 24, ...sheet }: Props<Move>) {
  return (
    <Sheet {...sheet} placed={placed}>
      {onMove &&
        placed.handles.map((handle) => (
          <Handle key={handle.id} handle={handle} reach={reach} units={units} onMove={onMove} onHold={hold(placed.frame)} />
        ))}
    </Sheet>
  );
}
