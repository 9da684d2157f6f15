import values from '#shared/values/noise.json' with { type: 'json' };
import { door } from './door.ts';

export const noise = door('noise', values);
