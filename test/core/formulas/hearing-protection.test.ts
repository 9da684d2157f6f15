import { describe, expect, it } from 'vitest';
import { classFor } from '#core/facts/hearing.ts';
import { hml, nrrDerated, nrrInField, nrrOnA, nrrOnC, snr } from '#core/formulas/hearing-protection.ts';

describe('What a protector takes off', () => {
  it('SNR: 28 in 97 dB(C) leaves 73 (worked example of an instrument’s help page)', () => expect(95 - snr(28, 2)).toBe(73));
  it('NRR on C: 32 in 108 dB(C) leaves 76', () => expect(106 - nrrOnC(32, 2)).toBe(76));

  // Three named methods that some pages mix up. The legal form takes off seven, the field form half of what is left.
  it('keeps the legal, the field and the NIOSH form apart', () => {
    expect(nrrOnA(25)).toBe(18);
    expect(nrrInField(25)).toBe(9);
    expect(nrrDerated(25, 0.25)).toBe(11.75);
    expect(nrrDerated(25, 0.5)).toBe(5.5);
    expect(nrrDerated(25, 0.7)).toBeCloseTo(0.5, 9);
  });

  // Levels and ratings from a sound level meter's manual; the answer was worked out by hand: 19 − (25 − 19)/4·(0.2 − 2) = 21.7.
  it('HML: 103.2 dB(A), 103.4 dB(C), 25/19/13 leaves 81.5', () => expect(103.2 - hml(25, 19, 13, 0.2)).toBeCloseTo(81.5, 6));
  // By the second line of the method, for deep noise: 19 − (19 − 13)/8·(6 − 2) = 16.
  it('HML for deep noise follows its second line, and the two meet', () => {
    expect(hml(25, 19, 13, 6)).toBe(16);
    expect(hml(25, 19, 13, 2)).toBe(19);
  });

  it('classes (AS/NZS 1269.3 as quoted): 102 dB(A) asks for class 4; edges belong to the higher class; none from 110', () => {
    expect([102, 89.9, 90, 95, 100, 104.9, 105, 109.9, 110].map(classFor)).toEqual([4, 1, 2, 3, 4, 4, 5, 5, null]);
  });
});
