import values from '#shared/values/everyday.json' with { type: 'json' };
import { door } from './door.ts';

export const everyday = door('everyday', values);
