import type { MachineSheet } from '../../../catalog';
import { openSheet } from '../../../editor';
import { describeProblem, parseSheetBytes, renderSheetText } from '../../../plan';
import { acts } from '../../store/acts';
import { chooseFile, download, readBytes, stemOf } from '../../store/files';
import { readState } from '../../store/store';

/** Saves one data sheet as a file. */
export function saveSheet(sheet: MachineSheet): void {
  download(new Blob([renderSheetText(sheet)], { type: 'application/json' }), `${stemOf(sheet.name) || 'machine'}.rackway-sheet.json`);
}

/** Asks for a file with a data sheet and gives it to these machines. A refused one is named with the place and the reason. */
export function openSheetFile(machines: readonly string[]): void {
  chooseFile((file) => void takeSheetFile(file, machines));
}

async function takeSheetFile(file: File, machines: readonly string[]): Promise<void> {
  const bytes = await readBytes(file);
  if (bytes === null) return acts.say('refused', `${file.name} was not opened: the browser can’t read it.`);
  const read = parseSheetBytes(bytes);
  if (!read.ok) return acts.say('refused', `${file.name} was not opened: ${describeProblem(read.problem)}.`);
  const outcome = openSheet(readState().editor.history.present, read.sheet, machines);
  acts.outcome(() => outcome);
  if (outcome.ok) acts.say('note', `Opened ${file.name}.`);
}
