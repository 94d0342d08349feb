import { useEffect } from 'react';
import { Elevation } from './drawer/Elevation';
import { ErrorBoundary } from './ErrorBoundary';
import { Header } from './Header';
import { FetchedPart, NO_PROPS, prefetch } from './parts/FetchedPart';
import { fetchFigures } from './rail/fetchFigures';
import { Rail } from './rail/Rail';
import { Stage } from './stage/Stage';
import { warmUpDrag } from './stage/warmUpDrag';
import { fetchChecks } from './store/fetchChecks';
import { takeFile } from './store/files';
import { update, useApp } from './store/store';
import { LineStrip } from './strip/LineStrip';

/** The page: the head, the line, the paper with the unrolled line, the rail; the start page and panes above them. */
export function App() {
  const page = useApp((s) => s.page);
  const pane = useApp((s) => s.pane);
  const plan = useApp((s) => s.editor.history.present);
  const theme = useApp((s) => s.theme);
  useEffect(() => {
    document.documentElement.dataset['theme'] = theme;
  }, [theme]);
  useDroppedFiles();
  useChecks();
  usePrefetch();
  useWarmUp();
  return (
    <>
      <ErrorBoundary plan={plan}>
        <div className="frame" inert={page === 'start'}>
          <Header />
          <LineStrip />
          <Stage />
          <Elevation />
          <Rail />
        </div>
        {pane === 'manual' && <FetchedPart fetch={fetchManualPane} close={closePane} props={NO_PROPS} />}
        {pane === 'image' && <FetchedPart fetch={fetchImagePane} close={closePane} props={NO_PROPS} />}
      </ErrorBoundary>
      {page === 'start' && <FetchedPart fetch={fetchStartPage} close={leaveStart} props={NO_PROPS} />}
    </>
  );
}

const fetchStartPage = async () => (await import('./start/StartPage')).StartPage;
const fetchImagePane = async () => (await import('./takeaway/PlanImagePane')).PlanImagePane;
const fetchManualPane = async () => (await import('./manual/ManualPane')).ManualPane;
const leaveStart = () => update({ page: 'work' });
const closePane = () => update({ pane: null });

/** A trial drag waits for the checks, which a drag works out too. */
function useWarmUp() {
  const isReady = useApp((s) => s.loadedChecks === 'all' || s.loadedChecks === 'failed');
  useEffect(() => {
    if (isReady) warmUpDrag();
  }, [isReady]);
}

/** All checks come as soon as the canvas has been painted. */
function useChecks() {
  useEffect(() => {
    const frame = requestAnimationFrame(() => setTimeout(() => void fetchChecks()));
    return () => cancelAnimationFrame(frame);
  }, []);
}

const PREFETCH_AFTER_MS = 1500;

/** Start page and panes come once the canvas stands and has been painted. */
function usePrefetch() {
  useEffect(() => {
    const timer = setTimeout(() => prefetch([fetchStartPage, fetchImagePane, fetchFigures, fetchManualPane]), PREFETCH_AFTER_MS);
    return () => clearTimeout(timer);
  }, []);
}

/** A plan file dropped anywhere on the page is opened. */
function useDroppedFiles() {
  useEffect(() => {
    const over = (e: DragEvent) => e.preventDefault();
    const drop = (e: DragEvent) => {
      e.preventDefault();
      const file = e.dataTransfer?.files[0];
      if (file) void takeFile(file);
    };
    window.addEventListener('dragover', over);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragover', over);
      window.removeEventListener('drop', drop);
    };
  }, []);
}
