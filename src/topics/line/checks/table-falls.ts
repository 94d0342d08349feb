import { pathOf } from '../../../plan';
import { type Check, holdsAtLeast as isAtLeast, type Measurement, sentence, spotPlace, tableName, tablePlace } from '../../../rules';
import type { PlacedTable, Pool, Scene } from '../../../scene';
import type { Formatter } from '../../../units';
import { findMissingHeight, raiseDeck } from './support/deck';

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

function measureTable(scene: Scene, table: PlacedTable): Measurement {
  const name = tableName(scene, table);
  const subjects = [table.table.id];
  if (table.water === null) return { subjects, ...askHeights(scene, table, name) };
  const { pools } = table.water;
  const leastSlope = Math.min(table.water.leastSlope, STEEPEST);
  const worst = pools.toSorted((a, b) => b.depth - a.depth)[0];
  const isGood = isAtLeast(leastSlope, LEAST_FALL);
  const raise = isGood ? null : raiseDeck(table);
  return {
    subjects,
    place: worst === undefined ? tablePlace(table) : spotPlace(table, worst.lowest),
    elevation: { table: table.table.id, from: worst?.from ?? 0, to: worst?.to ?? table.length },
    value: leastSlope,
    limit: 0,
    watchLimit: LEAST_FALL,
    say: (f) =>
      sentence(
        isGood
          ? describeGood(table, name, leastSlope, f)
          : `${describeBad(table, name, worst, f)} ${typeof raise?.label === 'function' ? raise.label(f) : 'Raise the far end'}.`,
      ),
    repairs: () => (raise === null ? [] : [raise]),
  };
}

function askHeights(scene: Scene, table: PlacedTable, name: string): Omit<Measurement, 'subjects'> {
  const { path, what } = findMissingHeight(table);
  return {
    place: tablePlace(table),
    value: null,
    limit: 0,
    ask: { input: `${what} of ${name}`, path: pathOf(scene.plan, 'tables', table.table.id, 'deck', ...path) },
    say: () => sentence(`the ${what} of ${name} is not known, so its fall is not checked. Measure it.`),
  };
}

function describeGood(table: PlacedTable, name: string, leastSlope: number, f: Formatter): string {
  const rise = totalRise(table);
  const how = rise > 0.5 ? `falls ${f.length(rise)} toward the machine` : 'drains into its sinks';
  return `${name} ${how}, nowhere less than ${f.slope(leastSlope)}.`;
}

function describeBad(table: PlacedTable, name: string, worst: Pool | undefined, f: Formatter): string {
  const fall = totalRise(table);
  if (worst === undefined) return `${name} falls only ${f.slope(table.water?.leastSlope ?? 0)}; ${f.slope(LEAST_FALL)} drains well.`;
  if (fall < -0.5) return `${name} falls ${f.length(-fall)} away from the machine; water stands ${placeWords(table, worst.lowest, f)}.`;
  if (worst.to - worst.from > table.length - 1) return `${name} is level; water stands on it.`;
  const deep = worst.depth < 0.5 ? '' : ` ${f.length(worst.depth)} deep`;
  return `water stands${deep} on ${name} ${placeWords(table, worst.lowest, f)}.`;
}

/** Height of the far end above the joint. */
function totalRise({ nodes }: PlacedTable): number {
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
