import { describe, expect, it } from 'vitest';
import { vibrationLevels } from '#core/facts/vibration-levels.ts';
import { weatherBands } from '#core/facts/weather-bands.ts';

describe('edges that drawings need', () => {
  it('vibration: 100 points to act, 400 never passed (EU directive 2002/44/EC, in points)', () => {
    expect(vibrationLevels()).toEqual({ action: 100, limit: 400 });
  });
  it('weather: thirteen Beaufort forces from calm, the first breath at 0.3 m/s; four heat steps that rise', () => {
    const { forces, heat, chillFrom } = weatherBands();
    expect(forces).toHaveLength(13);
    expect(forces.slice(0, 2)).toEqual([0, 0.3]);
    expect([...heat].sort((a, b) => a - b)).toEqual(heat);
    expect(heat).toHaveLength(4);
    expect(chillFrom).toBe(10); // 50 °F
  });
});
