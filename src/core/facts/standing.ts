import values from '#shared/values/standing.json' with { type: 'json' };
import { door } from './door.ts';

export const standing = door('standing', values);
