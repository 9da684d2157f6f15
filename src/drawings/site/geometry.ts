/** Where everyone and everything is, from above: a picture in five views. Not to scale. */
import type { Picture } from '../kit/picture.ts';
import { fuel } from './fuel.ts';
import { help } from './help.ts';
import { plan } from './plan.ts';
import { road } from './road.ts';

export type Face = 'plan' | 'crew' | 'road' | 'help' | 'fuel';

export const geometry: Picture<Face> = ({ face, labels }, box) =>
  face === 'road' ? road(labels, box) : face === 'help' ? help(labels, box) : face === 'fuel' ? fuel(labels, box) : plan(face === 'crew', labels, box);
