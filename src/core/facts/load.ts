import values from '#shared/values/load.json' with { type: 'json' };
import { door } from './door.ts';

export const load = door('load', values);
