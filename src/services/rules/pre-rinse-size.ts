import { areaPlace, type Check, fittingName, type Measurement, sentence } from '../../checks';
import { PRE_RINSE_DEPTH, PRE_RINSE_SIZE, SCRAP_WIDTH } from '../../engineering';
import type { PlacedFitting, PlacedTable, Scene } from '../../scene';
import { lengthOf } from '../support/limitOf';

export const check: Check = {
  id: 'pre-rinse-size',
  title: 'A rack finds room at the pre-rinse, and scraps in the trough',
  group: 'sanitary',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'UFGS 11400A',
    section: '2.4.2.6: sink of 18 × 18 in, 188 mm deep; scrap trough 8 in (200 mm) wide',
    confidence: 'read',
  },
  why: 'A rack that is sprayed over a bowl smaller than itself wets the table, the floor and the operator. It is a guide for military kitchens and good practice elsewhere.',
  measure: ({ tables }: Scene) => tables.flatMap((table) => table.fittings.flatMap((fitting) => measureFitting(table, fitting))),
};

function measureFitting(table: PlacedTable, { fitting, polygon }: PlacedFitting): Measurement[] {
  const held = (part: string, value: number, limit: number, way: string): Measurement => ({
    part,
    subjects: [fitting.id, table.table.id],
    place: areaPlace(polygon),
    value,
    limit,
    severity: 'watch',
    say: (f) =>
      sentence(
        value >= limit - 1e-6
          ? `${fittingName(fitting)} is ${f.length(value)} ${way}; ${f.length(limit)} is wanted.`
          : `${fittingName(fitting)} is ${f.length(value)} ${way}, ${f.length(limit - value)} less than is wanted. Take a larger one.`,
      ),
  });
  if (fitting.kind === 'sink' && fitting.spray)
    return [
      held('size', Math.min(fitting.length, fitting.width), lengthOf(PRE_RINSE_SIZE), 'on its shorter side'),
      held('depth', fitting.bowlDepth, lengthOf(PRE_RINSE_DEPTH), 'deep'),
    ];
  return fitting.kind === 'scrap'
    ? [held('scrap', Math.min(fitting.length, fitting.width), lengthOf(SCRAP_WIDTH), 'on its shorter side')]
    : [];
}
