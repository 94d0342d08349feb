import { type Check, lineName, list, type Measurement, machinePlace, sentence } from '../../../rules';
import type { Line, Scene, Station } from '../../../scene';

/** Stations that a line needs beside those that checks of their own look after. */
const NEEDED = { 'drop-off': 'drop-off', scrap: 'scrap opening', storage: 'clean storage' } as const;

export const check: Check = {
  id: 'line-complete',
  order: 100,
  title: 'The line begins and ends',
  unit: 'count',
  relation: 'at-most',
  source: { kind: 'common-practice', text: 'A line runs from drop-off and scrapping to a place where clean ware is stored.' },
  why: 'Without a place to set down soiled ware, to scrape it, or to put clean ware away, racks pile up on the tables. A guide for military dining halls of 2003, later cancelled (UFC 4-722-01, 5-10.1), has the room near the exit of the dining room and easily reached from serving; where it adjoins the dining room, noise is a major concern.',
  measure: (scene) => scene.lines.filter(({ configuration }) => configuration.kind !== 'none').map((line) => measureLine(scene, line)),
};

function measureLine(scene: Scene, line: Line): Measurement {
  const missing = line.stations.filter((station) => station.subject === null).flatMap(nameStation);
  const name = lineName(scene, line.machine);
  return {
    subjects: [line.machine.machine.id],
    place: machinePlace(line.machine),
    value: missing.length,
    limit: 0,
    severity: 'watch',
    say: () =>
      missing.length === 0
        ? sentence(`${name} has its drop-off, scrap opening and clean storage.`)
        : sentence(
            `${name} has no ${list(missing.map((what, i) => (i === 0 ? what : `no ${what}`)))}. Give ${missing.length === 1 ? 'it' : 'each'} a place.`,
          ),
  };
}

const nameStation = ({ kind }: Pick<Station, 'kind'>): string[] => (kind in NEEDED ? [NEEDED[kind as keyof typeof NEEDED]] : []);
