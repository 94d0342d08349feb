import { ChevronDown, ChevronUp } from 'lucide-react';
import { drawElevation } from '../../sheets';
import { DrawingCanvas } from '../parts/DrawingCanvas';
import { chosenLine } from '../store/chosenLine';
import { update, useApp } from '../store/store';
import { usePanelWork } from '../store/work';

/** Falls are drawn this many times as steep. */
const EXAGGERATION = 10;

/** The drawer under the plan: the line straightened out, as the operator sees it. */
export function Elevation() {
  const work = usePanelWork();
  const isOpen = useApp((s) => s.isElevationOpen);
  const machine = chosenLine(
    work.scene,
    useApp((s) => s.editor.selection),
  )?.machine.machine.id;
  const finding = useApp((s) => s.finding);
  const lit = work.findings.find((f) => f.id === finding)?.elevation ?? null;
  return (
    <section className="drawer" data-open={isOpen} aria-label="The unrolled line">
      <div className="title">
        <button type="button" aria-expanded={isOpen} onClick={() => update({ isElevationOpen: !isOpen })}>
          {isOpen ? <ChevronDown size={14} /> : <ChevronUp size={14} />} The line, unrolled
        </button>
        {isOpen && <span>falls ×{EXAGGERATION}, empty heights cut short; figures true</span>}
      </div>
      <div className="unrolled">
        {isOpen && !machine && <p className="quiet">The line is drawn here, straightened out, once a machine stands in the room.</p>}
        {isOpen && machine && (
          <DrawingCanvas
            draw={(scaleDenominator) =>
              drawElevation(work.scene, machine, {
                units: work.scene.plan.settings.units,
                exaggeration: EXAGGERATION,
                isBroken: true,
                hasCaption: false,
                lit,
                scaleDenominator,
              })
            }
            margin={[24, 24, 34, 24]}
            ink={4}
            label="Elevation of the unrolled line"
          />
        )}
      </div>
    </section>
  );
}
