import type { PlacedFitting } from '../../scene';
import type { Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen, type Pen } from '../support/pen';
import { deckHeightAt } from './deckProfile';
import { at, type ElevationFrame, onDeck } from './elevationFrame';
import type { UnrolledTable } from './unrollLine';

/** A fitting from the operator's side. */
export function drawDeckFitting(placed: PlacedFitting, unrolled: UnrolledTable, frame: ElevationFrame): Prim[] {
  const { fitting } = placed;
  const [a, b] = [unrolled.x(placed.from), unrolled.x(placed.to)].toSorted((p, q) => p - q);
  const y = onDeck(frame, 0, deckHeightAt(unrolled.table, (placed.from + placed.to) / 2) ?? frame.datum).y;
  const place = { from: a ?? 0, to: b ?? 0, y };
  const pen = createPen('equipment', fitting.id);
  switch (fitting.kind) {
    case 'sink':
      return drawBowl(pen, place, fitting.bowlDepth, fitting.spray);
    case 'scrap':
      return drawScrap(pen, place);
    case 'drop-off':
      return [
        pen.line([at(place.from + 20, -y + 30), at(place.from + 20, -y + 130), at(place.to - 20, -y + 130), at(place.to - 20, -y + 30)], {
          stroke: unrolled.table.table.role,
          width: WIDTH.narrow,
          dash: 'short',
        }),
      ];
    case 'landing':
      return drawRacks(pen, placed, unrolled, frame);
    case 'overshelf':
      return [
        createPen('above', fitting.id).area(box(place.from, place.to, fitting.height, fitting.height + 35), {
          fill: 'paper',
          stroke: 'ink',
          width: WIDTH.medium,
          dash: 'short',
        }),
      ];
  }
}

interface Place {
  from: number;
  to: number;
  /** Of the deck on the drawing. */
  y: number;
}

const box = (from: number, to: number, low: number, high: number) => [at(from, low), at(to, low), at(to, high), at(from, high)];

/** A bowl below the deck with its outlet; over it the riser of a spray hose. */
function drawBowl(pen: Pen, { from, to, y }: Place, depth: number, spray: boolean): Prim[] {
  const middle = (from + to) / 2;
  const bowl = [
    { x: from + 15, y },
    { x: from + 35, y: y + depth },
    { x: middle, y: y + depth + 20 },
    { x: to - 35, y: y + depth },
    { x: to - 15, y },
  ];
  const outlet = pen.line(
    [
      { x: middle, y: y + depth + 20 },
      { x: middle, y: y + depth + 130 },
    ],
    { stroke: 'water', width: WIDTH.wide, dash: 'short' },
  );
  const riser = [
    { x: middle, y },
    { x: middle, y: y - 620 },
    { x: middle + 90, y: y - 690 },
    { x: middle + 170, y: y - 560 },
    { x: middle + 170, y: y - 330 },
  ];
  const head = pen.area(
    [
      { x: middle + 150, y: y - 330 },
      { x: middle + 190, y: y - 330 },
      { x: middle + 205, y: y - 260 },
      { x: middle + 135, y: y - 260 },
    ],
    { fill: 'water' },
  );
  return [
    pen.area(bowl, { fill: 'paper', stroke: 'ink', width: WIDTH.wide }),
    pen.area(bowl, { fill: 'water', fillOpacity: 0.08 }),
    outlet,
    ...(spray ? [pen.line(riser, { stroke: 'water', width: WIDTH.wide }), head] : []),
  ];
}

/** The opening, and the bin that stands below it. */
function drawScrap(pen: Pen, { from, to, y }: Place): Prim[] {
  const top = Math.min(y + 90, -200);
  const bin = [
    { x: from + 30, y: top },
    { x: to - 30, y: top },
    { x: to - 65, y: -20 },
    { x: from + 65, y: -20 },
  ];
  return [
    pen.area(bin, { stroke: 'second', width: WIDTH.narrow, dash: 'short', pattern: 'none' }),
    pen.line(
      [
        { x: from + 10, y: y + 20 },
        { x: to - 10, y: y + 20 },
      ],
      { stroke: 'ink', width: WIDTH.bold },
    ),
  ];
}

/** Racks as they stand on a landing, as steep as its deck is drawn. */
function drawRacks(pen: Pen, { from, to }: PlacedFitting, unrolled: UnrolledTable, frame: ElevationFrame): Prim[] {
  const { rackSize, rackPitch } = frame;
  const count = Math.floor((to - from + 1) / rackPitch);
  const start = (from + to - count * rackPitch) / 2;
  return Array.from({ length: count }, (_, i) => {
    const middle = start + (i + 0.5) * rackPitch;
    const [near, far] = [middle - rackSize / 2 + 8, middle + rackSize / 2 - 8].map((s) =>
      onDeck(frame, unrolled.x(s), deckHeightAt(unrolled.table, s) ?? frame.datum),
    );
    if (near === undefined || far === undefined) return [];
    const up = (p: { x: number; y: number }, by: number) => ({ x: p.x, y: p.y - by });
    return [
      pen.area([up(near, 10), up(far, 10), up(far, 110), up(near, 110)], {
        fill: 'paper',
        fillOpacity: 0.75,
        stroke: 'second',
        width: WIDTH.fine,
      }),
    ];
  }).flat();
}
