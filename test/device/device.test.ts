import { beforeEach, describe, expect, test, vi } from 'vitest';

type Device = { settings: typeof import('../../src/device/settings.ts'); progress: typeof import('../../src/device/progress.ts') };

/** The modules as a freshly opened page has them, over a device that holds `held` (or refuses). */
const openPage = async (held: { [name: string]: string }, refuses = false): Promise<Device> => {
  const refuse = () => {
    throw new DOMException('no', 'SecurityError');
  };
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => (refuses ? refuse() : (held[name] ?? null)),
    setItem: (name: string, value: string) => (refuses ? refuse() : void (held[name] = value)),
  });
  vi.resetModules();
  return { settings: await import('../../src/device/settings.ts'), progress: await import('../../src/device/progress.ts') };
};
const settingsName = 'standing-clear.settings';
const progressName = 'standing-clear.progress';
let held: { [name: string]: string };
beforeEach(() => {
  held = {};
});

describe('settings', () => {
  test('begin metric, as the device, without a rule set', async () => {
    const { settings } = await openPage(held);
    expect(settings.settings()).toEqual({ units: 'metric', theme: 'device', ruleSet: null });
  });
  test('are there when the page is opened again', async () => {
    (await openPage(held)).settings.set({ units: 'imperial', ruleSet: 'some-place' });
    expect((await openPage(held)).settings.settings()).toEqual({ units: 'imperial', theme: 'device', ruleSet: 'some-place' });
  });
  test.each(['{', 'null', '[]', '7', '"x"', '{"units":7,"theme":{},"ruleSet":"<b>"}', '{"v":99}'])('damaged (%s) are as new and never throw', async (text) => {
    const { settings } = await openPage({ [settingsName]: text });
    expect(settings.settings()).toEqual({ units: 'metric', theme: 'device', ruleSet: null });
  });
  test('one damaged field costs no other', async () => {
    const { settings } = await openPage({ [settingsName]: '{"units":"imperial","theme":"plaid"}' });
    expect(settings.settings()).toMatchObject({ units: 'imperial', theme: 'device' });
  });
  test('what another edition keeps beside them stays', async () => {
    held[settingsName] = '{"v":2,"later":"kept"}';
    (await openPage(held)).settings.set({ theme: 'dark' });
    expect(JSON.parse(held[settingsName] as string)).toMatchObject({ later: 'kept', theme: 'dark' });
  });
  test('hold for the page where storage is refused, and that is said', async () => {
    const { settings } = await openPage({}, true);
    expect(settings.storageRefused()).toBe(false);
    settings.set({ units: 'imperial' });
    expect(settings.settings().units).toBe('imperial');
    expect(settings.storageRefused()).toBe(true);
  });
  test('of a link hold for the page, are offered, and are kept only when asked', async () => {
    const { settings } = await openPage(held);
    settings.hold({ units: 'imperial' });
    expect(settings.settings().units).toBe('imperial');
    expect(settings.held()).toEqual({ units: 'imperial' });
    expect(held[settingsName]).toBeUndefined();
    settings.set(settings.held());
    expect(settings.held()).toEqual({});
    expect(JSON.parse(held[settingsName] as string).units).toBe('imperial');
  });
  test('a change is told to who listens, until they stop', async () => {
    const { settings } = await openPage(held);
    const heard: string[] = [];
    const stop = settings.onChange((now) => heard.push(now.units));
    settings.set({ units: 'imperial' });
    stop();
    settings.set({ units: 'metric' });
    expect(heard).toEqual(['imperial']);
  });
});

describe('progress', () => {
  test('remembers the chapter opened last and those read to the end', async () => {
    const { progress } = await openPage(held);
    progress.opened('three-cuts');
    progress.readToEnd('three-cuts');
    progress.readToEnd('three-cuts');
    progress.opened('where-to-stand');
    expect((await openPage(held)).progress.progress()).toEqual({ last: 'where-to-stand', done: ['three-cuts'] });
  });
  test.each(['{', '[]', '{"last":5,"done":"x"}', '{"last":"../../x","done":[1,null,"<i>"]}'])('damaged (%s) is as new', async (text) => {
    const { progress } = await openPage({ [progressName]: text });
    expect(progress.progress()).toEqual({ last: null, done: [] });
  });
  test('says when the browser keeps nothing', async () => {
    const { progress } = await openPage({}, true);
    expect(progress.opened('three-cuts')).toBe(false);
    expect(progress.progress()).toEqual({ last: null, done: [] });
  });
});
