/** Where to stand: from beside and from above, true to scale. See `scene.ts` for what stands where. */
import type { Outcome } from '#core/kit/outcome.ts';
import type { View } from '../kit/picture.ts';
import type { Box, Placed } from '../kit/placed.ts';
import { plan } from './plan.ts';
import type { Inputs, Place } from './scene.ts';
import { side, type Move } from './side.ts';

export type Face = 'side' | 'plan';
export type { Inputs, Move };

/** `view.standOff` (m) puts the person there; without it they stand at the nearest stand-off to plan on. */
export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face> & Place, box: Box): Placed<Move> =>
  (view.face === 'side' ? side : plan)(inputs, outcome, view, view.labels, box, view.held);
