import values from '#shared/values/wounds.json' with { type: 'json' };
import { door } from './door.ts';

export const wounds = door('wounds', values);
