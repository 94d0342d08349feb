import { type Check, createMessages, fittingPlace, type Measurement, type NoParams, tablePlace } from '../../../rules';
import type { Line, PlacedTable } from '../../../scene';
import { findPlainSink, hangSpray, isPreRinse, type LaidSink, offerToMovePreRinse } from './support/preRinse';

export const check: Check = {
  id: 'pre-rinse-side',
  order: 110,
  title: 'The pre-rinse sink is on the load side',
  unit: 'word',
  relation: 'equals',
  source: { kind: 'common-practice', text: 'A sink with a spray hose belongs on the load side, before the machine.' },
  why: 'Soil is rinsed off before the rack goes in. A spray on the clean side wets and soils what has been washed.',
  measure: ({ lines }) => lines.flatMap(measureLine),
};

export interface PreRinseSideMessages {
  'pre-rinse-side/on-clean-table': NoParams;
  'pre-rinse-side/none': NoParams;
  'pre-rinse-side/on-soiled-table': NoParams;
}

const say = createMessages<PreRinseSideMessages>();

function measureLine({ soiled, clean }: Line): Measurement[] {
  if (soiled === null) return [];
  const wrong = clean?.fittings.find(isPreRinse);
  if (clean !== null && wrong !== undefined) return [reportWrong(soiled, clean, wrong)];
  const right = soiled.fittings.find(isPreRinse);
  return [right === undefined ? reportNone(soiled) : reportRight(soiled, right)];
}

function reportWrong(soiled: PlacedTable, clean: PlacedTable, sink: LaidSink): Measurement {
  return {
    subjects: [sink.fitting.id, clean.table.id],
    place: fittingPlace(clean, sink.fitting),
    value: 'clean',
    limit: 'soiled',
    message: say('pre-rinse-side/on-clean-table'),
    repairs: offerToMovePreRinse(soiled, clean, sink),
  };
}

function reportNone(soiled: PlacedTable): Measurement {
  const plain = findPlainSink(soiled);
  return {
    subjects: [soiled.table.id],
    place: tablePlace(soiled),
    value: 'none',
    limit: 'soiled',
    severity: 'watch',
    message: say('pre-rinse-side/none'),
    ...(plain === undefined ? {} : { repairs: { ids: ['hang-spray'], find: () => [hangSpray(soiled, plain)] } }),
  };
}

const reportRight = (soiled: PlacedTable, sink: LaidSink): Measurement => ({
  subjects: [sink.fitting.id, soiled.table.id],
  place: fittingPlace(soiled, sink.fitting),
  value: 'soiled',
  limit: 'soiled',
  message: say('pre-rinse-side/on-soiled-table'),
});
