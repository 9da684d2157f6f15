import values from '#shared/values/weather.json' with { type: 'json' };
import { door } from './door.ts';

export const weather = door('weather', values);
