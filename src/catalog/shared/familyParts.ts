import { toSI } from '../../units';
import type { Connection, ControlsPosition, DataSheet } from '../dataSheet';

/** What the generic families share. Invented, plausible figures; each family states what differs. */

/** Table height of 34 in: ASTM F953-94 (2003), scope. */
export const DECK_HEIGHT = 863.6;

/** Clear opening of 17 in, for a rack of plates: common practice. */
export const STANDARD_OPENING = 431.8;

/** Water connection ¾ in and drain 2 in outside diameter: common practice. */
export const WATER_SIZE = 19.05;
export const DRAIN_SIZE = 50.8;

/** A branch of 15 gpm: common practice. */
export const DRAIN_FLOW = toSI(15, 'gpm');

/** 15 to 25 psi: within what every code bounds. Invented for these families, as a plate would state it. */
export const RINSE_PRESSURE: DataSheet['rinsePressure'] = { least: toSI(15, 'psi'), most: toSI(25, 'psi') };

/** Final rinse of 180 °F: NAC 446.355. */
export const HOT_RINSE_C = toSI(180, 'F');

/** What silicone seals and a rack slides over. */
export const JOINT: DataSheet['joint'] = { maxGap: 3, maxOffset: 6, maxAngleDeg: 0.5, maxDeckStep: 3 };

/** Service from the front, 4 in elsewhere, and a hand above the open doors. */
export const CLEARANCES: DataSheet['clearances'] = { left: 100, right: 100, front: 610, back: 100, above: 25 };

/** Changing racks takes 5 s on a door machine: preface of the listing of machines to NSF/ANSI 3. */
export const LOAD_S = 5;

/** A post at either front corner, below the deck. */
export function lowControls(width: number): ControlsPosition[] {
  return controlsBetween(width, 300, 800);
}

/** A box at either front corner, above the deck, at eye level. */
export function highControls(width: number): ControlsPosition[] {
  return controlsBetween(width, 1450, 1750);
}

function controlsBetween(width: number, zFrom: number, zTo: number): ControlsPosition[] {
  return [
    { id: 'front-left', name: 'Front, at the left corner', side: 'front', from: 5, to: 90, zFrom, zTo },
    { id: 'front-right', name: 'Front, at the right corner', side: 'front', from: width - 90, to: width - 5, zFrom, zTo },
  ];
}

/** Drain at the back left, low. It opens by itself when power is cut. */
export function drain(): Connection {
  return {
    id: 'drain',
    kind: 'drain',
    x: 110,
    y: 60,
    z: 190,
    size: DRAIN_SIZE,
    note: 'Gravity drain, 2 in outside diameter, about 15 gpm while the tank empties; it opens by itself when power is cut. Indirect waste as local code says.',
  };
}

/** Water at the back right. */
export function water(kind: 'hot-water' | 'cold-water', width: number, note: string): Connection {
  return { id: 'water', kind, x: width - 110, y: 30, z: 320, size: WATER_SIZE, note };
}

/** Supply wires at the back, above the splash. */
export function power(width: number): Connection {
  return {
    id: 'power',
    kind: 'power',
    x: width - 200,
    y: 40,
    z: 420,
    size: 0,
    note: 'One supply through a lockable disconnect within sight. Wiring by a licensed electrician, to the machine’s own plate and local code.',
  };
}

/** The three signals for other equipment: they drive a contactor and never a motor. */
export function signals(width: number): Connection[] {
  const wire = (id: 'vent-signal' | 'rinse-aid-signal' | 'detergent-signal', x: number, what: string): Connection => ({
    id,
    kind: id,
    x,
    y: 40,
    z: 480,
    size: 0,
    note: `120 V signal ${what}. It drives the coil of a contactor, never a motor direct.`,
  });
  return [
    wire('vent-signal', width - 260, 'for the exhaust fan, on while the machine is on'),
    wire('rinse-aid-signal', width - 320, 'for the rinse-aid feeder, on during the final rinse'),
    wire('detergent-signal', width - 380, 'for the detergent feeder, on during the wash'),
  ];
}

/** Power of a resistive load to current, as the sheet prints it: I = P / V, or P / (√3 V) with three phases. */
export function variant(voltage: number, phase: 1 | 3, powerKw: number): DataSheet['electrical'][number] {
  const volts = phase === 3 ? Math.sqrt(3) * voltage : voltage;
  const currentA = Math.round((powerKw * 10_000) / volts) / 10;
  return { id: `v${voltage}-${phase}ph`, voltage, phase, powerKw, currentA };
}
