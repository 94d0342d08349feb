import { useId, useState } from 'react';
import { drawThings } from '../../drawing';
import type { Field } from '../../editor';
import { directionOf, type Point, sub } from '../../geometry';
import type { Scene } from '../../scene';
import { DrawingCanvas } from '../parts/DrawingCanvas';
import { Problem, TextInput } from './FieldRow';

/** Layers that belong to the thing itself. */
const SHOWN = new Set(['equipment', 'above', 'run', 'floor', 'room']);

/** A small drawing of the chosen thing with its own width and depth as fields on the drawing, each along what it measures. */
export function CardPicture({ id, scene, fields }: { id: string; scene: Scene; fields: readonly Field[] }) {
  const drawing = drawThings(scene).filter((p) => p.subject === id && SHOWN.has(p.layer) && p.kind !== 'text');
  if (drawing.length === 0) return null;
  const field = (key: string) => fields.find((f) => f.path.at(-1) === key && f.group === 'size');
  const [width, depth] = [field('width'), field('depth')];
  const [onTop, onLeft] = isUpright(id, scene) ? [depth, width] : [width, depth];
  return (
    <div className="picture">
      <DrawingCanvas draw={() => drawing} margin={[onTop ? 36 : 14, 20, 14, onLeft ? 96 : 20]} label="What is chosen" />
      {onTop && <PictureField field={onTop} className="on-top" />}
      {onLeft && <PictureField field={onLeft} className="on-left" />}
    </div>
  );
}

/** Whether a thing's own width (a table's length) runs up and down the paper rather than across it. */
function isUpright(id: string, scene: Scene): boolean {
  const along = lengthwise(id, scene);
  return along !== null && Math.abs(along.y) > Math.abs(along.x);
}

function lengthwise(id: string, { plan, tables, room }: Scene): Point | null {
  const [from, to] = tables.find(({ table }) => table.id === id)?.path ?? [];
  if (from && to) return sub(to, from);
  const opening = room.openings.find((item) => item.opening.id === id);
  if (opening) return opening.wall.direction;
  const turned = [...plan.machines, ...plan.things, ...plan.hoods, ...plan.room.columns].find((item) => item.id === id);
  return turned ? directionOf(turned.rotationDeg) : null;
}

function PictureField({ field, className }: { field: Field; className: string }) {
  const id = useId();
  const [problem, setProblem] = useState<string | null>(null);
  return (
    <>
      <TextInput field={field} id={id} className={className} problem={problem} report={setProblem} />
      <Problem id={id} text={problem} />
    </>
  );
}
