import type { DataSheet } from '../../../catalog';
import { openSheet } from '../../../editor';
import { describeProblem, parseDataSheetBytes, renderDataSheetText } from '../../../plan';
import { actions } from '../../store/actions';
import { chooseFile, download, readBytes, stemOf } from '../../store/files';
import { readState } from '../../store/store';

/** Saves one data sheet as a file. */
export function saveDataSheet(sheet: DataSheet): void {
  download(new Blob([renderDataSheetText(sheet)], { type: 'application/json' }), `${stemOf(sheet.name) || 'machine'}.rackway-sheet.json`);
}

/** Asks for a file with a data sheet and gives it to these machines. A refused one is named with the place and the reason. */
export function openDataSheetFile(machines: readonly string[]): void {
  chooseFile((file) => void takeDataSheetFile(file, machines));
}

async function takeDataSheetFile(file: File, machines: readonly string[]): Promise<void> {
  const bytes = await readBytes(file);
  if (bytes === null) return actions.showMessage('refused', `${file.name} was not opened: the browser can’t read it.`);
  const read = parseDataSheetBytes(bytes);
  if (!read.ok) return actions.showMessage('refused', `${file.name} was not opened: ${describeProblem(read.problem)}.`);
  const outcome = openSheet(readState().editor.history.present, read.sheet, machines);
  actions.run(() => outcome);
  if (outcome.ok) actions.showMessage('note', `Opened ${file.name}.`);
}
