import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { createStore, set } from 'idb-keyval';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { bringBackFor, type KeptPlan, newId, type PlanStore } from '#device/plans/store.ts';
import { closeAll, freshName, opened } from './device.ts';

let name: string;
let store: PlanStore;
beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  name = freshName();
  store = opened(name);
});
afterEach(() => {
  closeAll();
  vi.restoreAllMocks();
});

const plans = async (now?: number): Promise<readonly KeptPlan[]> => {
  const listed = await store.all(now);
  if (listed.kind === 'trouble') throw new Error(listed.trouble);
  return listed.plans;
};

describe('plans kept on the device', () => {
  it('many, the one saved last first, there again when the page is opened again', async () => {
    await store.save('a', 0, { name: 'Ash' }, 1000);
    await store.save('b', 0, { name: 'Beech' }, 2000);
    await store.save('a', 1, { name: 'Ash, north side' }, 3000);
    store = opened(name);
    expect(await plans(3000)).toEqual([
      { id: 'a', rev: 2, saved: 3000, deleted: null, plan: { name: 'Ash, north side' } },
      { id: 'b', rev: 1, saved: 2000, deleted: null, plan: { name: 'Beech' } },
    ]);
  });

  it('a saving that would write over another is refused and leaves it alone', async () => {
    const other = opened(name);
    await store.save('a', 0, 'as begun');
    expect((await other.save('a', 1, 'from the other tab')).kind).toBe('saved');
    expect(await store.save('a', 1, 'from this tab')).toMatchObject({ kind: 'clash', kept: { rev: 2, plan: 'from the other tab' } });
    expect((await plans()).map((p) => p.plan)).toEqual(['from the other tab']);
    // Two new ones under one id: the first stands.
    expect((await other.save('a', 0, 'new')).kind).toBe('clash');
  });

  it('deleted, listed as such, brought back as it was', async () => {
    await store.save('a', 0, { name: 'Ash' }, 1000);
    expect(await store.remove('a', 2000)).toBeNull();
    expect(await plans(2000)).toEqual([{ id: 'a', rev: 1, saved: 1000, deleted: 2000, plan: { name: 'Ash' } }]);
    expect(await store.bringBack('a')).toBeNull();
    expect(await plans(2000)).toEqual([{ id: 'a', rev: 1, saved: 1000, deleted: null, plan: { name: 'Ash' } }]);
  });

  it('deleted here while another tab goes on with it: its saving brings it back', async () => {
    await store.save('a', 0, 'begun');
    await store.remove('a');
    expect(await opened(name).save('a', 1, 'gone on with')).toMatchObject({ kind: 'saved', kept: { deleted: null, plan: 'gone on with' } });
  });

  it('what was deleted longer ago than it can be brought back is let go, not a day sooner', async () => {
    await store.save('a', 0, 'a', 0);
    await store.save('b', 0, 'b', 0);
    await store.remove('a', 1000);
    expect(await plans(1000 + bringBackFor)).toHaveLength(2);
    expect((await plans(1001 + bringBackFor)).map((p) => p.id)).toEqual(['b']);
    await store.bringBack('a');
    expect((await plans(1001 + bringBackFor)).map((p) => p.id)).toEqual(['b']);
  });

  it('forgotten for good is gone', async () => {
    await store.save('a', 0, 'a');
    await store.forget('a');
    expect(await plans()).toEqual([]);
  });

  it.each([['a text'], [7], [[1]], [{ rev: 'one' }], [{ rev: 1, saved: 5, deleted: null }]])('a damaged entry (%j) is kept and listed, and costs no other', async (damaged) => {
    await store.save('a', 0, 'whole', 1000);
    await set('broken', damaged, createStore(name, 'plans'));
    expect((await plans()).map(({ id, plan }) => [id, plan])).toEqual([['a', 'whole'], ['broken', damaged]]);
  });

  it('tells other tabs, not itself', async () => {
    const other = opened(name);
    const heard = { own: 0, other: 0 };
    store.onOthers(() => (heard.own += 1));
    const stop = other.onOthers(() => (heard.other += 1));
    await store.save('a', 0, 'a');
    await vi.waitUntil(() => heard.other === 1);
    stop();
    await store.remove('a');
    await new Promise((done) => setTimeout(done, 20));
    expect(heard).toEqual({ own: 0, other: 1 });
  });

  it('ids are never met twice, and are letters and digits', () => {
    const ids = new Set(Array.from({ length: 2000 }, newId));
    expect(ids.size).toBe(2000);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]{16}$/);
  });
});

describe('a browser that keeps nothing', () => {
  const every: readonly [string, () => Promise<unknown>][] = [
    ['all', () => store.all()],
    ['save', () => store.save('a', 0, 'a')],
    ['remove', async () => ({ kind: 'trouble', trouble: await store.remove('a') })],
    ['bringBack', async () => ({ kind: 'trouble', trouble: await store.bringBack('a') })],
    ['forget', async () => ({ kind: 'trouble', trouble: await store.forget('a') })],
  ];

  it.each(every)('has no storage at all: %s says so', async (_, act) => {
    vi.stubGlobal('indexedDB', undefined);
    store = opened(freshName());
    expect(await act()).toEqual({ kind: 'trouble', trouble: 'refused' });
  });
  it.each(every)('refuses to open it: %s says so', async (_, act) => {
    vi.stubGlobal('indexedDB', { open: () => { throw new DOMException('no', 'SecurityError'); } });
    store = opened(freshName());
    expect(await act()).toEqual({ kind: 'trouble', trouble: 'refused' });
  });
  it('is full: what stood there stays, and it works again once there is room', async () => {
    await store.save('a', 0, 'before');
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await store.save('a', 1, 'after')).toEqual({ kind: 'trouble', trouble: 'full' });
    expect(await store.save('b', 0, 'new')).toEqual({ kind: 'trouble', trouble: 'full' });
    expect(await store.remove('a')).toBe('full');
    put.mockRestore();
    expect((await plans()).map((p) => [p.plan, p.deleted])).toEqual([['before', null]]);
    expect((await store.save('a', 1, 'after')).kind).toBe('saved');
  });
  it('cannot keep what is no data: said, not thrown', async () => {
    expect(await store.save('a', 0, { act: () => 1 })).toEqual({ kind: 'trouble', trouble: 'refused' });
  });
});
