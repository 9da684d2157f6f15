import { useState } from 'preact/hooks';
import type { Outcome } from '#core/kit/outcome.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import type { Frame } from '../kit/frame.ts';
import type { Box, DrawingWords, OnMove } from '../kit/placed.ts';
import { Handle } from '../marks/Handle.tsx';
import { Sheet } from '../marks/Sheet.tsx';
import { geometry, type Face, type Inputs, type Move } from './geometry.ts';

type Props = {
  id: string;
  face: Face;
  inputs: Inputs;
  outcome: Outcome;
  box: Box;
  words: DrawingWords;
  quiet?: boolean;
  /** Where the person stands; the nearest place where nothing is given. */
  standOff?: number | null;
  units?: UnitSystem;
  /** Half the size of a handle's target in units of the box. */
  reach?: number;
  /** Without it nothing can be dragged. */
  onMove?: OnMove<Move>;
};

export const Drawing = ({ id, face, inputs, outcome, box, words, quiet = false, standOff = null, units = 'metric', reach = 24, onMove }: Props) => {
  const [held, hold] = useState<Frame | null>(null);
  const placed = geometry(inputs, outcome, { face, labels: words.labels, standOff, held }, box);
  return (
    <Sheet id={id} placed={placed} words={words} quiet={quiet}>
      {onMove &&
        placed.handles.map((handle) => (
          <Handle key={handle.id} handle={handle} reach={reach} units={units} onMove={onMove} onHold={(on) => hold(on ? placed.frame : null)} />
        ))}
    </Sheet>
  );
};
