import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type DataSheet, dataSheetSchema, FAMILIES, findFamily } from '../../src/catalog';

const rows = FAMILIES.map((sheet) => ({ id: sheet.id, sheet }));

describe('the catalogue', () => {
  it('holds the six generic families in this order, each in a file of its name', () => {
    const files = readdirSync('src/catalog/families').map((file) => file.replace(/\.ts$/, ''));
    const ids = FAMILIES.map((sheet) => sheet.id);
    const six = ['recirculating-hot-water', 'fresh-water-hot-water', 'chemical-sanitising', 'tall-door', 'direct-vent', 'heat-recovery'];
    expect(ids.filter((id) => six.includes(id))).toEqual(six);
    expect(files).toEqual(expect.arrayContaining(ids));
  });

  it('finds a family by its id, and nothing by another', () => {
    expect(findFamily('tall-door')?.name).toMatch(/tall door/i);
    expect(findFamily('no-such-family')).toBeUndefined();
  });
});

/** What must be true of any data sheet that is to be drawn and checked. */
const INVARIANTS: Record<string, (sheet: DataSheet) => boolean> = {
  'passes its schema': (s) => dataSheetSchema.safeParse(s).success,
  'has a door left, right and front': (s) => ['left', 'right', 'front'].every((side) => s.doors.some((door) => door === side)),
  'has its rack lines on its sides': (s) => s.rackLine.left < s.depth && s.rackLine.right < s.depth && s.rackLine.front < s.width,
  'lets a rack of 20 in through each side': (s) =>
    [s.rackLine.left, s.rackLine.right].every((y) => y >= 254 && s.depth - y >= 254) &&
    s.rackLine.front >= 254 &&
    s.width - s.rackLine.front >= 254,
  'offers the controls at both front corners': (s) => s.controls.map((c) => c.id).join() === 'front-left,front-right',
  'has its controls on the footprint': (s) =>
    s.controls.every((c) => c.from >= 0 && c.from < c.to && c.to <= (c.side === 'left' || c.side === 'right' ? s.depth : s.width)),
  'has its controls on the body': (s) => s.controls.every((c) => c.zFrom < c.zTo && c.zTo <= s.doorLiftHeight),
  'has the two positions in a mirror of each other': (s) => {
    const [left, right] = s.controls;
    return left !== undefined && right !== undefined && left.from === s.width - right.to && left.to === s.width - right.from;
  },
  'has every connection within 300 mm of the footprint': (s) =>
    s.connections.every(({ x, y }) => x >= -300 && x <= s.width + 300 && y >= -300 && y <= s.depth + 300),
  'drains by gravity, below the deck': (s) => s.connections.filter((c) => c.kind === 'drain' && c.z < s.deckHeight).length === 1,
  'has power and one water feed of the stated kind': (s) =>
    s.connections.some((c) => c.kind === 'power') && s.connections.filter((c) => c.kind === `${s.waterFeed}-water`).length === 1,
  'sends its signals to contactors, never to a motor': (s) =>
    s.connections.filter((c) => c.kind.endsWith('-signal')).every((c) => /120 V/.test(c.note) && /contactor, never a motor/.test(c.note)),
  'warns of the drain that opens when power is cut': (s) =>
    s.connections.some((c) => c.kind === 'drain' && /opens by itself when power is cut/.test(c.note)),
  'lifts its doors above itself and past the opening': (s) =>
    s.doorLiftHeight >= s.height && s.doorLiftHeight >= s.deckHeight + s.clearOpening,
  'washes, rinses and is loaded in a plausible time': (s) => {
    const total = s.cycle.washS + s.cycle.rinseS + s.cycle.dwellS + s.cycle.loadS;
    return total >= 45 && total <= 180;
  },
  'has ids of its own for each variant': (s) => new Set(s.electrical.map((e) => e.id)).size === s.electrical.length,
  'has a collar exactly when it vents direct': (s) => s.connections.some((c) => c.kind === 'collar') === (s.vent.kind === 'direct'),
  'begins each conversion with making safe and two persons': (s) =>
    [s.conversion.toCorner, s.conversion.toStraight].every(
      ([first, second]) => /lock it out/.test(first ?? '') && /two persons/.test(second ?? ''),
    ),
};

