import { expect, test } from 'vitest';
import { CHECKS, RULES } from '../../src/topics/registry';

// What no plan can show, and a check must say all the same. The rules behind it stand in the manual with their sources.

const whyOf = (id: string) => CHECKS.find((check) => check.id === id)?.why;

// NYC Mechanical Code 501.2; UFC 4-740-01NF and 4-750-01NF, 6-2.3.2; UFC 3-410-01FA, 4-10.3.
test('exhaust of dishwashing has a duct and a fan of its own', () => {
  expect(whyOf('hood-exhaust-enough')).toContain('a duct and a fan of its own');
  expect(whyOf('duct-material')).toContain('joined to no other duct');
  expect(RULES.find(({ id }) => id === 'own-exhaust')?.source.map(({ confidence }) => confidence)).toEqual(['read', 'read', 'read']);
});

// Minn. R. 1346.0508.
test('a diffuser near a hood blows away from it', () => expect(whyOf('make-up-balances')).toContain('within 12 ft of a hood blows away'));

// Trade fact, common practice: the plate outside may be that of another version.
test.each(['power-agrees', 'breaker-size', 'wire-carries', 'voltage-drop'])('%s: the plate inside the control compartment governs', (id) =>
  expect(whyOf(id)).toMatch(/plate inside the control compartment governs?\b.*licensed electrician decides/),
);

// IMC 507.3.3, restated; FDA Food Code 4-204.11.
test('the seams of a hood let nothing drip', () => expect(whyOf('hood-overhang')).toContain('inner seams are tight and smooth'));

// UFC 4-722-01, 4-4.5.2.
test('a ceiling has no tile with open cells', () => expect(whyOf('ceiling')).toContain('open cells'));

// Chicago 18-29-409.3.1, an earlier edition.
test('a direct connection may need a floor drain in line', () => expect(whyOf('waste-direct')).toContain('in line, just downstream'));

// WAC 246-215-04925, Food Code 4-903.12.
test('clean ware does not stand under a waste line', () =>
  expect(whyOf('clean-off-floor')).toContain('under a waste line without a shield'));

// UFGS 11400A, 2.3.5.
test('what has pipes or wires is anchored', () => expect(whyOf('cleanable-below')).toContain('flanged feet that are anchored'));

// UFGS 11400A, 2.4.2.3.
test('the pre-rinse spray is fixed to the backsplash', () => expect(whyOf('backsplash')).toContain('spray is fixed to it'));

// UFC 4-722-01, 5-10.1.
test('a dish room beside the dining room is loud', () => expect(whyOf('line-complete')).toContain('noise is a major concern'));

// One secondary, one from memory.
test('the lengths of landings differ by text', () =>
  expect(whyOf('landing-racks')).toContain('36 to 48 in at each side, or 60 in before the machine and 48 in after it'));

// COMAR 10.15.03.16.
test('what a sanitiser by hand must be is said', () => expect(whyOf('manual-sanitizing')).toContain('50 ppm at 75 °F for 7 s'));

// NY 14-1.115, 15A NCAC 18A .3313(d); VSP 2018 §13.16.3.3.
test('a test kit is on the site', () => expect(whyOf('chemicals-dosed')).toContain('A test kit on the site'));
