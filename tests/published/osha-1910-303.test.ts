import { describe, expect, test } from 'vitest';
import { workingDepth, workingHeight, workingWidth } from '../../src/topics/power';
import { valueOf } from '../support/valueOf';

const FOOT = 0.3048;

// source: 29 CFR 1910.303(g)(1), Table S-1, as WAC 296-24-95703 and UFC 3-520-01 Table 8-1 copy it · read · exact
describe('Table S-1, depth of working space to 600 V', () => {
  test.each([
    [150, 'A', 3],
    [150, 'B', 3],
    [150, 'C', 3],
    [151, 'A', 3],
    [151, 'B', 3.5],
    [151, 'C', 4],
    [600, 'B', 3.5],
    [600, 'C', 4],
  ] as const)('%d V to ground, condition %s: %d ft', (voltsToGround, condition, feet) => {
    expect(valueOf(workingDepth({ voltsToGround, condition })) / FOOT).toBeCloseTo(feet, 12);
  });

  test('above 600 V it refuses', () => expect(workingDepth({ voltsToGround: 601, condition: 'A' }).ok).toBe(false));
});

// source: 29 CFR 1910.303(g)(1) as WAC 296-800-28027; OSHA interpretation of 28 May 1999 · read · exact
describe('width and height', () => {
  test.each([
    [0.5, 30 * 0.0254],
    [0.762, 0.762],
    [1.2, 1.2],
  ])('equipment %d m wide: %d m', (equipmentM, width) => expect(valueOf(workingWidth({ equipmentM }))).toBeCloseTo(width, 12));

  test.each([
    [1.5, 6.5 * FOOT],
    [2.2, 2.2],
  ])('equipment %d m high: %d m', (equipmentM, height) => expect(valueOf(workingHeight({ equipmentM }))).toBeCloseTo(height, 12));
});
