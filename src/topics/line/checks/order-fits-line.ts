import { reverseHand } from '../../../plan';
import {
  askOrder,
  type Check,
  configurationWords,
  correctOrder,
  count,
  handWords,
  isOrderEmpty,
  type Measurement,
  machinePlace,
  type Repair,
} from '../../../rules';
import type { Hand, Line, Scene } from '../../../scene';
import { fitsAfter } from '../../room';

export const check: Check = {
  id: 'order-fits-line',
  order: 20,
  title: 'The order fits the line drawn',
  unit: 'word',
  relation: 'equals',
  source: { kind: 'common-practice', text: 'Configuration and hand on the order are those of the drawing that was agreed.' },
  why: 'Tables are built to the hand and the configuration on the order. A difference is found when they arrive.',
  measure: (scene) => scene.lines.flatMap((line) => measureLine(scene, line)),
};

function measureLine(scene: Scene, line: Line): Measurement[] {
  const { plan } = scene;
  if (line.configuration.kind === 'none') return [];
  if (isOrderEmpty(plan.order)) return [askForOrder(line)];
  return [measureConfiguration(line, line.configuration.kind, plan.order.configuration), ...measureHand(scene, line, plan.order.hand)];
}

function askForOrder(line: Line): Measurement {
  return {
    value: null,
    limit: null,
    ask: { input: 'the order', path: ['order'] },
    say: () => 'There is no order to compare with the drawing. Type in what the quote says.',
    ...about(line, 'order'),
  };
}

function measureConfiguration(line: Line, drawn: 'straight' | 'corner', ordered: 'straight' | 'corner' | null): Measurement {
  if (ordered === null) return askOrder(line, 'configuration', 'configuration', drawn, configurationWords(drawn));
  const isSame = ordered === drawn;
  const { toCorner, toStraight } = line.machine.sheet.conversion;
  const steps = drawn === 'corner' ? toCorner.length : toStraight.length;
  return {
    value: ordered,
    limit: drawn,
    say: () =>
      isSame
        ? `Order and drawing agree: ${configurationWords(drawn)}.`
        : `The order says ${configurationWords(ordered)}; the drawing is ${configurationWords(drawn)}. Correct the order, or convert the machine on site: ${count(steps, 'step')}.`,
    repairs: () => (isSame ? [] : [correctOrder('configuration', drawn, () => (drawn === 'corner' ? drawn : configurationWords(drawn)))]),
    ...about(line, 'configuration'),
  };
}

function measureHand(scene: Scene, line: Line, ordered: Hand | null): Measurement[] {
  const drawn = line.hand;
  if (drawn === null) return [];
  if (ordered === null) return [askOrder(line, 'hand', 'hand', drawn, handWords(drawn))];
  const isSame = ordered === drawn;
  return [
    {
      value: ordered,
      limit: drawn,
      say: () =>
        isSame
          ? `Order and drawing agree: ${handWords(drawn)}.`
          : `The order says ${handWords(ordered)}; the line runs ${handWords(drawn)}. Tables built to the order would not fit their sides.`,
      repairs: () => (isSame ? [] : [correctOrder('hand', drawn, () => handWords(drawn)), ...turnHand(scene, line, ordered)]),
      ...about(line, 'hand'),
    },
  ];
}

/** Both tables change places; only where the room takes them so. */
function turnHand(scene: Scene, line: Line, hand: Hand): Repair[] {
  const edit = reverseHand(line.machine.machine.id);
  if (!fitsAfter(scene, edit)) return [];
  return [{ id: 'reverse-hand', label: () => `Turn the line to run ${handWords(hand)}`, edit }];
}

const about = (line: Line, part: string) => ({
  part,
  subjects: [line.machine.machine.id],
  place: machinePlace(line.machine),
});
