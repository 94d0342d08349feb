import { midpoint } from '../../geometry';
import type { PlacedRoom } from '../../scene';
import type { Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen } from '../support/pen';

/** What belongs to the building and stands in the room: columns, floor drains. Stubs are marks that keep clear of each other: `labels/stubLabels`. */
export function drawRoomThings(room: PlacedRoom): Prim[] {
  return [...room.columns.flatMap(drawColumn), ...room.floorDrains.flatMap(drawDrain)];
}

function drawColumn({ column, polygon }: PlacedRoom['columns'][number]): Prim[] {
  const pen = createPen('room', column.id);
  return [pen.area(polygon, { fill: 'paper' }), pen.area(polygon, { fill: 'second', pattern: 'wall', stroke: 'ink', width: WIDTH.heavy })];
}

/** A floor drain is a round grate, a floor sink a square basin with a half grate. */
function drawDrain({ drain, centre, polygon }: PlacedRoom['floorDrains'][number]): Prim[] {
  const pen = createPen('floor', drain.id);
  const radius = drain.size / 2;
  const outline = { stroke: 'water', width: WIDTH.medium } as const;
  const bars = { stroke: 'water', width: WIDTH.fine } as const;
  if (drain.kind === 'floor-drain') {
    const chord = (k: number) => {
      const half = Math.sqrt(1 - k * k) * radius;
      return pen.line(
        [
          { x: centre.x - half, y: centre.y + k * radius },
          { x: centre.x + half, y: centre.y + k * radius },
        ],
        bars,
      );
    };
    return [pen.circle(centre, radius, { ...outline, fill: 'paper' }), ...[-0.6, -0.2, 0.2, 0.6].map(chord)];
  }
  const [a = centre, b = centre, c = centre, d = centre] = polygon;
  return [
    pen.area(polygon, { ...outline, fill: 'paper' }),
    pen.area([a, b, midpoint(b, c), midpoint(a, d)], { fill: 'water', pattern: 'hatch-45', stroke: 'water', width: WIDTH.fine }),
    pen.circle(centre, radius * 0.34, outline),
  ];
}
