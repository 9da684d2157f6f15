import values from '#shared/values/cuts.json' with { type: 'json' };
import { door, rangeDoor } from './door.ts';

export const cuts = door('cuts', values);
export const cutsRange = rangeDoor('cuts', values);
