/** What holds for every calculator, for every one there is: a new one is covered the moment it is in the registry. */
import { expect, it } from 'vitest';
import { calculators } from '#core/registry.ts';
import { holdsForAll } from '../kit/properties.ts';

it('every calculator has an id of its own', () => {
  expect(new Set(calculators.map((c) => c.id)).size).toBe(calculators.length);
});

for (const calculator of calculators) holdsForAll(calculator);
