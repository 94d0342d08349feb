import { pathOf } from '../../../plan';
import {
  askFor,
  createMessages,
  type FigureReading,
  type FigureRule,
  type Judgement,
  judge,
  type Message,
  measured,
  type NoParams,
} from '../../../rules';
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

/** How the deck stands to the heights that each rule has for light work. */
export interface DeckHeightMessages {
  /** Of a very short, a short and a tall person. */
  'deck-height/by-elbow': { rule: Exclude<WorkHeightRule, 'niosh-bench'>; veryShort: Judgement; short: Judgement; tall: Judgement };
  'deck-height/bench': { is: Judgement };
  'deck-height/nine-in-ten': { light: Judgement; heavy: Judgement };
  'deck-height/ask-height': NoParams;
}

const say = createMessages<DeckHeightMessages>();

/** At the joint: most of the work is done beside the machine, and the deck rises from there by its fall alone. */
function deriveTable({ plan }: Scene, { table, nodes }: PlacedTable): FigureReading[] {
  const node = nodes[0];
  if (node === undefined) return [];
  if (node.z !== null) {
    const deckM = node.z / 1000;
    return [{ subjects: [table.id], value: deckM, how: HOW, notes: notesFor(deckM) }];
  }
  const field = table.deck.kind === 'fall' ? ['jointHeight'] : ['heights', 0];
  return [askFor([table.id], say('deck-height/ask-height'), pathOf(plan, 'tables', table.id, 'deck', ...field))];
}

const HOW = measured(
  'deck at the joint',
  BODIES_SOURCE,
  CIVILIAN_ELBOW_SOURCE,
  ...WORK_HEIGHT_RULES.map((name) => WORK_HEIGHT_SOURCES[name]),
  WORK_HEIGHT_RANGES_SOURCE,
);

/** None of the rules is law, and they disagree: each says its own. */
const notesFor = (deckM: number): Message[] => [
  say('deck-height/by-elbow', { rule: 'grandjean', ...judgeElbows('grandjean', deckM) }),
  say('deck-height/by-elbow', { rule: 'bodyspace', ...judgeElbows('bodyspace', deckM) }),
  say('deck-height/bench', { is: judgeDeck('niosh-bench', 0, deckM) }),
  say('deck-height/nine-in-ten', { light: judge(WORK_HEIGHT_RANGES.light, deckM), heavy: judge(WORK_HEIGHT_RANGES.heavy, deckM) }),
];

const judgeElbows = (name: WorkHeightRule, deckM: number) => ({
  veryShort: judgeDeck(name, CIVILIAN_ELBOW, deckM),
  short: judgeDeck(name, BODIES['small-woman'].elbowM, deckM),
  tall: judgeDeck(name, BODIES['tall-man'].elbowM, deckM),
});

const judgeDeck = (name: WorkHeightRule, elbowM: number, deckM: number) => judge(workHeightBand(name, 'light', elbowM), deckM);
