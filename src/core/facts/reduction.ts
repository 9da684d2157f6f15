import values from '#shared/values/reduction.json' with { type: 'json' };
import { door } from './door.ts';

export const reduction = door('reduction', values);
