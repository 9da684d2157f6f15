/** Where the limb may land: from beside with its worst falls, and from above. True to scale. */
import type { Outcome } from '#core/kit/outcome.ts';
import type { View } from '../kit/picture.ts';
import type { Box, Placed } from '../kit/placed.ts';
import { plan } from './plan.ts';
import { sceneOf, type Inputs } from './scene.ts';
import { side, type Moment, type Move } from './side.ts';

export type Face = 'side' | 'plan';
export type { Inputs, Move, Moment };

/** `moment`: the pose of the worst fall that is drawn solid, and of which way; without it the limb before it moves. */
export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face> & { moment: Moment | null }, box: Box): Placed<Move> => {
  const scene = sceneOf(inputs, outcome);
  return view.face === 'side' ? side(inputs, scene, view.labels, box, view.moment, view.held) : plan(inputs, scene, view.labels, box);
};
