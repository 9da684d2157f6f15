/** Nothing entered is lost: by a reload in mid-typing, a tab that dies, two tabs with one plan, a device that is full. */
import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { recover } from '#device/plans/saving.ts';
import type { PlanStore } from '#device/plans/store.ts';
import { openPlace, unsavedName } from '#device/plans/unsaved.ts';
import { closeAll, copyOf, device, freshName, opened, savingIn, type Tab, until } from './device.ts';

let made: ReturnType<typeof device>;
let name: string;
let first: Tab;
beforeEach(() => {
  made = device();
  name = freshName();
  first = made.tab();
  made.use(first);
});
afterEach(() => {
  closeAll();
  vi.restoreAllMocks();
});

const kept = async (store: PlanStore): Promise<unknown[]> => {
  const listed = await store.all();
  return listed.kind === 'list' ? listed.plans.map(({ plan }) => plan) : [listed.trouble];
};
const unsavedPlaces = (): string[] => Object.keys(localStorage).filter((key) => key.startsWith(unsavedName));
const elm = (height: string) => ({ name: 'Elm', height });

describe('saving as it is entered', () => {
  it('saves when the hand rests, the last of it, and says when', async () => {
    const store = opened(name);
    const { saving, heard } = await savingIn(store);
    await saving.open({ id: 'elm', rev: 0 });
    for (const height of ['3', '3.', '3.5']) saving.change(elm(height));
    expect(heard).toEqual(['saving', 'saving', 'saving']);
    await until(() => heard.at(-1) === 'kept');
    expect(await kept(store)).toEqual([elm('3.5')]);
    expect(unsavedPlaces()).toEqual([]);
  });
  it('a change that comes while one is being saved is saved after it', async () => {
    const store = opened(name);
    const { saving, heard } = await savingIn(store);
    await saving.open({ id: 'elm', rev: 0 });
    saving.change(elm('3'));
    const first = saving.flush();
    await Promise.resolve();
    await Promise.resolve();
    saving.change(elm('3.5'));
    await first;
    expect(heard.at(-1)).toBe('saving');
    await until(() => heard.at(-1) === 'kept');
    expect(await kept(store)).toEqual([elm('3.5')]);
  });
  it('saves in the middle of a long drag, before the hand rests', async () => {
    const store = opened(name);
    const { saving, heard } = await savingIn(store);
    await saving.open({ id: 'elm', rev: 0 });
    for (let i = 0; i < 30 && !heard.includes('kept'); i++) {
      saving.change(elm(String(i)));
      await new Promise((done) => setTimeout(done, 8));
    }
    expect(heard).toContain('kept');
  });
  it('keeps nothing of a plan that is not open, and saves one plan before it opens the next', async () => {
    const store = opened(name);
    const { saving } = await savingIn(store);
    saving.change(elm('1'));
    await saving.flush();
    expect(await kept(store)).toEqual([]);
    await saving.open({ id: 'elm', rev: 0 });
    saving.change(elm('2'));
    await saving.open({ id: 'oak', rev: 0 });
    saving.change({ name: 'Oak' });
    await saving.stop();
    expect((await kept(store)).map((p) => JSON.stringify(p)).sort()).toEqual([JSON.stringify(elm('2')), '{"name":"Oak"}']);
  });
});

