/** Numbers from 0 to 1 out of a seed. */
export const randomFrom = (start: number) => {
  // Mulberry32: small, even enough, and the same on every machine.
  let state = start >>> 0;
  return (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
};
