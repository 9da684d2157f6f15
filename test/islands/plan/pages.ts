/** Pages with a desk on them, on a device that lasts. */
import { newPlan, type Plan } from '#core/plan/facts.ts';
import { openPlace } from '#device/plans/unsaved.ts';
import { type DeskState, deskOf, emptyDesk } from '#islands/plan/kept/desk.ts';
import { device, freshName, opened, type Tab, until } from '../../device/plans/device.ts';

export const blank = (): Plan => newPlan('', 'limb 1');
export const own = (called: string): Plan => ({ ...blank(), name: called });

let made: ReturnType<typeof device>;
let name: string;
let tab: Tab;
/** A fresh device with a tab open on it. */
export const newDevice = (): void => {
  made = device();
  name = freshName();
  tab = made.tab();
  made.use(tab);
};
/** What is kept, past the page. */
export const shelf = () => opened(name);
export const newTab = (): Tab => made.tab();
export const useTab = (next: Tab): void => made.use(next);
/** The page of the tab is gone, at once, as by a reload or a crash. */
export const endTab = (): void => {
  made.end(tab);
  made.use(tab);
};

/** A page with its desk, not begun yet. */
export const unopened = async () => {
  const seen = { plan: blank(), state: emptyDesk as DeskState };
  const desk = deskOf({
    store: opened(name), place: await openPlace(), blank, now: () => seen.plan, put: (plan) => (seen.plan = plan), rename: (called) => enter({ name: called }), hear: (state) => (seen.state = state),
    pauses: { soon: 5, rest: 20, atMost: 60 },
  });
  /** What the reader changes. */
  const enter = (change: Partial<Plan>): void => {
    seen.plan = { ...seen.plan, ...change };
    desk.tell(seen.plan);
  };
  return {
    desk,
    seen,
    enter,
    names: (): string[] => seen.state.entries.filter(({ deleted }) => deleted === null).map((entry) => entry.name).sort(),
    idOf: (called: string): string => seen.state.entries.find((entry) => entry.name === called)?.id ?? '',
    kept: () => until(() => seen.state.standing === 'kept'),
  };
};
export type Page = Awaited<ReturnType<typeof unopened>>;
export const page = async (fragment = ''): Promise<Page> => {
  const at = await unopened();
  await at.desk.begin(fragment);
  return at;
};
export const withPlans = async (...called: string[]): Promise<Page> => {
  const at = await page();
  for (const each of called) {
    await at.desk.start();
    at.enter({ name: each });
    await at.desk.flush();
  }
  await until(() => at.names().length === called.length);
  return at;
};
/** The page of the tab ends, and another opens in `next`. */
export const again = async (next: Tab = tab, fragment = ''): Promise<Page> => {
  made.end(tab);
  made.use(next);
  return page(fragment);
};
