/** A sheet with its handles: what a calculator draws, at build and live. */
import { useEffect, useState } from 'preact/hooks';
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
  /** Without it nothing can be dragged. */
  onMove?: OnMove<Move>;
};
type Props<Move> = LiveProps<Move> & { placed: Placed<Move>; hold: (frame: Frame) => (on: boolean) => void };

/** Half of 48 px as rendered, in units of the box. */
const useReach = (id: string, width: number): number => {
  const [reach, setReach] = useState(24);
  useEffect(() => {
    const measure = () => {
      const scale = (document.getElementById(`${id}-title`)?.parentElement as SVGSVGElement | null | undefined)?.getScreenCTM()?.a;
      if (scale) setReach(24 / scale);
    };
    measure();
    addEventListener('resize', measure);
    return () => removeEventListener('resize', measure);
  }, [id, width]);
  return reach;
};

export function Live<Move>({ placed, hold, onMove, units = 'metric', ...sheet }: Props<Move>) {
  const reach = useReach(sheet.id, placed.box.width);
  const [drags, setDrags] = useState(false);
  const onHold = (on: boolean) => {
    setDrags(on);
    hold(placed.frame)(on);
  };
  return (
    <Sheet {...sheet} placed={placed} only={drags ? units : undefined}>
      {onMove &&
        placed.handles.map((handle) => (
          <Handle key={handle.id} handle={handle} reach={reach} units={units} onMove={onMove} onHold={onHold} />
        ))}
    </Sheet>
  );
}
