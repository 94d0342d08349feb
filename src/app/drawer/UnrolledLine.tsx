import { drawElevation } from '../../drawing';
import { DrawingCanvas } from '../parts/DrawingCanvas';
import { chosenLine } from '../store/chosenLine';
import { useApp } from '../store/store';
import { usePanelWork } from '../store/work';
import { EXAGGERATION } from './exaggeration';

/** The chosen line straightened out, as the operator sees it. */
export function UnrolledLine() {
  const { scene, findings } = usePanelWork();
  const selection = useApp((s) => s.editor.selection);
  const chosen = useApp((s) => s.finding);
  const machine = chosenLine(scene, selection)?.machine.machine.id;
  const lit = findings.find((f) => f.id === chosen)?.elevation ?? null;
  if (!machine) return <p className="quiet">The line is drawn here, straightened out, once a machine stands in the room.</p>;
  return (
    <DrawingCanvas
      draw={(scaleDenominator) =>
        drawElevation(scene, machine, {
          units: scene.plan.settings.units,
          exaggeration: EXAGGERATION,
          isBroken: true,
          hasCaption: false,
          lit,
          scaleDenominator,
        })
      }
      margin={[30, 24, 40, 24]}
      ink={4}
      label="Elevation of the unrolled line"
    />
  );
}
