import type { DataSheet } from '../../catalog';
import type { Hood, Run } from '../planSchema';
import type { LineBox } from './lineRoom';
import { createLineDuct } from './lineSite';

/** How far the lip goes beyond the doors: twice the 6 in of IMC 507.4.1 (2015-2021), as vapour escapes when they rise. */
const OVERHANG = 305;
/** Lip clear of heads (6 ft 8 in, 29 CFR 1910.36(g)(1)), at most 4 ft above the table (IMC 507), and above the open doors. */
const LIP_ABOVE_DOORS = 50;
const LIP_ABOVE_DECK = 1200;
const FROM_WALL = 20;

/** Airflow of the hood, m³/s: a little more than the strictest of the codes and manuals asks for the largest of these hoods, hung somewhat high. */
export const LINE_HOOD_EXHAUST = 1.4;

/** A hood over the machine, in its frame: out over every door, back to the walls where the sides are closed. */
export function createLineHood(box: LineBox, sheet: DataSheet): Hood {
  const left = Math.max(-OVERHANG, box.left + FROM_WALL);
  const right = Math.min(sheet.width + OVERHANG, box.right - FROM_WALL);
  const back = Math.max(-OVERHANG, box.back + FROM_WALL);
  const front = sheet.depth + OVERHANG;
  return {
    id: 'hood',
    x: (left + right) / 2,
    y: (back + front) / 2,
    rotationDeg: 0,
    width: right - left,
    depth: front - back,
    lipHeight: Math.max(sheet.deckHeight + LIP_ABOVE_DECK, sheet.doorLiftHeight + LIP_ABOVE_DOORS),
    height: 450,
    exhaust: LINE_HOOD_EXHAUST,
    cavityAir: 0,
  };
}

/** How far a run goes out beyond the room's side of the wall: a wall of 9 in, and 30 in before it (IMC 506.4.2). */
const RUN_OUTSIDE = 1000;

/** A run from the collar up, and out through the wall behind the machine, rising ¼ in a foot, with its fan above the collar. */
export function createLineRun(machine: string, box: LineBox, sheet: DataSheet): Run {
  const collar = sheet.connections.find((connection) => connection.kind === 'collar');
  const x = collar?.x ?? sheet.width / 2;
  const [y, outside, z] = [collar?.y ?? 0, box.back - RUN_OUTSIDE, 2600];
  return {
    id: 'run',
    machine,
    points: [
      { x, y, z },
      { x, y: outside, z: z + Math.ceil((y - outside) / 48) },
    ],
    diameter: sheet.vent.kind === 'direct' ? sheet.vent.ductDiameter : 200,
    fan: { at: 350, attitude: 'upright', drainHole: null, cordWay: 1800 },
    outlet: 'wall',
    duct: createLineDuct(sheet.vent.kind === 'direct' ? sheet.vent.airflow : null),
  };
}
