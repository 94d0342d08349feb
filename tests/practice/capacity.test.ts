import { describe, expect, test } from 'vitest';
import { peakBacklog, peakClearing, peakLongestWait, racksNeeded, racksOnTable } from '../../src/topics/capacity';
import { rackRate } from '../../src/topics/line';
import { valueOf } from '../support/valueOf';

const rated = (washS: number) => valueOf(rackRate({ racksPerCycle: 1, washS, rinseS: 0, dwellS: 0, loadS: 5 }));

// Common practice, from memory: 6 pieces a guest, about 20 in a rack, 0.70 of the rated rate.
describe('from guests to racks', () => {
  test('120 guests an hour want 36 racks, so a machine rated 51.43', () => {
    const guests = { guestsPerH: 120, piecesPerGuest: 6, piecesPerRack: 20 };
    expect(valueOf(racksNeeded({ ...guests, practicalShare: 1 }))).toBeCloseTo(36, 9);
    const needed = valueOf(racksNeeded({ ...guests, practicalShare: 0.7 }));
    expect(needed).toBeCloseTo(51.43, 2);
    expect(rated(60)).toBeGreaterThan(needed);
    expect(rated(90)).toBeLessThan(needed);
    expect(0.7 * rated(60)).toBeCloseTo(38.769, 3);
  });

  test('a cafeteria line of ten a minute outruns any door machine', () => {
    expect(valueOf(racksNeeded({ guestsPerH: 600, piecesPerGuest: 6, piecesPerRack: 20, practicalShare: 1 }))).toBeCloseTo(180, 9);
  });
});

// Arithmetic of a stream of racks.
describe('a rush of 90 racks an hour, then 20, washed 60 an hour', () => {
  const rush = { peakPerH: 90, peakS: 3600, afterPerH: 20, servedPerH: 60 };

  test('30 racks pile up and are gone 45 min later; the longest waits 30 min', () => {
    expect(valueOf(peakBacklog(rush))).toBeCloseTo(30, 9);
    expect(valueOf(peakClearing(rush))).toBeCloseTo(0.75 * 3600, 9);
    expect(valueOf(peakLongestWait(rush))).toBeCloseTo(1800, 9);
  });

  test('flat on a table they would take 600 in', () => {
    expect(valueOf(racksOnTable({ lengthM: 600 * 0.0254, pitchM: 20 * 0.0254 }))).toBe(30);
  });

  test('a machine that keeps up has no pile; one that never catches up is refused', () => {
    expect(valueOf(peakBacklog({ ...rush, servedPerH: 90 }))).toBe(0);
    expect(peakClearing({ ...rush, afterPerH: 60 }).ok).toBe(false);
  });
});
