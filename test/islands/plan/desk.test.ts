/** The desk where plans lie: what is open is kept, the others are found. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Plan } from '#core/plan/facts.ts';
import { writePlanLink } from '#core/plan/link.ts';
import { invented } from '../../core/plan/invented.ts';
import { closeAll, until } from '../../device/plans/device.ts';
import { again, blank, endTab, newDevice, newTab, own, page, shelf, unopened, withPlans } from './pages.ts';

beforeEach(newDevice);
afterEach(() => {
  closeAll();
  vi.restoreAllMocks();
});

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
    const later = await again(newTab());
    expect(later.seen.plan.name).toBe('Elm');
  });
  it('a new one that was begun is not changed back by a reload', async () => {
    const at = await withPlans('Elm');
    await at.desk.start();
    expect((await again()).seen.plan).toEqual(blank());
  });
  it('what is typed before all is read stays, as a plan of its own', async () => {
    await withPlans('Elm');
    endTab();
    const { desk, seen } = await unopened();
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
  it('another plan opened meanwhile: there is nothing to go back to any more', async () => {
    const at = await withPlans('Elm', 'Oak');
    await at.desk.look(invented);
    await at.desk.open(at.idOf('Elm'));
    expect(at.seen.state.looks).toBe(false);
    await at.desk.back();
    expect(at.seen.plan).toEqual(blank());
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
    const linked = await again(undefined, fragment(own('From afar')));
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
    const at = await again(undefined, `${fragment(own('From afar')).slice(0, -9)}`);
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
  it('what the page has not told yet is saved all the same before another is opened', async () => {
    const at = await withPlans('Elm', 'Oak');
    at.seen.plan = { ...at.seen.plan, name: 'Oak, typed last' };
    await at.desk.open(at.idOf('Elm'));
    await at.desk.open(at.idOf('Oak'));
    expect(at.seen.plan.name).toBe('Oak, typed last');
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
    await shelf().save('broken', 0, { v: 1, name: 'x' });
    await shelf().save('newer', 0, { ...invented, v: 3 });
    const at = await page();
    expect(new Set(at.seen.state.entries.map(({ id, plan, problems }) => `${id} ${plan} ${problems[0]?.problem}`))).toEqual(new Set(['broken null notPlan', 'newer null newerPlan']));
    await at.desk.open('broken');
    expect(at.seen.plan).toEqual(blank());
    await at.desk.remove('broken');
    expect(at.names()).toHaveLength(1);
  });
});
