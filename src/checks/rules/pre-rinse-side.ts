import type { Fitting } from '../../plan';
import type { Line, PlacedFitting, PlacedTable, Scene } from '../../scene';
import { editTable } from '../support/drafts';
import { areaPlace } from '../support/places';
import { findFreeStretch } from '../support/stretches';
import type { Check, Measurement, Repair } from '../types';

export const check: Check = {
  id: 'pre-rinse-side',
  title: 'The pre-rinse sink is on the load side',
  unit: 'word',
  relation: 'equals',
  source: { kind: 'common-practice', text: 'A sink with a spray hose belongs on the load side, before the machine.' },
  why: 'Soil is rinsed off before the rack goes in. A spray on the clean side wets and soils what has been washed.',
  measure: (scene) => scene.lines.flatMap((line) => measureLine(scene, line)),
};

function measureLine(_scene: Scene, line: Line): Measurement[] {
  const { soiled, clean } = line;
  if (soiled === null) return [];
  const wrong = clean === null ? undefined : clean.fittings.find(isPreRinse);
  if (clean !== null && wrong !== undefined) return [reportWrong(soiled, clean, wrong)];
  const right = soiled.fittings.find(isPreRinse);
  return [right === undefined ? reportNone(soiled) : reportRight(soiled, right)];
}

const isPreRinse = ({ fitting }: PlacedFitting) => fitting.kind === 'sink' && fitting.spray;

function reportWrong(soiled: PlacedTable, clean: PlacedTable, sink: PlacedFitting): Measurement {
  return {
    subjects: [sink.fitting.id, clean.table.id],
    place: areaPlace(sink.polygon),
    value: 'clean',
    limit: 'soiled',
    say: () => 'The sink with the spray is on the clean table; it would wet and soil clean ware. Move it to the soiled table.',
    repairs: moveSink(soiled, clean, sink),
  };
}

const reportNone = (soiled: PlacedTable): Measurement => ({
  subjects: [soiled.table.id],
  place: areaPlace(soiled.outline),
  value: 'none',
  limit: 'soiled',
  severity: 'watch',
  say: () => 'The line has no pre-rinse. Put a sink with a spray hose on the soiled table.',
});

const reportRight = (soiled: PlacedTable, sink: PlacedFitting): Measurement => ({
  subjects: [sink.fitting.id, soiled.table.id],
  place: areaPlace(sink.polygon),
  value: 'soiled',
  limit: 'soiled',
  say: () => 'The pre-rinse sink is on the soiled table.',
});

/** To the first free stretch of the soiled table beyond its landing; none where it does not fit. */
function moveSink(soiled: PlacedTable, clean: PlacedTable, { fitting }: PlacedFitting): Repair[] {
  const at = findFreeStretch(soiled, fitting.length);
  if (at === null) return [];
  return [
    {
      id: 'move-pre-rinse',
      label: (f) => `Move the sink to the soiled table, ${f.length(at)} from the machine`,
      edit: (draft) => {
        const moved: Fitting = { ...fitting, at };
        editTable(draft, clean.table.id, (table) => void (table.fittings = table.fittings.filter(({ id }) => id !== fitting.id)));
        editTable(draft, soiled.table.id, (table) => void table.fittings.push(moved));
      },
    },
  ];
}
