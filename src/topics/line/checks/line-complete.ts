import { type Check, createMessages, type Measurement, machinePlace, type Name, nameLine } from '../../../rules';
import type { Line, Scene, Station } from '../../../scene';

/** Stations that a line needs beside those that checks of their own look after. */
const NEEDED = ['drop-off', 'scrap', 'storage'] as const;
type Needed = (typeof NEEDED)[number];

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

export interface LineCompleteMessages {
  'line-complete/complete': { line: Name };
  'line-complete/lacks': { line: Name; missing: Needed[] };
}

const say = createMessages<LineCompleteMessages>();

function measureLine(scene: Scene, line: Line): Measurement {
  const missing = line.stations.filter(({ subject }) => subject === null).flatMap(listNeeded);
  const name = nameLine(scene, line.machine);
  return {
    subjects: [line.machine.machine.id],
    place: machinePlace(line.machine),
    value: missing.length,
    limit: 0,
    severity: 'watch',
    message: missing.length === 0 ? say('line-complete/complete', { line: name }) : say('line-complete/lacks', { line: name, missing }),
  };
}

const listNeeded = ({ kind }: Pick<Station, 'kind'>): Needed[] => NEEDED.filter((needed) => needed === kind);
