/** Angles, girth, sections and wood full of water against what is printed elsewhere. */
import { describe, expect, it } from 'vitest';
import { angleUp, cos, degrees, radians, sin, tan } from '#core/formulas/angles.ts';
import { massPerMetre, saturatedDensity, unknownDensity } from '#core/formulas/density.ts';
import { diameterFromGirth, girthFromDiameter } from '#core/formulas/girth.ts';
import { poleAngleFrom, riseFrom, standOffAtLength, standOffAtLowest, standOffAtSteepest } from '#core/formulas/reach.ts';
import { circleArea, cutArea, cutWidth } from '#core/formulas/section.ts';

// Phoenix College, Maricopa: trigonometric function values in tables; four places, so half of the last.
const table: [number, number, number, number][] = [
  [0, 1, 0, 0], [5, 0.9962, 0.0872, 0.0875], [10, 0.9848, 0.1736, 0.1763], [15, 0.9659, 0.2588, 0.2679], [20, 0.9397, 0.342, 0.364],
  [25, 0.9063, 0.4226, 0.4663], [30, 0.866, 0.5, 0.5774], [35, 0.8192, 0.5736, 0.7002], [40, 0.766, 0.6428, 0.8391],
  [45, 0.7071, 0.7071, 1], [50, 0.6428, 0.766, 1.1918], [55, 0.5736, 0.8192, 1.4281], [60, 0.5, 0.866, 1.7321],
  [65, 0.4226, 0.9063, 2.1445], [70, 0.342, 0.9397, 2.7475], [75, 0.2588, 0.9659, 3.7321], [80, 0.1736, 0.9848, 5.6713],
  [85, 0.0872, 0.9962, 11.4301], [120, -0.5, 0.866, -1.7321], [145, -0.8192, 0.5736, -0.7002], [175, -0.9962, 0.0872, -0.0875],
];
const half = 0.00005 + 1e-9;
describe('the table of angles', () => {
  it.each(table)('%d degrees', (angle, cosine, sine, tangent) => {
    expect(Math.abs(cos(angle) - cosine)).toBeLessThanOrEqual(half);
    expect(Math.abs(sin(angle) - sine)).toBeLessThanOrEqual(half);
    expect(Math.abs(tan(angle) - tangent)).toBeLessThanOrEqual(half);
    expect(Math.abs(sin(-angle) + sine)).toBeLessThanOrEqual(half);
    expect(Math.abs(degrees(radians(angle)) - angle)).toBeLessThan(1e-12);
  });
  it('the way back: arctan of the tangents', () => {
    for (const [angle, , , tangent] of table.filter(([a]) => a <= 60)) expect(Math.abs(angleUp(tangent, 1) - angle)).toBeLessThan(0.004);
    expect(angleUp(1, 0)).toBe(90);
    expect(angleUp(-1, 0)).toBe(-90);
    expect(angleUp(0, 0)).toBe(0);
  });
});

describe('girth', () => {
  // University of California, Pest Notes 74111: a trunk 32 inches around has a diameter of about 10.
  it('32 around is about 10 across', () => expect(Math.abs(diameterFromGirth(32) - 10)).toBeLessThan(0.5));
  // A how-to page on measuring trees: 52 inches around, 16.55 across.
  it('52 around is 16.55 across', () => expect(Math.abs(diameterFromGirth(52) - 16.55)).toBeLessThan(0.005));
  it('there and back', () => expect(girthFromDiameter(diameterFromGirth(314.159))).toBeCloseTo(314.159, 10));
  it('of an oval it is more than the same area’s circle and less than the widest', () => {
    // Oval of 120 by 80: perimeter by Ramanujan's first formula, half axes 60 and 40.
    const around = Math.PI * (3 * (60 + 40) - Math.sqrt((3 * 60 + 40) * (60 + 3 * 40)));
    expect(diameterFromGirth(around)).toBeGreaterThan(Math.sqrt(120 * 80));
    expect(diameterFromGirth(around)).toBeLessThan(120);
  });
});

describe('sections', () => {
  it('a circle of 100 is 7,854 in area', () => expect(circleArea(100)).toBeCloseTo(7853.98, 2));
  it('cut slantwise, an ellipse: pi times both half axes', () => {
    for (const offSquare of [0, 10, 35, 60]) {
      expect(cutArea(100, 90 - offSquare)).toBeCloseTo(Math.PI * 50 * (cutWidth(100, offSquare) / 2), 8);
    }
  });
});

describe('wood full of water', () => {
  // Wood Handbook, rule for the most water wood can hold, printed as 267 % at 0.30 and 44 % at 0.90 in a typed copy; with its own
  // 1.54 the rule gives 268.4 and 46.2. In weight: 0.30 × 3.684 and 0.90 × 1.462 of water's.
  it.each([[300, 1105.2], [900, 1315.8]])('basic %d: %f', (basic, full) => {
    expect(Math.abs(saturatedDensity(basic) - full)).toBeLessThan(0.5);
  });
  it('the printed anchors agree within what another cell wall would make', () => {
    expect(Math.abs(saturatedDensity(300) / (300 * 3.67) - 1)).toBeLessThan(0.01);
    expect(Math.abs(saturatedDensity(900) / (900 * 1.44) - 1)).toBeLessThan(0.02);
  });
  it('unknown wood is the heaviest on file, full', () => expect(unknownDensity()).toBeCloseTo(1308.6, 1));
});

// Green log table credited to the US National Park Service, second hand; its own worked example: apple, 16 inches, 77 pounds a foot.
describe('weight a metre', () => {
  const [pound, foot] = [0.45359237, 0.3048];
  it.each([[55, 16, 77], [76, 18, 134], [34, 10, 19], [38, 14, 41], [63, 18, 111]])('%d lb to the cubic foot, %d in: %d lb a foot', (density, inches, pounds) => {
    const kilograms = massPerMetre(inches * 25.4, (density * pound) / foot ** 3);
    expect(Math.abs((kilograms * foot) / pound - pounds)).toBeLessThan(0.6); // printed to a pound
  });
});

describe('reach', () => {
  it('where the pole is level, and where it just touches', () => {
    expect(standOffAtLength(0, 0, 3)).toBe(3);
    expect(standOffAtLength(3, 0, 3)).toBe(0);
    expect(standOffAtLength(3.01, 0, 3)).toBeNull();
    expect(standOffAtLength(3.05, 20, 3)).toBeNull(); // only from behind, downhill, would it reach
  });
  it('the angle limits meet the angle itself', () => {
    for (const slope of [-20, 0, 20]) {
      expect(poleAngleFrom(2, slope, standOffAtSteepest(2, slope, 60))).toBeCloseTo(60, 9);
      expect(poleAngleFrom(-1, slope, standOffAtLowest(-1, slope, -30))).toBeCloseTo(-30, 9);
    }
  });
  it('there is none where there is nothing to hold it to', () => {
    expect(standOffAtSteepest(-1, 0, 60)).toBe(0);
    expect(standOffAtLowest(1, 0, -30)).toBe(0);
    expect(standOffAtLowest(0, -30, -30)).toBe(0);
    expect(standOffAtLowest(-1, -30, -30)).toBe(Infinity);
    expect(standOffAtLowest(-1, -31, -30)).toBe(Infinity);
  });
  it('the ground adds its rise', () => expect(riseFrom(2, 45, 3)).toBeCloseTo(5, 12));
});
