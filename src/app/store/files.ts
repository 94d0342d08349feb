import { describeProblem, type Plan, parsePlanBytes, renderPlanText } from '../../plan';
import { actions } from './actions';
import { readState, update } from './store';

export const FILE_ENDING = '.rackway.json';

/** Asks for a file and opens it. A refused file is named with the place and the reason; what was open stays open. */
export const openFile = (): void => chooseFile((file) => void takeFile(file));

/** Lets a person choose a file. */
export function chooseFile(take: (file: File) => void): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = '.json,application/json';
  input.addEventListener('change', () => {
    const file = input.files?.[0];
    if (file) take(file);
  });
  input.click();
}

/** Reads a file that was chosen or dropped on the page. */
export async function takeFile(file: File): Promise<void> {
  const bytes = await readBytes(file);
  if (bytes === null)
    return actions.showMessage(
      'refused',
      `${file.name} was not opened: the browser can’t read it. It may be a folder, or have been moved.`,
    );
  const result = parsePlanBytes(bytes);
  if (!result.ok) return actions.showMessage('refused', `${file.name} was not opened: ${describeProblem(result.problem)}.`);
  actions.open(result.plan, file.name);
  actions.showMessage(
    'note',
    result.migratedFrom === null ? `Opened ${file.name}.` : `Opened ${file.name}, brought up from version ${result.migratedFrom}.`,
  );
}

/** What a file holds; null where the browser can’t read it. */
export async function readBytes(file: File): Promise<Uint8Array | null> {
  try {
    return new Uint8Array(await file.arrayBuffer());
  } catch {
    return null;
  }
}

/** Saves the present plan as a file. */
export function savePlan(): void {
  const plan = readState().editor.history.present;
  const name = `${fileStem(plan)}${FILE_ENDING}`;
  download(new Blob([renderPlanText(plan)], { type: 'application/json' }), name);
  update({ fileName: name });
}

/** A file name from the title of the plan. */
export const fileStem = (plan: Plan): string => stemOf([plan.title.project, plan.title.alternative].join(' ')) || 'dish-room';

/** Words as part of a file name. */
export function stemOf(words: string): string {
  return words
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}

export function download(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  // The browser has the blob once the click has been handled.
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}
