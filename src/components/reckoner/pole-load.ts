import { load as fact } from '#core/facts/load.ts';
import { holdSeconds } from '#core/formulas/endurance.ts';
import { alongPoleForce, leverMoment, type Held } from '#core/formulas/held-pole.ts';
import { figure, grid, range, same, type Table } from './table.ts';

const pole = (mass: number, poleAngle: number, balance: number): Held => ({ mass, balance, gripSpacing: 1, poleAngle, strapShare: 0, strapAt: 0 });
const masses = range(4, 10, 1);
const angles = [0, 15, 30, 45, 60];

export const poleTables = (): Table[] => [
  grid('lever', figure('m', 1), masses, angles, {
    down: (mass) => figure('kg', mass), across: (angle) => figure('deg', angle), cell: (mass, angle) => figure('Nm', leverMoment(pole(mass, angle, 1)), 'up'),
  }),
  grid('along', same(''), masses, angles, {
    down: (mass) => figure('kg', mass), across: (angle) => figure('deg', angle), cell: (mass, angle) => figure('N', alongPoleForce(pole(mass, angle, 1)), 'up'),
  }),
  {
    id: 'hold',
    head: range(0, 3, 1).map(() => same('')),
    rows: range(fact('power-law-from'), 100, 10).map((share) => [
      figure('%', share),
      ...(['shoulder', 'elbow', 'grip'] as const).map((region) => {
        const middle = holdSeconds(region, share / 100);
        const band = fact('power-law-band') / 100;
        return same(`${figure('s', middle * (1 - band), 'down', 1).metric.replace(/\D+$/, '')}–${figure('s', middle * (1 + band), 'down', 1).metric}`);
      }),
    ]),
    status: 'derived', source: 'power-law-2010',
  },
];
