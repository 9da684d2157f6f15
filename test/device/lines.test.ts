/** What is kept for work near lines: the operator's figure and this site; damaged or refused storage never throws. */
import { beforeEach, describe, expect, it } from 'vitest';
import { keepOwn, own, ownName } from '#device/own-distance.ts';
import { dialled, keepSite, site, siteName } from '#device/site.ts';

const kept = new Map<string, string>();
beforeEach(() => {
  kept.clear();
  Object.assign(globalThis, { localStorage: { getItem: (k: string) => kept.get(k) ?? null, setItem: (k: string, v: string) => void kept.set(k, v) } });
});

describe('the operator’s figure', () => {
  it('comes back, and is forgotten', () => {
    expect(own()).toBeNull();
    expect(keepOwn(6.4)).toBe(true);
    expect(own()).toBe(6.4);
    keepOwn(null);
    expect(own()).toBeNull();
  });
  it.each(['{', '{"distance":"6"}', '{"distance":-1}', '{"distance":0}', '{"distance":1e9}', '[]', 'null'])('damaged as %s it is as none', (text) => {
    kept.set(ownName, text);
    expect(own()).toBeNull();
  });
});

describe('this site', () => {
  const all = { where: 'Mill Lane', gate: 'north', road: 'B12', position: '', emergency: '000', operator: '' };
  it('comes back', () => {
    keepSite(all);
    expect(site()).toEqual(all);
  });
  it('is empty where damaged, field by field', () => {
    kept.set(siteName, JSON.stringify({ ...all, gate: 7, road: 'x'.repeat(1000) }));
    expect(site().gate).toBe('');
    expect(site().road).toHaveLength(300);
    expect(site().where).toBe('Mill Lane');
  });
  it('does not throw where storage is refused', () => {
    Object.assign(globalThis, { localStorage: { getItem: () => { throw new Error('no'); }, setItem: () => { throw new Error('no'); } } });
    expect(site().where).toBe('');
    expect(keepSite(all)).toBe(false);
  });
});

describe('a number to dial', () => {
  it.each([['000', '000'], ['+61 (8) 0000-0000', '+61800000000'], ['call 1300+22', '130022'], ['ask at the gate', null], ['1', null], ['', null], ['javascript:alert(1)', null]])('%j: %j', (text, number) =>
    expect(dialled(text)).toBe(number));
});
