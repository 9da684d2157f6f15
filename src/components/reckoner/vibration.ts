import { vibration as fact } from '#core/facts/vibration.ts';
import { vibrationLevels } from '#core/facts/vibration-levels.ts';
import { dailyExposure, exposurePoints, minutesUntil, yearsToWhiteFinger } from '#core/formulas/vibration.ts';
import { type Cell, figure, grid, number, range, same, type Table } from './table.ts';

const { action, limit } = vibrationLevels();
const points = (magnitude: number, minutes: number): Cell => {
  const value = exposurePoints([{ magnitude, minutes }]);
  const over = value >= limit - 1e-9 ? 'limit' : value >= action - 1e-9 ? 'action' : null;
  return { ...number(Math.ceil(value - 1e-9)), ...(over ? { over } : {}) };
};
const strengths = [...range(1, 10, 0.5), ...range(11, 15, 1)];
const share = fact('default-uncertainty');
const minutes = (level: number, magnitude: number) => figure('min', minutesUntil(level, 0, magnitude), 'down');

export const vibrationTables = (): Table[] => [
  grid('points', same('m/s²'), strengths, [15, 30, 60, 90, 120, 180, 240, 360, 480], {
    down: (value) => figure('m/s2', value), across: (value) => figure('min', value), cell: points,
  }),
  {
    id: 'minutes',
    head: [same('m/s²'), same(''), same(''), same(''), same('')],
    rows: strengths.map((a) => [
      figure('m/s2', a), minutes(fact('action'), a), minutes(fact('limit'), a),
      minutes(fact('action'), a * (1 + share / 100)), minutes(fact('limit'), a * (1 + share / 100)),
    ]),
  },
  {
    id: 'years',
    head: [same('A(8)'), same('')],
    // The published table runs from 3.7 to 26 m/s².
    rows: [4, 5, 7, 10, 14, 20].map((a) => [figure('m/s2', dailyExposure([{ magnitude: a, minutes: 480 }])), number(Number(yearsToWhiteFinger(a).toFixed(1)))]),
    source: 'iso-5349-1',
  },
];