describe.each(rows)('$id', ({ sheet }) => {
  it.each(Object.keys(INVARIANTS))('%s', (name) => expect(INVARIANTS[name]?.(sheet)).toBe(true));

  it('draws the current of a resistive load', () => {
    // source: single-phase I = P/(V pf), three-phase I = P/(1.732 V pf), pf 1 · secondary · 0.1 A
    for (const { voltage, phase, powerKw, currentA } of sheet.electrical) {
      const expected = phase === 3 ? (powerKw * 1000) / (1.732 * voltage) : (powerKw * 1000) / voltage;
      expect(Math.abs(currentA - expected)).toBeLessThan(0.1);
    }
  });
});

describe('figures from documents and practice', () => {
  it.each(FAMILIES.filter((s) => s.sanitizing === 'hot-water'))('$id washes at 150 °F and rinses at 180 °F', ({ temperatures }) => {
    // source: NAC 446.355, dual-temperature single tank 150 wash / 180 rinse · read · 0.1 °F
    expect(temperatures.washC * 1.8 + 32).toBeCloseTo(150, 1);
    expect(temperatures.rinseC * 1.8 + 32).toBeCloseTo(180, 1);
    // source: FC 4-501.112 as WAC 246-215-04555, at most 194 °F at the manifold · read
    expect(temperatures.rinseC).toBeLessThanOrEqual(90);
  });

  it('the chemical family washes at 120 °F', () => {
    // source: Army QM 3510 · read · 0.1 °F
    expect((findFamily('chemical-sanitising')?.temperatures.washC ?? 0) * 1.8 + 32).toBeCloseTo(120, 1);
  });

  // source: rinse flows of door machines, restated from a handbook’s table of service water heating · secondary · whole gph and 0.1 gpm, as printed
  it.each(rows)('$id rinses with as much water as door machines do', ({ sheet }) => {
    const { rinseWaterL, sanitizing, cycle, clearOpening } = sheet;
    const gallons = rinseWaterL / 3.785411784;
    const perMinute = (60 * gallons) / cycle.rinseS;
    const perHour = Math.round((3600 * gallons) / (cycle.washS + cycle.rinseS + cycle.dwellS + cycle.loadS));
    const [gpm, gph] = sanitizing === 'chemical' ? [[1.9, 5.1] as const, [33, 68] as const] : [[2.7, 7.1] as const, [28, 92] as const];
    expect(perMinute).toBeGreaterThanOrEqual(gpm[0]);
    expect(perMinute).toBeLessThanOrEqual(gpm[1]);
    expect(perHour).toBeLessThanOrEqual(gph[1]);
    // A door that passes pans on edge has fewer and longer cycles than the range is made of.
    expect(perHour).toBeGreaterThanOrEqual(clearOpening >= 26 * 25.4 ? 25 : gph[0]);
  });

  it.each(rows)('$id has its deck at 34 in', ({ sheet }) => {
    // source: ASTM F953-94 (2003), scope, 34 in (863.6 mm) · read · exact
    expect(sheet.deckHeight).toBe(863.6);
    // source: NSF/ANSI 3 listing preface, load time of a door machine 5 s · read · exact
    expect(sheet.cycle.loadS).toBe(5);
  });

  it('common practice: drain, water, tall door, direct vent', () => {
    for (const { connections } of FAMILIES) {
      expect(connections.find((c) => c.kind === 'drain')?.size).toBeCloseTo(2 * 25.4, 9);
      expect(connections.find((c) => c.id === 'water')?.size).toBeCloseTo(0.75 * 25.4, 9);
    }
    expect(findFamily('tall-door')?.clearOpening).toBeCloseTo(27 * 25.4, 9);
    const vent = findFamily('direct-vent')?.vent;
    expect(vent).toMatchObject({ kind: 'direct', maxEquivalentLength: 50 * 304.8, elbowAllowance: 10 * 304.8, cordLength: 10 * 304.8 });
  });

  it('heat recovery: cold feed, the longest dwell of its size', () => {
    const recovery = findFamily('heat-recovery');
    expect(recovery?.waterFeed).toBe('cold');
    expect(recovery?.cycle.dwellS).toBe(Math.max(...FAMILIES.map((s) => s.cycle.dwellS)));
  });
});
