import { pathOf } from '../../../plan';
import { askFor, type FigureReading, type FigureRule, judge, measured } from '../../../rules';
import type { PlacedTable, Scene } from '../../../scene';
import { BODIES, BODIES_SOURCE, CIVILIAN_ELBOW, CIVILIAN_ELBOW_SOURCE } from '../formulas/support/bodies';
import {
  WORK_HEIGHT_RANGES,
  WORK_HEIGHT_RANGES_SOURCE,
  WORK_HEIGHT_RULES,
  WORK_HEIGHT_SOURCES,
  type WorkHeightRule,
  workHeightBand,
} from '../formulas/support/workHeight';

export const rule: FigureRule = {
  id: 'deck-height',
  order: 870,
  title: 'Deck against the heights for light work',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.tables.flatMap((table) => deriveTable(scene, table)),
};

/** At the joint: most of the work is done beside the machine, and the deck rises from there by its fall alone. */
function deriveTable({ plan }: Scene, { table, nodes }: PlacedTable): FigureReading[] {
  const node = nodes[0];
  if (node === undefined) return [];
  if (node.z !== null) {
    const deckM = node.z / 1000;
    return [{ subjects: [table.id], value: deckM, how: HOW, note: () => noteFor(deckM) }];
  }
  const field = table.deck.kind === 'fall' ? ['jointHeight'] : ['heights', 0];
  return [askFor([table.id], 'height of the deck at the joint', pathOf(plan, 'tables', table.id, 'deck', ...field))];
}

const HOW = measured(
  'deck at the joint',
  BODIES_SOURCE,
  CIVILIAN_ELBOW_SOURCE,
  ...WORK_HEIGHT_RULES.map((name) => WORK_HEIGHT_SOURCES[name]),
  WORK_HEIGHT_RANGES_SOURCE,
);

const PEOPLE = [
  ['very short', CIVILIAN_ELBOW],
  ['short', BODIES['small-woman'].elbowM],
  ['tall', BODIES['tall-man'].elbowM],
] as const;

/** None of the rules is law, and they disagree: each says its own. */
const noteFor = (deckM: number) =>
  [
    ...(['grandjean', 'bodyspace'] as const).map(
      (name) => `${NAMES[name]}: ${PEOPLE.map(([who, elbowM]) => `${wordFor(name, elbowM, deckM)} for a ${who} person`).join(', ')}.`,
    ),
    `${NAMES['niosh-bench']}: ${wordFor('niosh-bench', 0, deckM)}.`,
    `Heights that suit nine in ten: ${(['light', 'heavy'] as const).map((task) => `${WORDS[judge(WORK_HEIGHT_RANGES[task], deckM)]} for ${task} work`).join(', ')}.`,
  ].join(' ');

const NAMES: Record<WorkHeightRule, string> = { grandjean: 'Grandjean', bodyspace: 'Bodyspace', 'niosh-bench': 'NIOSH bench' };
const WORDS = { pass: 'within', low: 'low', high: 'high' } as const;

const wordFor = (name: WorkHeightRule, elbowM: number, deckM: number) => WORDS[judge(workHeightBand(name, 'light', elbowM), deckM)];
