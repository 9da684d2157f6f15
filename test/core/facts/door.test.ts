import { describe, expect, it } from 'vitest';
import { door, nearNames, rangeDoor } from '#core/facts/door.ts';

const open = door('things', { 'angle-limit': { value: 60 }, 'angle-low': { value: -30 }, span: { value: [1, 2] } });

describe('the door to a topic', () => {
  it('hands out numbers', () => {
    expect(open('angle-limit')).toBe(60);
    expect(open('angle-low')).toBe(-30);
  });
  it('names the file and the nearest names for one it does not have', () => {
    expect(() => open('angle-limits' as never)).toThrow('shared/values/things.json has no "angle-limits"; near: angle-limit, angle-low');
    expect(() => open('xyz' as never)).toThrow('near: none');
  });
  it('will not make one number of a range', () => {
    expect(() => open('span')).toThrow('things.span is a range, not one number');
  });
});

describe('the door to ranges', () => {
  const range = rangeDoor('things', { 'angle-limit': { value: 60 }, span: { value: [1, 2] } });
  it('hands out both ends, and nothing else', () => {
    expect(range('span')).toEqual([1, 2]);
    expect(() => range('angle-limit')).toThrow('shared/values/things.json has no range "angle-limit"');
    expect(() => range('xyz' as never)).toThrow('has no range "xyz"');
  });
});

describe('near names', () => {
  it('at most three, the nearest first', () => {
    expect(nearNames('margin', ['margins', 'margin-of-bar', 'marg', 'argin', 'zzz'])[0]).toBe('margins');
    expect(nearNames('margin', ['margins', 'margin-of-bar', 'marg', 'argin', 'zzz'])).toHaveLength(3);
    expect(nearNames('', ['margin'])).toEqual([]);
  });
});
