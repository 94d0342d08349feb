import { expect, test } from 'vitest';
import { hardnessMass } from '../../src/topics/water';
import { toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

// source: NIST SP 811 B.9 and HB 44 App. C, in public files: 1 grain a gallon is 17.118061 mg/L · secondary · 1e-6 g
test.each([
  [1, 17.118061],
  [6, 102.708366],
])('%d gpg carry %d g in a cubic metre', (gpg, grams) => {
  expect(Math.abs(valueOf(hardnessMass({ hardnessKgM3: toSI(gpg, 'gpg'), waterM3: 1 })) * 1000 - grams)).toBeLessThan(2e-6);
});
