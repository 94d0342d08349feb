import { X } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import { DAY, renderCanvas, renderSvg } from '../../render';
import { drawPlanSheet, PAPERS, type PaperName } from '../../sheets';
import { ChecksNote } from '../rail/ChecksNote';
import { Message } from '../stage/Message';
import { actions } from '../store/actions';
import { download, fileStem } from '../store/files';
import { readState, update, useApp } from '../store/store';
import { deriveWork } from '../store/work';

/** Dots a millimetre of the PNG: about 200 an inch. */
const PX_PER_MM = 8;

/** The dimensioned plan image: choose the paper, look at it, take it away. */
export function PlanImagePane() {
  const dialog = useRef<HTMLDialogElement>(null);
  const plan = readState().editor.history.present;
  const { units } = plan.settings;
  const [paper, setPaper] = useState<PaperName>(units === 'us' ? 'ansi-b' : 'a3');
  const { scene, findings } = deriveWork(plan);
  const loadedChecks = useApp((s) => s.loadedChecks);
  const isComing = loadedChecks === 'none' || loadedChecks === 'line';
  const sheet = drawPlanSheet(scene, findings, { paper, scale: 'fit', units, isPartlyChecked: loadedChecks !== 'all' });
  const svg = renderSvg(sheet);
  const name = fileStem(plan);
  useEffect(() => dialog.current?.showModal(), []);

  return (
    <dialog ref={dialog} className="pane image-pane" aria-labelledby="image-title" onClose={() => update({ pane: null })}>
      <div className="inside">
        <div className="top">
          <h2 id="image-title">Plan image</h2>
          <button type="button" className="press" data-kind="bare" aria-label="Close" onClick={() => dialog.current?.close()}>
            <X size={16} />
          </button>
        </div>
        <div className="body">
          {/* Our own string of our own drawing: every text in it is escaped by the renderer. */}
          <div className="preview" dangerouslySetInnerHTML={{ __html: svg }} />
          <div className="choose">
            <label className="row">
              Paper
              <select value={paper} onChange={(e) => setPaper(e.target.value as PaperName)}>
                {Object.entries(PAPERS).map(([id, { name: words }]) => (
                  <option key={id} value={id}>
                    {words}
                  </option>
                ))}
              </select>
            </label>
            <p className="quiet">
              {sheet.scaleText}, true to scale when printed at full size. Check the bar on the sheet with a rule before measuring from it.
            </p>
            <ChecksNote />
            <button
              type="button"
              className="press"
              data-kind="strong"
              disabled={isComing}
              onClick={() => void savePng(sheet, `${name}.png`)}
            >
              Take the PNG
            </button>
            <button
              type="button"
              className="press"
              data-kind="strong"
              disabled={isComing}
              onClick={() => download(new Blob([svg], { type: 'image/svg+xml' }), `${name}.svg`)}
            >
              Take the SVG
            </button>
            <p className="caution">Preliminary. The connection plate inside the machine, local code and licensed trades govern.</p>
          </div>
        </div>
      </div>
      <Message on="image" />
    </dialog>
  );
}

async function savePng(sheet: ReturnType<typeof drawPlanSheet>, name: string): Promise<void> {
  await document.fonts.ready;
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(sheet.widthMm * PX_PER_MM);
  canvas.height = Math.round(sheet.heightMm * PX_PER_MM);
  const context = canvas.getContext('2d');
  if (!context) return actions.showMessage('refused', 'This browser gives no canvas to draw the image on.');
  context.fillStyle = DAY.paper;
  context.fillRect(0, 0, canvas.width, canvas.height);
  renderCanvas(context, sheet.drawing, {
    scale: PX_PER_MM,
    dx: 0,
    dy: 0,
    pxPerPaperMm: PX_PER_MM,
    palette: DAY,
    width: canvas.width,
    height: canvas.height,
  });
  canvas.toBlob(
    (blob) =>
      blob ? download(blob, name) : actions.showMessage('refused', 'The image could not be made: it is too large for this browser.'),
    'image/png',
  );
}
