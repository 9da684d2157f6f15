/** The desk where plans lie: what is open is kept, the others are found, nothing is written over. */
import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { newPlan, type Plan } from '#core/plan/facts.ts';
import { writePlansFile } from '#core/plan/file.ts';
import { writePlanLink } from '#core/plan/link.ts';
import { type DeskState, deskOf, emptyDesk } from '#islands/plan/kept/desk.ts';
import { openPlace } from '#device/plans/unsaved.ts';
import { changed, invented } from '../../core/plan/invented.ts';
import { closeAll, device, freshName, opened, type Tab, until } from '../../device/plans/device.ts';

let made: ReturnType<typeof device>;
let name: string;
let tab: Tab;
beforeEach(() => {
  made = device();
  name = freshName();
  tab = made.tab();
  made.use(tab);
});
afterEach(() => {
  closeAll();
  vi.restoreAllMocks();
});

const blank = (): Plan => newPlan('', 'limb 1');
const own = (called: string): Plan => ({ ...blank(), name: called });

/** A page with its desk, begun with this fragment. */
const page = async (fragment = '') => {
  const seen = { plan: blank(), state: emptyDesk as DeskState };
  const desk = deskOf({
    store: opened(name), place: await openPlace(), blank, now: () => seen.plan, put: (plan) => (seen.plan = plan), hear: (state) => (seen.state = state),
    pauses: { soon: 5, rest: 20, atMost: 60 },
  });
  await desk.begin(fragment);
  return {
    desk,
    seen,
    /** What the reader changes. */
    enter: (change: Partial<Plan>): void => {
      seen.plan = { ...seen.plan, ...change };
      desk.tell(seen.plan);
    },
    names: (): string[] => seen.state.entries.filter(({ deleted }) => deleted === null).map((entry) => entry.name).sort(),
    idOf: (called: string): string => seen.state.entries.find((entry) => entry.name === called)?.id ?? '',
    kept: () => until(() => seen.state.standing === 'kept'),
  };
};
type Page = Awaited<ReturnType<typeof page>>;
const withPlans = async (...called: string[]): Promise<Page> => {
  const at = await page();
  for (const each of called) {
    await at.desk.start();
    at.enter({ name: each });
    await at.desk.flush();
  }
  await until(() => at.names().length === called.length);
  return at;
};
/** The page of the tab closes at once, as a reload or a crash does, and another opens. */
const again = async (next: Tab = tab, fragment = ''): Promise<Page> => {
  made.end(tab);
  made.use(next);
  return page(fragment);
};

describe('the plan that is open', () => {
  it('is kept from the first change on; a visit that changes nothing keeps nothing', async () => {
    const at = await page();
    at.desk.tell(at.seen.plan);
    await at.desk.flush();
    expect(at.seen.state).toMatchObject({ standing: 'none', entries: [], openId: null });
    at.enter({ name: 'Elm' });
    expect(at.seen.state.standing).toBe('saving');
    await at.kept();
    await until(() => at.names().length === 1);
    expect(at.names()).toEqual(['Elm']);
  });
  it('is there after a reload, in mid-typing too, and in another tab on another day', async () => {
    const at = await withPlans('Elm', 'Oak');
    at.enter({ name: 'Oak by the ford' });
    await until(() => Object.keys(localStorage).some((key) => key.includes('unsaved')));
    const reloaded = await again();
    expect(reloaded.seen.plan.name).toBe('Oak by the ford');
    expect(reloaded.names()).toEqual(['Elm', 'Oak by the ford']);
    await reloaded.desk.open(reloaded.idOf('Elm'));
    const later = await again(made.tab());
    expect(later.seen.plan.name).toBe('Elm');
  });
  it('a new one that was begun is not changed back by a reload', async () => {
    const at = await withPlans('Elm');
    await at.desk.start();
    expect((await again()).seen.plan).toEqual(blank());
  });
  it('what is typed before all is read stays, as a plan of its own', async () => {
    await withPlans('Elm');
    made.end(tab);
    made.use(tab);
    const seen = { plan: blank(), state: emptyDesk as DeskState };
    const desk = deskOf({ store: opened(name), place: await openPlace(), blank, now: () => seen.plan, put: (plan) => (seen.plan = plan), hear: (state) => (seen.state = state) });
    const begun = desk.begin('');
    seen.plan = own('typed early');
    await begun;
    await desk.stop();
    await until(() => seen.state.entries.length === 2);
    expect(seen.plan.name).toBe('typed early');
  });
});

