import { describe, expect, it } from 'vitest';
import { addVisit, forget, takenInYear, trees, treesName } from '#device/trees.ts';
import { localShelf } from './local.ts';

const shelf = localShelf();

describe('trees kept on the device', () => {
  it('adds visits under a name, with the stem as measured last', () => {
    addVisit('Lime at the gate', 300, { day: '2026-03-01', share: 8 });
    addVisit('Lime at the gate', 310, { day: '2026-09-01', share: 5.5 });
    addVisit('Ash', 200, { day: '2026-09-01', share: 3 });
    expect(trees()).toEqual([
      { name: 'Ash', stem: 200, visits: [{ day: '2026-09-01', share: 3 }] },
      { name: 'Lime at the gate', stem: 310, visits: [{ day: '2026-03-01', share: 8 }, { day: '2026-09-01', share: 5.5 }] },
    ]);
  });
  it('adds up the visits of a year, older ones not', () => {
    const tree = { name: 'Ash', stem: 200, visits: [{ day: '2025-09-01', share: 10 }, { day: '2025-10-15', share: 4 }, { day: '2026-09-01', share: 3 }] };
    expect(takenInYear(tree, '2026-10-01')).toBe(7);
    expect(takenInYear(tree, '2026-11-01')).toBe(3);
  });
  it('forgets one and leaves the others', () => {
    addVisit('Ash', 200, { day: '2026-09-01', share: 3 });
    addVisit('Elm', 200, { day: '2026-09-01', share: 3 });
    expect(forget('Ash')).toBe(true);
    expect(trees().map((t) => t.name)).toEqual(['Elm']);
  });
  it.each(['{', '[]', '{"trees":7}', '{"trees":[null,{"name":""},{"name":"x","stem":"1","visits":[]}]}'])('damaged (%s) is as empty', (text) => {
    shelf.held[treesName] = text;
    expect(trees()).toEqual([]);
  });
  it('one damaged visit costs no other', () => {
    shelf.held[treesName] = JSON.stringify({ trees: [{ name: 'Oak', stem: 400, visits: [{ day: 'soon', share: 5 }, { day: '2026-02-30x', share: 5 }, { day: '2026-09-01', share: -1 }, { day: '2026-09-01', share: 6 }] }] });
    expect(trees()[0]?.visits).toEqual([{ day: '2026-09-01', share: 6 }]);
  });
  it('says when the browser refuses', () => {
    shelf.refuses = true;
    expect(addVisit('Ash', 200, { day: '2026-09-01', share: 3 })).toBe(false);
    expect(trees()).toEqual([]);
  });
});
