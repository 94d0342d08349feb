import type { Vent } from '../../../catalog';
import type { Order } from '../../../plan';
import { askOrder, type Check, correctOrder, holdsAtMost as isAtMost, isOrderEmpty, type Measurement, machinePlace } from '../../../rules';
import type { Line } from '../../../scene';

/** Quotes give the opening in whole inches or centimetres: a difference up to ¼ in (6.35 mm) is rounding. */
const OPENING_ROUNDING = 6.35;

export const check: Check = {
  id: 'order-fits-machine',
  order: 30,
  title: 'The order fits the machine drawn',
  unit: 'word',
  relation: 'equals',
  source: { kind: 'data-sheet', text: 'Vent type and clear door opening on the data sheet of the machine drawn.' },
  why: 'Vent type and door height cannot be changed on site. A difference means another machine.',
  measure: ({ plan, lines }) => {
    if (isOrderEmpty(plan.order)) return [];
    return lines.flatMap((line) => [measureVent(line, plan.order.vent), measureOpening(line, plan.order.clearOpening)]);
  },
};

const VENT_WORDS: Record<Vent['kind'], string> = {
  hood: 'a hood over it',
  direct: 'its own fan and run',
  recovery: 'heat recovery, no hood',
};

/** What would arrive if the machine came as ordered. */
const VENT_ARRIVES: Record<Vent['kind'], string> = {
  hood: 'The machine that comes would need a hood and its duct.',
  direct: 'The machine that comes would need a run to the open air.',
  recovery: 'The machine that comes would need cold water and room for its box.',
};

function measureVent(line: Line, ordered: Order['vent']): Measurement {
  const drawn = line.machine.sheet.vent.kind;
  if (ordered === null) return askOrder(line, 'vent', 'vent', drawn, VENT_WORDS[drawn]);
  return {
    value: ordered,
    limit: drawn,
    say: () =>
      ordered === drawn
        ? `Order and machine agree on the vapour: ${VENT_WORDS[drawn]}.`
        : `The order says ${VENT_WORDS[ordered]}; the machine drawn has ${VENT_WORDS[drawn]}. ${VENT_ARRIVES[ordered]}`,
    repairs: () => (ordered === drawn ? [] : [correctOrder('vent', drawn, () => VENT_WORDS[drawn])]),
    ...about(line, 'vent'),
  };
}

function measureOpening(line: Line, ordered: number | null): Measurement {
  const drawn = line.machine.sheet.clearOpening;
  const common = { unit: 'mm', relation: 'at-most', limit: OPENING_ROUNDING, ...about(line, 'clear-opening') } as const;
  if (ordered === null) {
    const say: Measurement['say'] = (f) => `The order does not give the clear door opening; the machine drawn has ${f.length(drawn)}.`;
    return { ...askOrder(line, 'clear-opening', 'clearOpening', drawn, ''), ...common, say };
  }
  const difference = Math.abs(ordered - drawn);
  const isSame = isAtMost(difference, OPENING_ROUNDING);
  const means = ordered < drawn ? 'Tall ware would not pass the machine that comes.' : 'The machine that comes stands taller than drawn.';
  return {
    value: difference,
    say: (f) =>
      isSame
        ? `Order and machine agree: ${f.length(drawn)} of clear door opening.`
        : `The order gives ${f.length(ordered)} of clear door opening; the machine drawn has ${f.length(drawn)}. ${means}`,
    repairs: () => (isSame ? [] : [correctOrder('clearOpening', drawn, (f) => `${f.length(drawn)} of clear door opening`)]),
    ...common,
  };
}

const about = (line: Line, part: string) => ({
  part,
  subjects: [line.machine.machine.id],
  place: machinePlace(line.machine),
});