describe('the invented plan', () => {
  it('is looked at and left; the plan before is open again, nothing is kept of it', async () => {
    const at = await withPlans('Elm');
    await at.desk.look(invented);
    expect(at.seen).toMatchObject({ plan: { name: invented.name }, state: { looks: true, openId: null } });
    // The way to a calculator and back.
    const back = await again();
    expect(back.seen.plan).toEqual(invented);
    expect(back.names()).toEqual(['Elm']);
    await at.desk.back();
    expect(at.seen.plan.name).toBe('Elm');
    expect(at.names()).toEqual(['Elm']);
  });
  it('changed, it is kept beside the others, and there is still a way back', async () => {
    const at = await withPlans('Elm');
    await at.desk.look(invented);
    at.enter({ name: 'Invented, tried out' });
    await at.desk.back();
    expect(at.seen.plan.name).toBe('Elm');
    await until(() => at.names().length === 2);
    expect(at.names()).toEqual(['Elm', 'Invented, tried out']);
  });
  it('from a new plan with nothing in it: back to that', async () => {
    const at = await page();
    await at.desk.look(invented);
    await at.desk.back();
    expect(at.seen.plan).toEqual(blank());
  });
});

describe('a plan that came with a link', () => {
  const fragment = (plan: Plan): string => {
    const link = writePlanLink(plan);
    return link.kind === 'link' ? `#${link.fragment}` : '';
  };
  it('is open and not kept until it is changed; what was open before stays', async () => {
    const at = await withPlans('Elm');
    void at;
    const linked = await again(tab, fragment(own('From afar')));
    expect(linked.seen).toMatchObject({ plan: { name: 'From afar' }, state: { standing: 'none', said: { id: 'fromLink' } } });
    expect(linked.names()).toEqual(['Elm']);
    linked.enter({ name: 'From afar, mine now' });
    await linked.kept();
    await until(() => linked.names().length === 2);
  });
  it('is kept at once where the reader asks', async () => {
    const at = await page(fragment(own('From afar')));
    at.desk.keep();
    await until(() => at.names().length === 1);
    expect(at.names()).toEqual(['From afar']);
  });
  it('damaged: said, and what was open is open', async () => {
    await withPlans('Elm');
    const at = await again(tab, `${fragment(own('From afar')).slice(0, -9)}`);
    expect(at.seen).toMatchObject({ plan: { name: 'Elm' }, state: { said: { id: 'badLink', problem: 'cutLink' } } });
  });
  it('pasted over an open page: the open plan is saved first', async () => {
    const at = await withPlans('Elm');
    at.enter({ name: 'Elm, changed' });
    await at.desk.openLink(fragment(own('From afar')));
    expect(at.seen.plan.name).toBe('From afar');
    await until(() => at.names().join() === 'Elm, changed');
  });
});

