import values from '#shared/values/vibration.json' with { type: 'json' };
import { door } from './door.ts';

export const vibration = door('vibration', values);
