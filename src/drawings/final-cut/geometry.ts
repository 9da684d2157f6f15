/** Where the last cut goes: the union from beside, the wound square on, and where to stand, from above. True to scale. */
import type { Outcome } from '#core/kit/outcome.ts';
import { finish, type View } from '../kit/picture.ts';
import type { Box, Placed } from '../kit/placed.ts';
import { sceneOf, type Inputs } from './scene.ts';
import { side } from './side.ts';
import { stand } from './stand.ts';
import { wound } from './wound.ts';

export type Face = 'side' | 'section' | 'plan';
export type Move = { branchAngle: number } | { ridgeAngle: number } | { stemLean: number };
export type { Inputs };

export const geometry = (inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<Move> => {
  const scene = sceneOf(inputs, outcome);
  const { s, handles } = view.face === 'side' ? side(scene, view, box) : view.face === 'section' ? wound(scene, view, box) : stand(scene, outcome, view, box);
  return { ...finish(s), handles };
};
