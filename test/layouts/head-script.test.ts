import { runInNewContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import { headScript } from '../../src/layouts/head-script.ts';
import { reserved } from '../../src/core/kit/link.ts';

/** What the script leaves on `<html>` of a page of that kind, over a device that holds `kept`. */
const run = ({ kind = 'calculator', search = '', kept = null as string | null, refuses = false }) => {
  const dataset: { [name: string]: string } = { kind, units: 'metric' };
  const getItem = () => {
    if (refuses) throw new Error('refused');
    return kept;
  };
  runInNewContext(headScript, { document: { documentElement: { dataset } }, location: { search }, localStorage: { getItem } });
  return dataset;
};

test('says that scripts run', () => expect(run({})).toEqual({ kind: 'calculator', units: 'metric', script: '' }));

describe('units and light', () => {
  test('come from the device', () => {
    expect(run({ kept: '{"v":1,"units":"imperial","theme":"dark"}' })).toMatchObject({ units: 'imperial', theme: 'dark' });
  });
  test.each(['{', 'null', '[]', '"x"', '{"units":"<b>","theme":"device"}', '{"units":{},"theme":7}'])('damaged (%s) are left alone', (kept) => {
    expect(run({ kept })).toEqual({ kind: 'calculator', units: 'metric', script: '' });
  });
  test('are left alone where storage is refused', () => expect(run({ refuses: true }).units).toBe('metric'));
  test('of the address go first', () => {
    expect(run({ kept: '{"units":"imperial"}', search: '?units=metric' }).units).toBe('metric');
    expect(run({ kept: '{"units":"imperial"}', search: '?units=metricx' }).units).toBe('imperial');
  });
});

describe('a linked calculator', () => {
  test.each(['?cutHeight=3', '?v=1&got=judged&cutHeight=3', '?cutHeight', '?cutHeight=3&v=1', '?versions=2', '?gotten=1'])('%s is marked', (search) => {
    expect(run({ search }).linked).toBe('');
  });
  test.each(['', '?', '?v=1', '?units=imperial', `?${reserved.map((name) => `${name}=1`).join('&')}`])('%j is not', (search) => {
    expect(run({ search }).linked).toBeUndefined();
  });
  test('no other page is', () => expect(run({ kind: 'chapter', search: '?cutHeight=3' }).linked).toBeUndefined());
});
