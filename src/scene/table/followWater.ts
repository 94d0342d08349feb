/**
 * Water on a deck, in the long profile. One number (the fall) can't judge a table with turns or
 * sinks, so the water is followed: every stretch runs down to the joint, into a sink, or stands.
 */

/** A point of the profile: along the table from the joint, and height above the floor. */
export interface ProfilePoint {
  s: number;
  z: number;
}

/** A sink takes all water between its edges. */
export interface Extent {
  from: number;
  to: number;
}

export interface WaterStretch extends Extent {
  /** Positive when water runs toward the joint. */
  slope: number;
  runsTo: 'joint' | 'sink' | 'stands';
}

export interface WaterPool extends Extent {
  /** Along the table, where it is deepest. */
  lowest: number;
  /** Depth there before it would run over; 0 where the deck is only level. */
  depth: number;
}

export interface Water {
  stretches: WaterStretch[];
  pools: WaterPool[];
  /** Least slope toward the drain, over all stretches; negative when a stretch falls away from it. Infinite when sinks take the whole deck. */
  leastSlope: number;
}

/** Flatter than this is level: 0.01 mm in a metre, far below what a deck can be made to. */
const LEVEL_SLOPE = 1e-5;

/** The rim at a table's far end holds water like a wall of this height. */
export const END_RIM_HEIGHT = 75;

/** Shallower than this is rounding of the arithmetic, not water. */
const LEAST_DEPTH = 1e-6;

/** Follows the water of a whole deck. `profile` runs from the joint to the far end; `sinks` may overlap each other or its ends. */
export function followWater(profile: readonly ProfilePoint[], sinks: readonly Extent[]): Water {
  const reaches = splitAtSinks(profile, sinks);
  const stretches = reaches.flatMap(followStretches);
  const pools = reaches.flatMap(findPools);
  return { stretches, pools, leastSlope: Math.min(...reaches.flatMap(slopesToDrain)) };
}

/** Height of a profile at a place along it; beyond its ends the height of the end. */
export function profileHeightAt(profile: readonly ProfilePoint[], s: number): number | null {
  const next = profile.findIndex((point) => point.s >= s);
  const b = next < 0 ? profile.at(-1) : profile[next];
  const a = profile[next - 1];
  if (b === undefined) return null;
  return a === undefined || next < 0 ? b.z : a.z + ((b.z - a.z) * (s - a.s)) / (b.s - a.s);
}

/** Deck between two drains, or between a drain and the far end. */
interface Reach {
  points: ProfilePoint[];
  start: 'joint' | 'sink';
  end: 'sink' | 'rim';
}

function splitAtSinks(profile: readonly ProfilePoint[], sinks: readonly Extent[]): Reach[] {
  const first = profile[0]?.s ?? 0;
  const last = profile.at(-1)?.s ?? 0;
  const reaches: Reach[] = [];
  let from = first;
  for (const sink of sinks.filter((extent) => extent.from < last).sort((a, b) => a.from - b.from)) {
    if (sink.from > from) reaches.push(createReach(profile, from, sink.from, first, last));
    from = Math.max(from, sink.to);
  }
  if (from < last) reaches.push(createReach(profile, from, last, first, last));
  return reaches;
}

function createReach(profile: readonly ProfilePoint[], from: number, to: number, first: number, last: number): Reach {
  const inner = profile.filter((point) => point.s > from && point.s < to);
  const ends = [from, to].map((s) => ({ s, z: profileHeightAt(profile, s) ?? 0 }));
  return {
    points: [...ends.slice(0, 1), ...inner, ...ends.slice(1)],
    start: from === first ? 'joint' : 'sink',
    end: to === last ? 'rim' : 'sink',
  };
}

// ---------------------------------------------------------------- stretches

function followStretches(reach: Reach): WaterStretch[] {
  const slopes = slopesOf(reach);
  return slopes.map((stretch, i) => ({ runsTo: followDown(reach, slopes, i), ...stretch }));
}

