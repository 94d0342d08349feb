import { reverseHand } from '../../../plan';
import {
  askOrder,
  type Check,
  correctOrder,
  correctOrderId,
  createMessages,
  isOrderEmpty,
  type Measurement,
  machinePlace,
  type NoParams,
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

/** What is said of the order beside the drawing. `steps`: of the conversion on site. */
export interface OrderFitsLineMessages {
  'order-fits-line/no-order': NoParams;
  'order-fits-line/ask-order': NoParams;
  'order-fits-line/same-configuration': { configuration: Ordered };
  'order-fits-line/other-configuration': { ordered: Ordered; drawn: Ordered; steps: number };
  'order-fits-line/same-hand': { hand: Hand };
  'order-fits-line/other-hand': { ordered: Hand; drawn: Hand };
  /** What the drawing has, within a sentence, and what the order is corrected to. */
  'order-fits-line/drawn-configuration': { configuration: Ordered };
  'order-fits-line/to-configuration': { configuration: Ordered };
  'order-fits-line/drawn-hand': { hand: Hand };
  'order-fits-line/repair-reverse-hand': { hand: Hand };
}

type Ordered = 'straight' | 'corner';

const say = createMessages<OrderFitsLineMessages>();

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
    ask: { input: say('order-fits-line/ask-order'), path: ['order'] },
    message: say('order-fits-line/no-order'),
    ...about(line, 'order'),
  };
}

function measureConfiguration(line: Line, drawn: Ordered, ordered: Ordered | null): Measurement {
  if (ordered === null)
    return askOrder(line, 'configuration', 'configuration', drawn, say('order-fits-line/drawn-configuration', { configuration: drawn }));
  const isSame = ordered === drawn;
  const { toCorner, toStraight } = line.machine.sheet.conversion;
  const steps = drawn === 'corner' ? toCorner.length : toStraight.length;
  return {
    value: ordered,
    limit: drawn,
    message: isSame
      ? say('order-fits-line/same-configuration', { configuration: drawn })
      : say('order-fits-line/other-configuration', { ordered, drawn, steps }),
    ...(isSame ? {} : { repairs: { ids: [correctOrderId('configuration')], find: () => [correctConfiguration(drawn)] } }),
    ...about(line, 'configuration'),
  };
}

const correctConfiguration = (drawn: Ordered) =>
  correctOrder('configuration', drawn, say('order-fits-line/to-configuration', { configuration: drawn }));

function measureHand(scene: Scene, line: Line, ordered: Hand | null): Measurement[] {
  const drawn = line.hand;
  if (drawn === null) return [];
  const drawnHand = say('order-fits-line/drawn-hand', { hand: drawn });
  if (ordered === null) return [askOrder(line, 'hand', 'hand', drawn, drawnHand)];
  const isSame = ordered === drawn;
  return [
    {
      value: ordered,
      limit: drawn,
      message: isSame ? say('order-fits-line/same-hand', { hand: drawn }) : say('order-fits-line/other-hand', { ordered, drawn }),
      ...(isSame
        ? {}
        : {
            repairs: {
              ids: [correctOrderId('hand'), 'reverse-hand'],
              find: () => [correctOrder('hand', drawn, drawnHand), ...turnHand(scene, line, ordered)],
            },
          }),
      ...about(line, 'hand'),
    },
  ];
}

/** Both tables change places; only where the room takes them so. */
function turnHand(scene: Scene, line: Line, hand: Hand): Repair[] {
  const edit = reverseHand(line.machine.machine.id);
  if (!fitsAfter(scene, edit)) return [];
  return [{ id: 'reverse-hand', label: say('order-fits-line/repair-reverse-hand', { hand }), edit }];
}

const about = (line: Line, part: string) => ({
  part,
  subjects: [line.machine.machine.id],
  place: machinePlace(line.machine),
});
