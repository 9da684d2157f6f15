import values from '#shared/values/fuel.json' with { type: 'json' };
import { door } from './door.ts';

export const fuel = door('fuel', values);
