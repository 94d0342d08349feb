import type { PlacedTable, Pool, Scene } from '../../scene';
import type { Formatter } from '../../units';
import { findMissingHeight, raiseDeck } from '../support/deck';
import { tableName } from '../support/names';
import { pathOf } from '../support/paths';
import { areaPlace, pointPlace } from '../support/places';
import { sentence } from '../support/words';
import type { Check, Measurement } from '../types';

/** ⅛ in per ft: less still drains, but a little settling turns it level. */
const LEAST_FALL = 1 / 96;

export const check: Check = {
  id: 'table-falls',
  title: 'Tables fall toward the machine',
  unit: 'ratio',
  relation: 'more-than',
  // The statute asks for a slope without a figure; the ⅛ in per ft of the watch is common practice.
  source: { kind: 'published', document: 'California Health and Safety Code', section: '§114103(e)', confidence: 'read' },
  why: 'Sinks and drainboards are sloped and drained. Water that stands on a table wets clean ware and breeds what was washed off.',
  measure: (scene) => scene.tables.filter((table) => table.machine !== null).map((table) => measureTable(scene, table)),
};

function measureTable(scene: Scene, table: PlacedTable): Measurement {
  const name = tableName(scene, table);
  const subjects = [table.table.id];
  if (table.water === null) return { subjects, ...askHeights(scene, table, name) };
  const { leastSlope, pools } = table.water;
  const worst = pools.toSorted((a, b) => b.depth - a.depth)[0];
  const raise = raiseDeck(table);
  const isGood = leastSlope >= LEAST_FALL;
  return {
    subjects,
    place: worst === undefined ? areaPlace(table.outline) : pointPlace(worst.point),
    elevation: { table: table.table.id, from: worst?.from ?? 0, to: worst?.to ?? table.length },
    value: leastSlope,
    limit: 0,
    watchLimit: LEAST_FALL,
    say: (f) =>
      sentence(isGood ? describeGood(table, name, f) : `${describeBad(table, name, worst, f)} ${raise?.label(f) ?? 'Raise the far end'}.`),
    repairs: isGood || raise === null ? [] : [raise],
  };
}

function askHeights(scene: Scene, table: PlacedTable, name: string): Omit<Measurement, 'subjects'> {
  const { path, what } = findMissingHeight(table);
  return {
    place: areaPlace(table.outline),
    value: null,
    limit: 0,
    ask: { input: `${what} of ${name}`, path: pathOf(scene.plan, 'tables', table.table.id, 'deck', ...path) },
    say: () => sentence(`the ${what} of ${name} is not known, so its fall is not checked. Measure it.`),
  };
}

function describeGood(table: PlacedTable, name: string, f: Formatter): string {
  return `${name} falls ${f.length(Math.abs(totalFall(table)))} to where it drains, nowhere less than ${f.slope(table.water?.leastSlope ?? 0)}.`;
}

function describeBad(table: PlacedTable, name: string, worst: Pool | undefined, f: Formatter): string {
  const fall = totalFall(table);
  if (worst === undefined) return `${name} falls only ${f.slope(table.water?.leastSlope ?? 0)}; ${f.slope(LEAST_FALL)} drains well.`;
  if (fall < -0.5) return `${name} falls ${f.length(-fall)} away from the machine; water stands ${placeWords(table, worst.lowest, f)}.`;
  if (fall <= 0.5) return `${name} is level; water stands ${placeWords(table, worst.lowest, f)}.`;
  return `water stands ${f.length(worst.depth)} deep on ${name} ${placeWords(table, worst.lowest, f)}.`;
}

/** Height of the far end above the joint. */
function totalFall({ nodes }: PlacedTable): number {
  const [first, last] = [nodes[0]?.z ?? 0, nodes.at(-1)?.z ?? 0];
  return last - first;
}

/** Where along a table: at the machine, at a turn, at the far end, or so far from the machine. */
function placeWords({ nodes, length }: PlacedTable, s: number, f: Formatter): string {
  const near = (at: number) => Math.abs(at - s) < 1;
  if (near(0)) return 'at the machine';
  if (near(length)) return 'at the far end';
  return nodes.some((node) => near(node.s)) ? 'at the turn' : `${f.length(s)} from the machine`;
}
