/** The desk where it gets rough: files of all kinds, a browser that keeps nothing or no more, two tabs with one plan. */
import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Plan } from '#core/plan/facts.ts';
import { writePlansFile } from '#core/plan/file.ts';
import { changed, invented } from '../../core/plan/invented.ts';
import { closeAll, until } from '../../device/plans/device.ts';
import { again, blank, newDevice, newTab, own, page, useTab, withPlans } from './pages.ts';

beforeEach(newDevice);
afterEach(() => {
  closeAll();
  vi.restoreAllMocks();
});

describe('files', () => {
  it('out and in again on another device: the same plans', async () => {
    const at = await withPlans('Elm', 'Oak');
    const text = writePlansFile(at.seen.state.entries.flatMap(({ plan }) => plan ?? []), 'abcd1234');
    newDevice();
    const there = await page();
    await there.desk.readFile(text);
    expect(there.names()).toEqual(['Elm', 'Oak']);
    expect(there.seen.state.said).toMatchObject({ id: 'read', fresh: expect.arrayContaining(['Elm', 'Oak']), here: [] });
    // Again: nothing comes twice.
    await there.desk.readFile(text);
    expect(there.names()).toEqual(['Elm', 'Oak']);
    expect(there.seen.state.said).toMatchObject({ fresh: [], here: expect.arrayContaining(['Elm', 'Oak']) });
  });
  it('one that was kept before rules had editions does not come twice with its own file, which has one', async () => {
    const at = await page();
    at.enter({ ...invented, name: 'Elm' });
    await at.desk.flush();
    const text = writePlansFile([at.seen.plan], '');
    expect(text).toContain('"ruleEdition"');
    await at.desk.readFile(text);
    expect(at.seen.state.said).toMatchObject({ fresh: [], here: ['Elm'] });
    expect(at.names()).toEqual(['Elm']);
  });
  it('a single plan is laid open; one of the same name and other figures stands beside, nothing is written over', async () => {
    const at = await withPlans('Elm');
    const other = { ...own('Elm'), demo: true };
    await at.desk.readFile(writePlansFile([other], ''));
    expect(at.seen.plan).toEqual(other);
    expect(at.names()).toEqual(['Elm', 'Elm']);
  });
  it('half good: the good are kept, the others named; a damaged one changes nothing', async () => {
    const at = await withPlans('Elm');
    await at.desk.readFile(writePlansFile([changed((p) => delete p.facts), own('Oak')], ''));
    expect(at.names()).toEqual(['Elm', 'Oak']);
    expect(at.seen.state.said).toMatchObject({ fresh: ['Oak'], file: { faults: [{ plan: 0, problems: [{ at: 'facts' }] }] } });
    await at.desk.readFile('{"format":');
    expect(at.names()).toEqual(['Elm', 'Oak']);
    expect(at.seen.state.said).toMatchObject({ fresh: [], file: { plans: [], faults: [{ problems: [{ problem: 'fileCut' }] }] } });
  });
});

describe('a browser that keeps nothing, or no more', () => {
  const full = () => vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  it('refused: said from the start; a file is read all the same, its plans open from the list', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const at = await page();
    expect(at.seen.state.standing).toBe('refused');
    at.enter({ name: 'Elm' });
    await at.desk.flush();
    expect(at.seen.state.standing).toBe('refused');
    await at.desk.readFile(writePlansFile([own('Oak'), own('Ash')], ''));
    expect(at.seen.state.loose.map((plan) => plan.name)).toEqual(['Oak', 'Ash']);
    await at.desk.openLoose(at.seen.state.loose[1] as Plan);
    expect(at.seen.plan.name).toBe('Ash');
    await at.desk.readFile(writePlansFile([own('Fir')], ''));
    expect(at.seen.plan.name).toBe('Fir');
    expect(at.seen.state.standing).toBe('refused');
  });
  it('full: said; duplicating and deleting say it too; once there is room all is kept', async () => {
    const at = await withPlans('Elm');
    const put = full();
    at.enter({ name: 'Elm, more' });
    await at.desk.flush();
    expect(at.seen.state.standing).toBe('full');
    await at.desk.duplicate(at.seen.state.openId as string);
    expect(at.seen.state.said).toEqual({ id: 'trouble', trouble: 'full' });
    expect(at.seen.plan.name).toBe('Elm, more');
    put.mockRestore();
    at.enter({ name: 'Elm, more yet' });
    await at.kept();
    await until(() => at.names().join() === 'Elm, more yet');
  });
});

describe('two tabs', () => {
  it('with one plan: the second to change it goes on as a copy, said, and both are whole', async () => {
    await withPlans('Elm');
    const one = await again();
    useTab(newTab());
    const two = await page();
    expect([one.seen.plan.name, two.seen.plan.name]).toEqual(['Elm', 'Elm']);
    const site = (address: string) => ({ site: { ...blank().site, address } });
    one.enter(site('here'));
    two.enter(site('there'));
    await one.desk.flush();
    await two.desk.flush();
    await two.desk.stop();
    await two.desk.others();
    const entries = two.seen.state.entries.map(({ plan }) => `${plan?.name}: ${plan?.site.address}`);
    expect(new Set(entries)).toEqual(new Set(['Elm: here', 'Elm (2): there']));
    expect(two.seen).toMatchObject({ plan: { name: 'Elm (2)' }, state: { said: { id: 'clash', name: 'Elm (2)' } } });
  });
  it('one that only looks on follows the other', async () => {
    await withPlans('Elm');
    const one = await again();
    useTab(newTab());
    const two = await page();
    one.enter({ name: 'Elm, changed' });
    await one.desk.flush();
    await two.desk.others();
    expect(two.seen).toMatchObject({ plan: { name: 'Elm, changed' }, state: { said: { id: 'tookOther' } } });
    // While it is changing the plan itself, it does not.
    two.enter({ name: 'Elm, mine' });
    one.enter({ name: 'Elm, theirs' });
    await one.desk.flush();
    await two.desk.others();
    expect(two.seen.plan.name).toBe('Elm, mine');
    await two.desk.flush();
    expect(two.seen.state.said).toMatchObject({ id: 'clash' });
    await two.desk.open(two.idOf('Elm, theirs'));
    // And its next change goes onto that.
    two.enter({ name: 'Elm, both' });
    await two.desk.flush();
    await one.desk.others();
    expect(one.names()).toEqual(['Elm, both', 'Elm, mine (2)']);
  });
});
