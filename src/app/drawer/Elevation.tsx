import { ChevronDown, ChevronUp } from 'lucide-react';
import { FetchedPart, NO_PROPS } from '../parts/FetchedPart';
import { update, useApp } from '../store/store';
import { EXAGGERATION } from './exaggeration';

/** The drawer under the plan, for the unrolled line. */
export function Elevation() {
  const isOpen = useApp((s) => s.isElevationOpen);
  return (
    <section className="drawer" data-open={isOpen} aria-label="The unrolled line">
      <div className="title">
        <button type="button" aria-expanded={isOpen} onClick={() => update({ isElevationOpen: !isOpen })}>
          {isOpen ? <ChevronDown size={14} /> : <ChevronUp size={14} />} The line, unrolled
        </button>
        {isOpen && <span>falls drawn ×{EXAGGERATION}, empty heights cut short</span>}
      </div>
      <div className="unrolled">{isOpen && <FetchedPart fetch={fetchUnrolledLine} close={shut} props={NO_PROPS} />}</div>
    </section>
  );
}

export const fetchUnrolledLine = async () => (await import('./UnrolledLine')).UnrolledLine;

const shut = () => update({ isElevationOpen: false });