describe('a page that ends before it has saved', () => {
  /** What a reload leaves: the hold is written, the database is not. */
  const cutShort = async (rev: number, plan: unknown): Promise<void> => {
    (await openPlace()).hold({ id: 'elm', rev, plan });
    made.end(first);
  };

  it('a change is held within moments, long before it is saved', async () => {
    const store = opened(name);
    const { saving } = await savingIn(store);
    await saving.open({ id: 'elm', rev: 0 });
    const save = vi.spyOn(store, 'save');
    saving.change(elm('3'));
    await until(() => unsavedPlaces().length === 1);
    expect(save).not.toHaveBeenCalled();
    await saving.stop();
  });
  it('reloaded: the same tab finds it at once and saves it where it belongs', async () => {
    const store = opened(name);
    await store.save('elm', 0, elm('3'));
    await cutShort(1, elm('3.5'));
    const place = await openPlace();
    const results = await recover(store, place, copyOf);
    expect(results).toMatchObject([{ unsaved: { id: 'elm' }, result: { kind: 'saved', kept: { id: 'elm', rev: 2, plan: elm('3.5') } } }]);
    expect(unsavedPlaces()).toEqual([]);
    expect(await kept(store)).toEqual([elm('3.5')]);
  });
  it('a browser that died: another tab, days later, finds it', async () => {
    const store = opened(name);
    await cutShort(0, elm('3.5'));
    made.use(made.tab());
    await recover(store, await openPlace(), copyOf);
    expect(await kept(store)).toEqual([elm('3.5')]);
  });
  it('what a living tab holds is left to it', async () => {
    const place = await openPlace();
    place.hold({ id: 'elm', rev: 0, plan: elm('4') });
    made.use(made.tab());
    expect((await openPlace()).left).toEqual([]);
    expect(unsavedPlaces()).toHaveLength(1);
  });
  it('a copied tab takes a place of its own', async () => {
    const place = await openPlace();
    place.hold({ id: 'elm', rev: 0, plan: elm('4') });
    made.use(made.tab(first));
    const copy = await openPlace();
    expect(copy.left).toEqual([]);
    copy.hold({ id: 'oak', rev: 0, plan: 'oak' });
    expect(unsavedPlaces()).toHaveLength(2);
  });
  it('saved from elsewhere meanwhile: both are kept, under names that tell them apart', async () => {
    const store = opened(name);
    await store.save('elm', 0, elm('3'));
    await cutShort(1, elm('mine'));
    await store.save('elm', 1, elm('theirs'));
    const [found] = await recover(store, await openPlace(), copyOf);
    expect(found?.result.kind).toBe('saved');
    expect((await kept(store)).map((p) => JSON.stringify(p)).sort()).toEqual([elm('theirs'), { ...elm('mine'), name: 'Elm (2)' }].map((p) => JSON.stringify(p)).sort());
  });
  it('saved just before the end: no second one', async () => {
    const store = opened(name);
    await store.save('elm', 0, elm('3'));
    await cutShort(0, elm('3'));
    await recover(store, await openPlace(), copyOf);
    expect(await kept(store)).toEqual([elm('3')]);
    expect(unsavedPlaces()).toEqual([]);
  });
  it('no room to save it: it stays where it is, and the page still has it', async () => {
    const store = opened(name);
    await cutShort(0, elm('3'));
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await recover(store, await openPlace(), copyOf)).toEqual([{ unsaved: { id: 'elm', rev: 0, plan: elm('3') }, result: { kind: 'trouble', trouble: 'full' } }]);
    expect(unsavedPlaces()).toHaveLength(1);
  });
  it.each(['{', '[]', '{"id":"a"}', '{"id":"<b>","rev":0,"plan":1}', '{"id":"a","rev":"0","plan":1}', '{"id":"a","rev":0}'])('damaged (%s) is passed over', async (text) => {
    localStorage.setItem(`${unsavedName}gone`, text);
    expect((await openPlace()).left).toEqual([]);
  });
  it('storage refused altogether: a place that holds nothing and never throws', async () => {
    const refuse = () => {
      throw new DOMException('no', 'SecurityError');
    };
    vi.stubGlobal('localStorage', { getItem: refuse, setItem: refuse, removeItem: refuse });
    vi.stubGlobal('sessionStorage', { getItem: refuse, setItem: refuse });
    const place = await openPlace();
    expect(place.left).toEqual([]);
    expect(place.hold({ id: 'a', rev: 0, plan: 1 })).toBe(false);
    place.letGo();
  });
  it('a browser without locks still finds what was left', async () => {
    vi.stubGlobal('navigator', {});
    const place = await openPlace();
    place.hold({ id: 'elm', rev: 0, plan: elm('3') });
    expect((await openPlace()).left.map((l) => l.unsaved.id)).toEqual(['elm']);
  });
});

describe('two tabs with one plan', () => {
  it('the second to save goes on as a copy: neither loses a word', async () => {
    const one = opened(name);
    const two = opened(name);
    await one.save('elm', 0, elm('3'));
    const here = await savingIn(one);
    made.use(made.tab());
    const there = await savingIn(two);
    await here.saving.open({ id: 'elm', rev: 1 });
    await there.saving.open({ id: 'elm', rev: 1 });
    here.saving.change(elm('here'));
    await here.saving.flush();
    there.saving.change(elm('there'));
    await there.saving.flush();
    expect(here.copies).toEqual([]);
    expect(there.copies).toHaveLength(1);
    // And each goes on in its own.
    here.saving.change(elm('here on'));
    there.saving.change({ name: 'Elm (2)', height: 'there on' });
    await here.saving.stop();
    await there.saving.stop();
    expect(there.copies).toHaveLength(1);
    expect((await kept(one)).map((p) => JSON.stringify(p)).sort()).toEqual(['{"name":"Elm (2)","height":"there on"}', '{"name":"Elm","height":"here on"}']);
  });
  it('the same entered in both makes no copy', async () => {
    const one = opened(name);
    await one.save('elm', 0, elm('3'));
    const here = await savingIn(one);
    await here.saving.open({ id: 'elm', rev: 1 });
    await opened(name).save('elm', 1, elm('3.5'));
    here.saving.change(elm('3.5'));
    await here.saving.flush();
    expect(here.copies).toEqual([]);
    expect(here.heard.at(-1)).toBe('kept');
    here.saving.change(elm('4'));
    await here.saving.flush();
    expect(here.copies).toEqual([]);
    expect(await kept(one)).toEqual([elm('4')]);
  });
});

describe('a device without room', () => {
  it('says so, keeps what is entered at hand, and saves it once there is room', async () => {
    const store = opened(name);
    const { saving, heard } = await savingIn(store);
    await saving.open({ id: 'elm', rev: 0 });
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    saving.change(elm('3'));
    await saving.flush();
    expect(heard.at(-1)).toBe('full');
    expect(unsavedPlaces()).toHaveLength(1);
    put.mockRestore();
    await saving.flush();
    expect(heard.at(-1)).toBe('kept');
    expect(await kept(store)).toEqual([elm('3')]);
    await saving.stop();
  });
  it('refused: said at every change', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const { saving, heard } = await savingIn(opened(freshName()));
    await saving.open({ id: 'elm', rev: 0 });
    saving.change(elm('3'));
    await saving.flush();
    saving.change(elm('4'));
    await saving.flush();
    expect(heard).toEqual(['saving', 'refused', 'saving', 'refused']);
    await saving.stop();
  });
});
