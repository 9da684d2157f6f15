import values from '#shared/values/lines.json' with { type: 'json' };
import { door } from './door.ts';

export const lines = door('lines', values);
