import { compute, createMessages, type FigureReading, type FigureRule, type Message, type NoParams, withSources } from '../../../rules';
import type { PlacedMachine } from '../../../scene';
import { airGapWallRule, supplyAirGap, supplyAirGapRecord } from '../../drain';

export const rule: FigureRule = {
  id: 'supply-air-gap',
  order: 260,
  title: 'Least air gap of the machine’s water',
  group: 'water',
  unit: 'm',
  derive: (scene) => scene.machines.flatMap(deriveMachine),
};

/** Which rule governs, and where the gap is. */
export interface SupplyAirGapMessages {
  'supply-air-gap/by-table': NoParams;
  'supply-air-gap/by-code': NoParams;
  'supply-air-gap/where': NoParams;
}

const message = createMessages<SupplyAirGapMessages>();

/** A data sheet that gives its water connection no size says nothing of the gap. Of several connections each bears its name. */
function deriveMachine({ machine, sheet }: PlacedMachine): FigureReading[] {
  const inlets = sheet.connections.filter(({ kind, size }) => kind.endsWith('-water') && size > 0);
  return inlets.map(({ id, size }) => {
    const answer = compute(supplyAirGapRecord, supplyAirGap, { openingM: size / 1000, rule: 'stricter' });
    return {
      subjects: [machine.id],
      notes: [whichGoverns(size / 1000), message('supply-air-gap/where')],
      ...(inlets.length > 1 ? { part: id } : {}),
      ...answer,
      how: withSources(answer.how, ...airGapWallRule.source),
    };
  });
}

/** Which of the two rules asks more for an opening. */
function whichGoverns(openingM: number): Message {
  const [code, table] = (['food-code', 'table'] as const).map((rule) => supplyAirGap({ openingM, rule }));
  const isTableStricter = code?.ok && table?.ok && table.value > code.value + ROUNDING;
  return message(isTableStricter ? 'supply-air-gap/by-table' : 'supply-air-gap/by-code');
}

const ROUNDING = 1e-9;
