import type { Vent } from '../../../catalog';
import type { OrderField, OrderMessages } from '../../../rules';
import type { OrderFitsLineMessages } from '../../../topics/line/checks/order-fits-line';
import type { OrderFitsMachineMessages } from '../../../topics/line/checks/order-fits-machine';
import type { Wording } from '../../wording';
import { configurationWords, count, handWords } from '../words';

/** The words of the order, and of how it agrees with line and machine. */
export const orders: Wording<OrderMessages & OrderFitsLineMessages & OrderFitsMachineMessages> = {
  'order/ask': ({ field }) => `${FIELDS[field]} on the order`,
  'order/silent': ({ field, drawn }, _f, tell) =>
    `The order does not give the ${FIELDS[field]}; the drawing has ${typeof drawn === 'string' ? drawn : tell(drawn)}. Have it written into the quote.`,
  'repair/correct-order': ({ to }, _f, tell) => `Correct the order to ${tell(to)}`,

  'order-fits-line/no-order': () => 'There is no order to compare with the drawing. Type in what the quote says.',
  'order-fits-line/ask-order': () => 'the order',
  'order-fits-line/same-configuration': ({ configuration }) => `Order and drawing agree: ${configurationWords(configuration)}.`,
  'order-fits-line/other-configuration': ({ ordered, drawn, steps }) =>
    `The order says ${configurationWords(ordered)}; the drawing is ${configurationWords(drawn)}. Correct the order, or convert the machine on site: ${count(steps, 'step')}.`,
  'order-fits-line/same-hand': ({ hand }) => `Order and drawing agree: ${handWords(hand)}.`,
  'order-fits-line/other-hand': ({ ordered, drawn }) =>
    `The order says ${handWords(ordered)}; the line runs ${handWords(drawn)}. Tables built to the order would not fit their sides.`,
  'order-fits-line/drawn-configuration': ({ configuration }) => configurationWords(configuration),
  'order-fits-line/to-configuration': ({ configuration }) => (configuration === 'corner' ? 'corner' : configurationWords(configuration)),
  'order-fits-line/drawn-hand': ({ hand }) => handWords(hand),
  'order-fits-line/repair-reverse-hand': ({ hand }) => `Turn the line to run ${handWords(hand)}`,

  'order-fits-machine/same-vent': ({ vent }) => `Order and machine agree on the vapour: ${VENTS[vent]}.`,
  'order-fits-machine/other-vent': ({ ordered, drawn }) =>
    `The order says ${VENTS[ordered]}; the machine drawn has ${VENTS[drawn]}. ${WOULD_NEED[ordered]}`,
  'order-fits-machine/opening-not-given': ({ drawn }, f) =>
    `The order does not give the clear door opening; the machine drawn has ${f.length(drawn)}.`,
  'order-fits-machine/same-opening': ({ opening }, f) => `Order and machine agree: ${f.length(opening)} of clear door opening.`,
  'order-fits-machine/other-opening': ({ ordered, drawn }, f) =>
    `The order gives ${f.length(ordered)} of clear door opening; the machine drawn has ${f.length(drawn)}. ${ordered < drawn ? TOO_LOW : TOO_TALL}`,
  'order-fits-machine/drawn-vent': ({ vent }) => VENTS[vent],
  'order-fits-machine/drawn-opening': ({ opening }, f) => `${f.length(opening)} of clear door opening`,
};

const FIELDS: Readonly<Record<OrderField, string>> = {
  configuration: 'configuration',
  hand: 'hand',
  voltage: 'voltage',
  phase: 'phase',
  vent: 'vent type',
  clearOpening: 'clear door opening',
};

const VENTS: Readonly<Record<Vent['kind'], string>> = {
  hood: 'a hood over it',
  direct: 'its own fan and run',
  recovery: 'heat recovery, no hood',
};

/** What would arrive if the machine came as ordered. */
const WOULD_NEED: Readonly<Record<Vent['kind'], string>> = {
  hood: 'The machine that comes would need a hood and its duct.',
  direct: 'The machine that comes would need a run to the open air.',
  recovery: 'The machine that comes would need cold water and room for its box.',
};

const TOO_LOW = 'Tall ware would not pass the machine that comes.';
const TOO_TALL = 'The machine that comes stands taller than drawn.';
