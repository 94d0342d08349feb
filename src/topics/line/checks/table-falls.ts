import { pathOf } from '../../../plan';
import {
  type Check,
  createMessages,
  holdsAtLeast as isAtLeast,
  type Measurement,
  type Message,
  type Name,
  nameTable,
  spotPlace,
  tablePlace,
} from '../../../rules';
import type { PlacedTable, Pool, Scene } from '../../../scene';
import { type DeckNode, findMissingHeight, type Lift, listLifts, raiseDeck } from './support/deck';

/** ⅛ in per ft: less still drains, but a little settling turns it level. */
const LEAST_FALL = 1 / 96;

/** Where sinks take the whole deck there is no slope to judge: it counts as the steepest that a plan can hold. */
const STEEPEST = 0.5;

export const check: Check = {
  id: 'table-falls',
  order: 80,
  title: 'Tables fall toward the machine',
  unit: 'ratio',
  relation: 'more-than',
  // The statute asks for a slope without a figure; the ⅛ in per ft of the watch is common practice.
  source: { kind: 'published', document: 'California Health and Safety Code', section: '§114103(e)', confidence: 'read' },
  why: 'Sinks and drainboards are sloped and drained. Water that stands on a table wets clean ware and breeds what was washed off. By common practice both tables fall to the machine; one institutional standard wants the soiled one drained by a scupper of its own before it.',
  measure: (scene) => scene.tables.filter((table) => table.machine !== null).map((table) => measureTable(scene, table)),
};

/**
 * What is said of how a table falls, and what it wants to be raised by: none where a height is missing or nothing would help.
 * Slopes are height per length.
 */
export interface TableFallsMessages {
  'table-falls/falls': { table: Name; rise: number; leastSlope: number };
  'table-falls/drains-into-sinks': { table: Name; leastSlope: number };
  'table-falls/too-flat': { table: Name; leastSlope: number; wanted: number; lifts: Lift[] };
  'table-falls/falls-away': { table: Name; fall: number; at: Spot; lifts: Lift[] };
  'table-falls/level': { table: Name; lifts: Lift[] };
  'table-falls/water-stands': { table: Name; depth: number; at: Spot; lifts: Lift[] };
  'table-falls/not-known': { ask: Message };
  'table-falls/ask-fall': { table: Name };
  'table-falls/ask-height': { table: Name; at: DeckNode };
}

/** Where along a table: at one of its marked places, or so far from the machine. */
export type Spot = 'machine' | 'turn' | 'far-end' | { fromMachine: number };

const say = createMessages<TableFallsMessages>();

function measureTable(scene: Scene, table: PlacedTable): Measurement {
  const name = nameTable(scene, table);
  const subjects = [table.table.id];
  if (table.water === null) return { subjects, ...askHeights(scene, table, name) };
  const { pools } = table.water;
  const leastSlope = Math.min(table.water.leastSlope, STEEPEST);
  const worst = pools.toSorted((a, b) => b.depth - a.depth)[0];
  const isGood = isAtLeast(leastSlope, LEAST_FALL);
  return {
    subjects,
    place: worst === undefined ? tablePlace(table) : spotPlace(table, worst.lowest),
    elevation: { table: table.table.id, from: worst?.from ?? 0, to: worst?.to ?? table.length },
    value: leastSlope,
    limit: 0,
    watchLimit: LEAST_FALL,
    message: isGood ? describeGood(table, name, leastSlope) : describeBad(table, name, worst),
    ...(isGood ? {} : { repairs: { ids: ['raise-deck'], find: () => raiseDeck(table) } }),
  };
}

function askHeights(scene: Scene, table: PlacedTable, name: Name): Omit<Measurement, 'subjects'> {
  const { path, missing } = findMissingHeight(table);
  const input =
    missing === 'fall' ? say('table-falls/ask-fall', { table: name }) : say('table-falls/ask-height', { table: name, at: missing });
  return {
    place: tablePlace(table),
    value: null,
    limit: 0,
    ask: { input, path: pathOf(scene.plan, 'tables', table.table.id, 'deck', ...path) },
    message: say('table-falls/not-known', { ask: input }),
  };
}

function describeGood(table: PlacedTable, name: Name, leastSlope: number): Message {
  const rise = totalRise(table);
  return rise > 0.5
    ? say('table-falls/falls', { table: name, rise, leastSlope })
    : say('table-falls/drains-into-sinks', { table: name, leastSlope });
}

function describeBad(table: PlacedTable, name: Name, worst: Pool | undefined): Message {
  const rise = totalRise(table);
  const common = { table: name, lifts: listLifts(table) };
  if (worst === undefined) return say('table-falls/too-flat', { ...common, leastSlope: table.water?.leastSlope ?? 0, wanted: LEAST_FALL });
  const at = spotOf(table, worst.lowest);
  if (rise < -0.5) return say('table-falls/falls-away', { ...common, fall: -rise, at });
  if (worst.to - worst.from > table.length - 1) return say('table-falls/level', common);
  return say('table-falls/water-stands', { ...common, depth: worst.depth, at });
}

/** Height of the far end above the joint. */
function totalRise({ nodes }: PlacedTable): number {
  const [first, last] = [nodes[0]?.z ?? 0, nodes.at(-1)?.z ?? 0];
  return last - first;
}

function spotOf({ nodes, length }: PlacedTable, s: number): Spot {
  const near = (at: number) => Math.abs(at - s) < 1;
  if (near(0)) return 'machine';
  if (near(length)) return 'far-end';
  return nodes.some((node) => near(node.s)) ? 'turn' : { fromMachine: s };
}
