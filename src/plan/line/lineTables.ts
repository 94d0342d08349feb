import type { DataSheet } from '../../catalog';
import { FLUSH } from '../jointFrame';
import type { Fitting, Table } from '../planSchema';
import { UNKNOWN_TROUGH } from '../siteSchema';
import type { LineSide } from './lineSides';
import { LINE_MAKE } from './lineSite';

/** Table 30 in deep, its rack centre line 10 ¾ in from the operator's edge; backsplash 10 in (UFGS 11400N 2.4.2.4). */
export const TABLE_DEPTH = 762;
export const RACK_LINE_FROM_EDGE = 273;
const BACKSPLASH = 254;

/** ¼ in per foot. */
const FALL = 1 / 48;

/** Three racks of 20 in and the width of a hand. */
const LANDING = 1530;
const SINK = 510;
const SCRAP = 200;
const DROP_OFF = 660;

export const SOILED_LENGTH = LANDING + SINK + SCRAP + DROP_OFF;
export const CLEAN_LENGTH = LANDING + 70;

/** From the machine outward: landing, pre-rinse sink with its spray, scrap, drop-off. */
export function createSoiledTable(machine: string, side: LineSide, sheet: DataSheet): Table {
  const along = stacked([LANDING, SINK, SCRAP, DROP_OFF]);
  const fittings: Fitting[] = [
    { id: 'soiled-landing', kind: 'landing', ...along(0) },
    { id: 'pre-rinse', kind: 'sink', ...along(1), width: 510, bowlDepth: 200, spray: true, rackSlide: 521, waste: 'indirect' },
    { id: 'scrap', kind: 'scrap', ...along(2), width: 460, ...UNKNOWN_TROUGH, troughDepth: 0 },
    { id: 'drop-off', kind: 'drop-off', ...along(3) },
  ];
  return createTable('soiled-table', 'soiled', machine, side, SOILED_LENGTH, sheet, fittings);
}

/** A landing of three racks. */
export function createCleanTable(machine: string, side: LineSide, sheet: DataSheet): Table {
  const fittings: Fitting[] = [{ id: 'clean-landing', kind: 'landing', at: CLEAN_LENGTH / 2, length: LANDING }];
  return createTable('clean-table', 'clean', machine, side, CLEAN_LENGTH, sheet, fittings);
}

function createTable(
  id: string,
  role: Table['role'],
  machine: string,
  side: LineSide,
  length: number,
  sheet: DataSheet,
  fittings: Fitting[],
): Table {
  return {
    id,
    role,
    place: { kind: 'joined', machine, side: side.side, ...FLUSH },
    legs: [{ length, turnDeg: 0 }],
    depth: TABLE_DEPTH,
    rackLineFromEdge: RACK_LINE_FROM_EDGE,
    operatorSide: side.operatorSide,
    backsplash: BACKSPLASH,
    deck: { kind: 'fall', jointHeight: sheet.deckHeight, fall: FALL },
    make: { ...LINE_MAKE, scupper: role === 'soiled' },
    fittings,
  };
}

/** Centres of pieces that follow each other from the joint outward. */
function stacked(lengths: readonly number[]): (index: number) => { at: number; length: number } {
  return (index) => {
    const start = lengths.slice(0, index).reduce((sum, length) => sum + length, 0);
    const length = lengths[index] ?? 0;
    return { at: start + length / 2, length };
  };
}
