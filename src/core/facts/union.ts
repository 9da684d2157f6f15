import values from '#shared/values/union.json' with { type: 'json' };
import { door } from './door.ts';

export const union = door('union', values);
/** The stricter end of the range: from here on a branch counts as codominant. */
export const noProtectionFrom = (): number => values['no-protection-from'].value[0] as number;
