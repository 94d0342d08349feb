import type { Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { at } from './elevationFrame';
import type { UnrolledLine } from './unrollLine';

const FEET = 150;

/** The machine from the operator's side: body, track, door opening, the room that the doors rise into, controls. */
export function drawMachineFront({ machine, left, right }: UnrolledLine): Prim[] {
  const { sheet } = machine;
  const pen = createPen('equipment', machine.machine.id);
  const above = createPen('above', machine.machine.id);
  const box = (from: number, to: number, low: number, high: number) => [at(from, low), at(to, low), at(to, high), at(from, high)];
  const feet = [left + 60, right - 60].map((x) =>
    pen.area(box(x - 25, x + 25, 0, FEET), { fill: 'paper', stroke: 'second', width: WIDTH.narrow }),
  );
  const opening = box(left + 45, right - 45, sheet.deckHeight, sheet.deckHeight + sheet.clearOpening);
  return [
    ...feet,
    pen.area(box(left, right, FEET, sheet.height), { fill: 'paper', stroke: 'ink', width: WIDTH.heavy }),
    pen.area(opening, { stroke: 'second', width: WIDTH.narrow, fill: 'second', fillOpacity: 0.08 }),
    pen.line([at(left, sheet.deckHeight), at(right, sheet.deckHeight)], { stroke: 'ink', width: WIDTH.wide }),
    above.area(box(left + 20, right - 20, sheet.height, Math.max(sheet.height, sheet.doorLiftHeight)), {
      stroke: 'ink',
      width: WIDTH.medium,
      dash: 'short',
      pattern: 'none',
    }),
    ...drawControls(machine, left, right),
  ];
}

/** The control post at its height; at the end of the body that its position lies nearer to, in the middle where the line turns there. */
function drawControls({ controls, machine, sheet }: UnrolledLine['machine'], left: number, right: number): Prim[] {
  const position = sheet.controls.find(({ id }) => id === controls?.position.id);
  if (position === undefined) return [];
  const middle = (position.from + position.to) / 2;
  const x = middle < sheet.width / 2 ? left + middle : right - (sheet.width - middle);
  const half = (position.to - position.from) / 2;
  const ring = [at(x - half, position.zFrom), at(x + half, position.zFrom), at(x + half, position.zTo), at(x - half, position.zTo)];
  return [createPen('equipment', machine.id).area(ring, { fill: 'chosen', fillOpacity: 0.85, stroke: 'ink', width: WIDTH.narrow })];
}