/** Stretches between breaks of slope; pieces of the same slope are one. */
function slopesOf({ points }: Reach): (Extent & { slope: number })[] {
  const found: (Extent & { slope: number })[] = [];
  for (const [i, b] of points.entries()) {
    const a = points[i - 1];
    if (a === undefined || b.s <= a.s) continue;
    const slope = (b.z - a.z) / (b.s - a.s);
    const before = found.at(-1);
    if (before !== undefined && Math.abs(before.slope - slope) < 1e-9) before.to = b.s;
    else found.push({ from: a.s, to: b.s, slope });
  }
  return found;
}

function followDown(reach: Reach, stretches: readonly { slope: number }[], start: number): WaterStretch['runsTo'] {
  const way = -directionOf(stretches[start]?.slope ?? 0);
  if (way === 0) return 'stands';
  let i = start;
  while (-directionOf(stretches[i]?.slope ?? 0) === way) i += way;
  if (i < 0) return reach.start;
  if (i < stretches.length || reach.end === 'rim') return 'stands';
  return 'sink';
}

const directionOf = (slope: number) => (Math.abs(slope) < LEVEL_SLOPE ? 0 : Math.sign(slope));

/**
 * With a drain at one end, slopes count toward it. Between two drains either way is good, and
 * only what stands counts against it.
 */
function slopesToDrain(reach: Reach): number[] {
  return followStretches(reach).map(({ slope, runsTo }) => {
    if (directionOf(slope) === 0) return 0;
    if (reach.end === 'rim') return slope;
    return runsTo === 'stands' ? -Math.abs(slope) : Math.abs(slope);
  });
}

// ---------------------------------------------------------------- pools

/** Fills the reach until it runs over at its drains; what stays is a pool. A level stretch is one of no depth. */
function findPools(reach: Reach): WaterPool[] {
  const deep = findDeepPools(reach);
  const level = slopesOf(reach)
    .filter(({ slope }) => directionOf(slope) === 0)
    .map(({ from, to }) => ({ from, to, lowest: (from + to) / 2, depth: 0 }))
    .filter(({ lowest }) => !deep.some((pool) => pool.from <= lowest && lowest <= pool.to));
  return [...deep, ...level].sort((a, b) => a.from - b.from);
}

function findDeepPools({ points, end }: Reach): WaterPool[] {
  const fromStart = runningMax(points.map(({ z }) => z));
  const rim = end === 'rim' ? END_RIM_HEIGHT : 0;
  const fromEnd = runningMax(points.map(({ z }, i) => (i === points.length - 1 ? z + rim : z)).reverse()).reverse();
  const levels = points.map((_, i) => Math.min(fromStart[i] ?? 0, fromEnd[i] ?? 0));
  return poolsBelow(points, levels);
}

/** Neighbouring points under water belong to one pool: its level can't change where water stands. */
function poolsBelow(points: readonly ProfilePoint[], levels: readonly number[]): WaterPool[] {
  const pools: WaterPool[] = [];
  for (let i = 0; i < points.length; i += 1) {
    if (depthAt(points, levels, i) <= LEAST_DEPTH) continue;
    const first = i;
    while (depthAt(points, levels, i + 1) > LEAST_DEPTH) i += 1;
    pools.push(createPool(points, levels[first] ?? 0, first, i));
  }
  return pools;
}

const depthAt = (points: readonly ProfilePoint[], levels: readonly number[], i: number) => (levels[i] ?? 0) - (points[i]?.z ?? Infinity);

function createPool(points: readonly ProfilePoint[], level: number, first: number, last: number): WaterPool {
  const lowest = points.slice(first, last + 1).reduce((low, point) => (point.z < low.z ? point : low));
  return {
    from: shore(points[first - 1], points[first], level),
    to: shore(points[last + 1], points[last], level),
    lowest: lowest.s,
    depth: level - lowest.z,
  };
}

/** Where the water's level meets the deck between a dry point and a wet one; the wet point itself at the reach's end. */
function shore(dry: ProfilePoint | undefined, wet: ProfilePoint | undefined, level: number): number {
  if (wet === undefined) return 0;
  return dry === undefined ? wet.s : wet.s + ((dry.s - wet.s) * (level - wet.z)) / (dry.z - wet.z);
}

function runningMax(values: readonly number[]): number[] {
  let max = -Infinity;
  return values.map((value) => (max = Math.max(max, value)));
}
