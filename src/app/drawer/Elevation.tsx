import { ChevronDown, ChevronUp } from 'lucide-react';
import { drawElevation } from '../../sheets';
import { DrawingCanvas } from '../parts/DrawingCanvas';
import { update, useApp } from '../store/store';
import { useShownWork } from '../store/work';

/** Falls are drawn this many times as steep. */
const EXAGGERATION = 10;

/** The drawer under the plan: the line straightened out, as the operator sees it. */
export function Elevation() {
  const work = useShownWork();
  const isOpen = useApp((s) => s.isElevationOpen);
  const machine = work.scene.lines[0]?.machine.machine.id;
  return (
    <section className="drawer" data-open={isOpen} aria-label="The unrolled line">
      <div className="title">
        <button type="button" aria-expanded={isOpen} onClick={() => update({ isElevationOpen: !isOpen })}>
          {isOpen ? <ChevronDown size={14} /> : <ChevronUp size={14} />} The line, unrolled
        </button>
        {isOpen && <span>falls drawn ×{EXAGGERATION}, other heights true</span>}
      </div>
      <div className="unrolled">
        {isOpen && machine && (
          <DrawingCanvas
            draw={(scaleDenominator) =>
              drawElevation(work.scene, machine, { units: work.scene.plan.settings.units, exaggeration: EXAGGERATION, scaleDenominator })
            }
            margin={[30, 24, 16, 24]}
            label="Elevation of the unrolled line"
          />
        )}
      </div>
    </section>
  );
}
