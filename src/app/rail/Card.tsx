import { Copy, RotateCw, Trash2 } from 'lucide-react';
import { useMemo } from 'react';
import { deleteSelection, duplicateSelection, fieldsFor, findItem, rotateSelection, SECTIONS } from '../../editor';
import type { Scene } from '../../scene';
import { FetchedPart, NO_PROPS } from '../parts/FetchedPart';
import { actions } from '../store/actions';
import { readState, useApp } from '../store/store';
import { usePanelWork } from '../store/work';
import { CardPicture } from './CardPicture';
import { DataSheetFold } from './DataSheetFold';
import { FieldGroups } from './FieldGroups';
import { fetchFigures } from './fetchFigures';
import { ShapeActions } from './ShapeActions';

/** The card of what is chosen; nothing chosen: the room, the demand, the supply, the order. */
export function Card() {
  const { scene } = usePanelWork();
  const selection = useApp((s) => s.editor.selection);
  const [first] = selection;
  if (first === undefined) return <PlanCard scene={scene} />;
  const hasMachine = scene.plan.machines.some(({ id }) => selection.includes(id));
  if (selection.length > 1) return <ManyCard count={selection.length} hasMachine={hasMachine} />;
  return <ThingCard key={first} id={first} scene={scene} />;
}

function PlanCard({ scene }: { scene: Scene }) {
  return (
    <>
      <header>
        <h2>The plan</h2>
      </header>
      <p className="quiet">Press something on the paper to see its card.</p>
      {SECTIONS.map((part) => (
        <FieldGroups key={part} fields={fieldsFor(scene.plan, scene, part)} />
      ))}
      <FetchedPart fetch={fetchFigures} close={nothing} props={NO_PROPS} />
    </>
  );
}

function ThingCard({ id, scene }: { id: string; scene: Scene }) {
  const item = findItem(scene, id);
  // A record has lines of its own, under the figures' heading.
  const fields = fieldsFor(scene.plan, scene, id).filter(({ group }) => group !== 'record');
  return (
    <>
      <header>
        {item?.mark && <span className="lozenge">{item.mark}</span>}
        <h2>{item?.name ?? id}</h2>
      </header>
      <CardPicture id={id} scene={scene} fields={fields} />
      <Acts>
        <ShapeActions id={id} plan={scene.plan} />
      </Acts>
      <FieldGroups fields={fields} />
      <FetchedPart fetch={fetchFigures} close={nothing} props={NO_PROPS} />
    </>
  );
}

const nothing = () => {};

function ManyCard({ count, hasMachine }: { count: number; hasMachine: boolean }) {
  return (
    <>
      <header>
        <h2>{count} things</h2>
      </header>
      <p className="quiet">They move, turn and are removed together.</p>
      <Acts />
      {hasMachine && <DataSheetFold />}
    </>
  );
}

function Acts({ children }: { children?: React.ReactNode }) {
  const history = useApp((s) => s.editor.history);
  const selection = useApp((s) => s.editor.selection);
  // Fittings, openings and the like keep their direction.
  const canTurn = useMemo(
    () => rotateSelection({ ...readState().editor, history, selection }, 90).history !== history,
    [history, selection],
  );
  return (
    <div className="actions">
      <button type="button" className="press" disabled={!canTurn} onClick={() => actions.editor((e) => rotateSelection(e, 90))}>
        <RotateCw size={15} /> Turn
      </button>
      <button type="button" className="press" onClick={() => actions.editor(duplicateSelection)}>
        <Copy size={15} /> Duplicate
      </button>
      <button type="button" className="press" onClick={() => actions.editor(deleteSelection)}>
        <Trash2 size={15} /> Remove
      </button>
      {children}
    </div>
  );
}
