import type { Point } from '../../geometry';
import type { Line, Scene, StationKind } from '../../scene';
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
  source: { kind: 'published', document: 'Codex Alimentarius CXC 1-1969, General Principles of Food Hygiene', section: '9.1.2', confidence: 'secondary' },
  why: 'Where soiled ware crosses the way of clean ware, hands, splashes and carts carry the soil over.',
  measure: (scene) => scene.lines.map((line) => measureLine(scene, line)),
};

/** A place where soiled and clean ware meet: their ways cross there, or both stand on the same thing. */
interface Meeting {
  point: Point;
  with: string;
}

/** The soiled way of one line against the clean ways of all lines in the room. */
function measureLine(scene: Scene, line: Line): Measurement {
  const meetings = [...scene.lines.flatMap((other) => findMeetings(line, other)), ...findShared(line)];
  const first = meetings[0];
  const name = machineName(scene, line.machine);
  return {
    subjects: [line.machine.machine.id],
    place: first === undefined ? areaPlace(line.machine.footprint) : pointPlace(first.point),
    value: meetings.length,
    limit: 0,
    say: () =>
      first === undefined
        ? sentence(`the way of soiled ware to ${name} crosses no way of clean ware.`)
        : sentence(`${describe(meetings)} Put the drop-off and the clean storage on their own sides.`),
  };
}

const findMeetings = (line: Line, other: Line): Meeting[] =>
  findCrossings(line.ways.soiled, other.ways.clean).map((point) => ({ point, with: 'way' }));

/** Drop-off and clean storage that are the same thing. */
function findShared(line: Line): Meeting[] {
  const find = (kind: StationKind) => line.stations.find((station) => station.kind === kind);
  const [from, to] = [find('drop-off'), find('storage')];
  if (from?.subject == null || from.subject !== to?.subject) return [];
  return [{ point: from.place ?? line.machine.sides.front.centre, with: 'thing' }];
}

function describe(meetings: readonly Meeting[]): string {
  const crossings = meetings.filter((meeting) => meeting.with === 'way').length;
  if (crossings === 0) return 'soiled ware is dropped off where clean ware is stored.';
  return `soiled and clean ware cross at ${count(crossings, 'place')}.`;
}
