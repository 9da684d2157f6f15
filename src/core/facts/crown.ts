import values from '#shared/values/crown.json' with { type: 'json' };
import { door } from './door.ts';

export const crown = door('crown', values);
