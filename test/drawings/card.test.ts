import { describe, expect, it } from 'vitest';
import cutLabels from '#content/drawings/cut-order.json' with { type: 'json' };
import { heldLimb } from '#core/card/figures.ts';
import { flattened, traces } from '#drawings/card/flatten.ts';
import { cutPicture } from '#drawings/card/pictures.ts';
import { circle, polygon, rod } from '#drawings/kit/path.ts';

describe('curves as straight pieces', () => {
  it('a circle stays a circle', () => {
    const [{ points }] = traces(circle([10, 20], 5)) as unknown as [{ points: [number, number][] }];
    for (const [x, y] of points) expect(Math.hypot(x - 10, y - 20)).toBeCloseTo(5, 0.5);
    expect(Math.max(...points.map(([x]) => x))).toBeCloseTo(15, 1);
    expect(Math.min(...points.map(([x]) => x))).toBeCloseTo(5, 0);
  });
  it('a rod keeps its round ends', () => {
    const [{ points }] = traces(rod([0, 0], [10, 0], 2, 1)) as unknown as [{ points: [number, number][] }];
    expect(Math.max(...points.map(([x]) => x))).toBeCloseTo(11, 0);
    expect(Math.min(...points.map(([x]) => x))).toBeCloseTo(-2, 0);
  });
  it('subpaths, curves and level lines', () => {
    expect(traces('M0 0H4V3Z').map(({ points, closed }) => [points, closed])).toEqual([[[[0, 0], [4, 0], [4, 3]], true]]);
    expect(traces('M0,0L1,1M2,2L3,3')).toHaveLength(2);
    const [curve] = traces('M0,0C0,10,10,10,10,0') as unknown as [{ points: [number, number][] }];
    // The middle of a cubic is an eighth, three eighths, three eighths and an eighth of its points.
    expect(curve.points[6]).toEqual([5, 7.5]);
    const [bow] = traces('M0,0Q5,10,10,0') as unknown as [{ points: [number, number][] }];
    expect(bow.points[6]).toEqual([5, 5]);
  });
  it('refuses what it does not know', () => expect(() => traces('M0 0S1 1 2 2')).toThrow(/"S"/));
});

describe('hatchings as lines', () => {
  it('lie inside their area and share it out evenly', () => {
    const lines = flattened([{ mark: 'pulled', d: polygon([[0, 0], [50, 0], [50, 20], [0, 20]]) }], 1);
    expect(lines).toHaveLength(10);
    for (const { points } of lines) {
      expect(points[0]![0]).toBeCloseTo(points[1]![0], 9);
      expect(points.map(([, y]) => y).sort((a, b) => a - b)).toEqual([0, 20]);
    }
  });
});

it('a small picture holds all of itself, and numbers its cuts', () => {
  const { inputs, outcome } = heldLimb('free');
  const { width, height, strokes, texts } = cutPicture({ inputs: inputs as never, outcome }, cutLabels.labels);
  expect(texts.map(({ text }) => text).sort()).toEqual(['1', '2']);
  for (const { points } of strokes) {
    for (const [x, y] of points) {
      expect(x >= 0 && x <= width && y >= 0 && y <= height).toBe(true);
    }
  }
});
