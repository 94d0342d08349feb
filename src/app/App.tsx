import { useEffect } from 'react';
import { Elevation } from './drawer/Elevation';
import { Header } from './Header';
import { Rail } from './rail/Rail';
import { Stage } from './stage/Stage';
import { StartPage } from './start/StartPage';
import { takeFile } from './store/files';
import { useApp } from './store/store';
import { LineStrip } from './strip/LineStrip';
import { PlanImagePane } from './takeaway/PlanImagePane';

/** The page: the head, the line, the paper with the unrolled line, the rail; the start page and panes above them. */
export function App() {
  const page = useApp((s) => s.page);
  const pane = useApp((s) => s.pane);
  const paper = useApp((s) => s.paper);
  useEffect(() => {
    document.documentElement.dataset['paper'] = paper;
  }, [paper]);
  useDroppedFiles();
  return (
    <>
      <div className="frame" inert={page === 'start'}>
        <Header />
        <LineStrip />
        <Stage />
        <Elevation />
        <Rail />
      </div>
      {page === 'start' && <StartPage />}
      {pane === 'image' && <PlanImagePane />}
    </>
  );
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
