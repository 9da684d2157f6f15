import { vibration } from './vibration.ts';

/** What a day's bars are held to, points: action and limit. */
export const vibrationLevels = (): { action: number; limit: number } => ({ action: vibration('action-points'), limit: vibration('limit-points') });
