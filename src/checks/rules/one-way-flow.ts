import type { Line, Scene } from '../../scene';
import { findCrossings } from '../support/crossings';
import { machineName } from '../support/names';
import { areaPlace, pointPlace } from '../support/places';
import { count, sentence } from '../support/words';
import type { Check, Measurement } from '../types';

export const check: Check = {
  id: 'one-way-flow',
  title: 'Soiled and clean ware do not cross',
  unit: 'count',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'Codex Alimentarius CXC 1-1969, General Principles of Food Hygiene',
    section: '9.1.2',
    confidence: 'secondary',
  },
  why: 'Where soiled ware crosses the way of clean ware, hands, splashes and carts carry the soil over.',
  measure: (scene) => scene.lines.map((line) => measureLine(scene, line)),
};

/** The soiled way of one line against the clean ways of all lines in the room. */
function measureLine(scene: Scene, line: Line): Measurement {
  const crossings = scene.lines.flatMap((other) => findCrossings(line.ways.soiled, other.ways.clean));
  const first = crossings[0];
  const name = machineName(scene, line.machine);
  return {
    subjects: [line.machine.machine.id],
    place: first === undefined ? areaPlace(line.machine.footprint) : pointPlace(first),
    value: crossings.length,
    limit: 0,
    say: () =>
      first === undefined
        ? sentence(`the way of soiled ware to ${name} crosses no way of clean ware.`)
        : `Soiled and clean ware cross at ${count(crossings.length, 'place')}. Give drop-off and clean storage their own sides.`,
  };
}
