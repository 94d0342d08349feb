import { compute, type FigureReading, type FigureRule, withSources } from '../../../rules';
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

/** A data sheet that gives its water connection no size says nothing of the gap. Of several connections each bears its name. */
function deriveMachine({ machine, sheet }: PlacedMachine): FigureReading[] {
  const inlets = sheet.connections.filter(({ kind, size }) => kind.endsWith('-water') && size > 0);
  return inlets.map(({ id, size }) => {
    const answer = compute(supplyAirGapRecord, supplyAirGap, { openingM: size / 1000, rule: 'stricter' });
    return {
      subjects: [machine.id],
      note: `${whichGoverns(size / 1000)} ${NOTE}`,
      ...(inlets.length > 1 ? { part: id } : {}),
      ...answer,
      how: withSources(answer.how, ...airGapWallRule.source),
    };
  });
}

/** Which of the two rules asks more for an opening. */
function whichGoverns(openingM: number): string {
  const [code, table] = (['food-code', 'table'] as const).map((rule) => supplyAirGap({ openingM, rule }));
  const isTableStricter = code?.ok && table?.ok && table.value > code.value + ROUNDING;
  return isTableStricter ? 'The city table governs: it asks more than twice the opening.' : 'Twice the opening, an inch at least, governs.';
}

const ROUNDING = 1e-9;

const NOTE =
  'From the water’s outlet down to the rim over which the machine would flood, where nothing else keeps its water apart. The outlet is taken to be as wide as the machine’s connection; an outlet that is narrower needs less. Within three openings of a wall, or four of a corner, the gap must be larger: see the code itself.';
