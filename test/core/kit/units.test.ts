import { describe, expect, it } from 'vitest';
import { faceOf, isFeetAndInches, type Unit, units } from '#core/kit/units.ts';

/**
 * NIST Special Publication 811, Guide for the use of the SI, appendix B (from memory): factors to SI. Those given to
 * seven places are held to seven; the exact ones to binary accuracy.
 */
const published: [Unit, string, number, number][] = [
  ['mm', 'in', 25.4, 1e-12],
  ['m', 'ft in', 0.0254, 1e-12],
  ['kg', 'lb', 0.45359237, 1e-12],
  ['N', 'lbf', 4.4482216152605, 1e-12],
  ['L', 'US gal', 3.785411784, 1e-12],
  ['mL', 'US fl oz', 29.5735295625, 1e-12],
  ['m/s', 'mph', 0.44704, 1e-12],
  ['mm2', 'in²', 645.16, 1e-12],
  ['m3', 'ft³', 0.02831685, 1e-6],
  ['kg/m', 'lb/ft', 1.488164, 1e-6],
  ['kg/m3', 'lb/ft³', 16.01846, 1e-6],
  ['Nm', 'lbf·ft', 1.355818, 1e-6],
  ['J', 'ft·lbf', 1.355818, 1e-6],
  ['MPa', 'psi', 0.006894757, 1e-6],
  ['Pa', 'lbf/ft²', 47.88026, 1e-6],
];

describe('imperial faces against the published factors', () => {
  it.each(published)('%s to %s', (unit, symbol, factor, within) => {
    const face = faceOf(unit, 'imperial');
    expect(face.symbol).toBe(symbol);
    expect(Math.abs(face.per / factor - 1)).toBeLessThan(within);
  });

  it('no unit with an imperial face of its own is left out of that list, but temperature', () => {
    const own = (Object.keys(units) as Unit[]).filter((u) => units[u].imperial.symbol !== units[u].metric.symbol);
    expect(own.filter((u) => !published.some(([p]) => p === u))).toEqual(['degC']);
  });

  it('temperature: water freezes at 32 °F and boils at 212 °F', () => {
    const { per, shift } = faceOf('degC', 'imperial');
    expect(0 / per + shift).toBe(32);
    expect(100 / per + shift).toBeCloseTo(212, 12);
  });

  it('only lengths in feet are shown as feet and inches', () => {
    const both = (Object.keys(units) as Unit[]).filter((u) => isFeetAndInches(faceOf(u, 'imperial')));
    expect(both).toEqual(['m']);
  });

  it('every face has a step', () => {
    for (const unit of Object.values(units)) for (const face of [unit.metric, unit.imperial]) expect(face.step).toBeGreaterThan(0);
  });
});