describe('many plans', () => {
  it('one is opened, the one before is saved', async () => {
    const at = await withPlans('Elm', 'Oak');
    at.enter({ name: 'Oak, changed' });
    await at.desk.open(at.idOf('Elm'));
    expect(at.seen.plan.name).toBe('Elm');
    expect(at.names()).toEqual(['Elm', 'Oak, changed']);
  });
  it('duplicated: a copy of what is entered now, under a name of its own, and open', async () => {
    const at = await withPlans('Elm');
    at.enter({ name: 'Elm tree' });
    const { openId } = at.seen.state;
    await at.desk.duplicate(openId as string);
    expect(at.seen).toMatchObject({ plan: { name: 'Elm tree (2)' }, state: { said: { id: 'duplicated', name: 'Elm tree (2)' } } });
    await at.desk.duplicate(openId as string);
    await at.desk.duplicate(at.idOf('Elm tree (2)'));
    expect(at.names()).toEqual(['Elm tree', 'Elm tree (2)', 'Elm tree (3)', 'Elm tree (4)']);
  });
  it('renamed, the open one and another', async () => {
    const at = await withPlans('Elm', 'Oak');
    await at.desk.rename(at.seen.state.openId as string, 'Oak by the ford');
    await at.desk.rename(at.idOf('Elm'), 'Elm by the gate');
    await at.kept();
    await until(() => at.names().join() === 'Elm by the gate,Oak by the ford');
    expect(at.seen.plan.name).toBe('Oak by the ford');
  });
  it('deleted and brought back: as it was, with what was entered last', async () => {
    const at = await withPlans('Elm', 'Oak');
    at.enter({ name: 'Oak, changed' });
    const id = at.seen.state.openId as string;
    await at.desk.remove(id);
    expect(at.names()).toEqual(['Elm']);
    expect(at.seen).toMatchObject({ plan: { name: '' }, state: { openId: null, said: { id: 'deleted', name: 'Oak, changed', undo: id } } });
    await at.desk.bringBack(id);
    expect(at.seen).toMatchObject({ plan: { name: 'Oak, changed' }, state: { openId: id } });
    expect(at.names()).toEqual(['Elm', 'Oak, changed']);
    // Another than the open one: that stays open.
    await at.desk.remove(at.idOf('Elm'));
    expect(at.seen.plan.name).toBe('Oak, changed');
  });
  it('deleted, it can be brought back after a reload; for good, not', async () => {
    const at = await withPlans('Elm', 'Oak');
    const [elm, oak] = [at.idOf('Elm'), at.idOf('Oak')];
    await at.desk.remove(elm);
    await at.desk.remove(oak);
    const later = await again();
    await later.desk.bringBack(elm);
    await later.desk.forget(oak);
    expect(later.seen.state.entries.map((entry) => entry.name)).toEqual(['Elm']);
  });
  it('one that cannot be read is listed, opens nothing, and can be deleted', async () => {
    await opened(name).save('broken', 0, { v: 1, name: 'x' });
    await opened(name).save('newer', 0, { ...invented, v: 2 });
    const at = await page();
    expect(new Set(at.seen.state.entries.map(({ id, plan, problems }) => `${id} ${plan} ${problems[0]?.problem}`))).toEqual(new Set(['broken null notPlan', 'newer null newerPlan']));
    await at.desk.open('broken');
    expect(at.seen.plan).toEqual(blank());
    await at.desk.remove('broken');
    expect(at.names()).toHaveLength(1);
  });
});

describe('files', () => {
  it('out and in again on another device: the same plans', async () => {
    const at = await withPlans('Elm', 'Oak');
    const text = writePlansFile(at.seen.state.entries.flatMap(({ plan }) => plan ?? []), 'abcd1234');
    made = device();
    name = freshName();
    made.use(made.tab());
    const there = await page();
    await there.desk.readFile(text);
    expect(there.names()).toEqual(['Elm', 'Oak']);
    expect(there.seen.state.said).toMatchObject({ id: 'read', fresh: expect.arrayContaining(['Elm', 'Oak']), here: [] });
    // Again: nothing comes twice.
    await there.desk.readFile(text);
    expect(there.names()).toEqual(['Elm', 'Oak']);
    expect(there.seen.state.said).toMatchObject({ fresh: [], here: expect.arrayContaining(['Elm', 'Oak']) });
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
    made.use(made.tab());
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
    made.use(made.tab());
    const two = await page();
    one.enter({ name: 'Elm, changed' });
    await one.desk.flush();
    await two.desk.others();
    expect(two.seen).toMatchObject({ plan: { name: 'Elm, changed' }, state: { said: { id: 'tookOther' } } });
    // And its next change goes onto that.
    two.enter({ name: 'Elm, both' });
    await two.desk.flush();
    await one.desk.others();
    expect(one.names()).toEqual(['Elm, both']);
  });
});
