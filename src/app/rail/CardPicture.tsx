import { useId, useState } from 'react';
import type { Field } from '../../editor';
import type { Scene } from '../../scene';
import { drawThings } from '../../sheets';
import { DrawingCanvas } from '../parts/DrawingCanvas';
import { Problem, TextInput } from './FieldRow';

/** Layers that belong to the thing itself. */
const SHOWN = new Set(['equipment', 'above', 'run', 'floor', 'room']);

/** A small drawing of the chosen thing with its own width and depth as fields on the drawing. */
export function CardPicture({ id, scene, fields }: { id: string; scene: Scene; fields: readonly Field[] }) {
  const drawing = drawThings(scene).filter((p) => p.subject === id && SHOWN.has(p.layer) && p.kind !== 'text');
  if (drawing.length === 0) return null;
  const field = (key: string) => fields.find((f) => f.path.at(-1) === key && f.group === 'size');
  const [width, depth] = [field('width'), field('depth')];
  return (
    <div className="picture">
      <DrawingCanvas draw={() => drawing} margin={[width ? 36 : 14, 20, 14, depth ? 96 : 20]} label="What is chosen" />
      {width && <PictureField field={width} className="on-top" />}
      {depth && <PictureField field={depth} className="on-left" />}
    </div>
  );
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
