import values from '#shared/values/wood.json' with { type: 'json' };
import { door } from './door.ts';

export const wood = door('wood', values);
