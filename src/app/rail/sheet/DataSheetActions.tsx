import { Copy, FolderOpen, PencilLine, Save } from 'lucide-react';
import type { DataSheet } from '../../../catalog';
import { duplicateSheet, makeSheetOwn } from '../../../editor';
import { actions } from '../../store/actions';
import { openDataSheetFile, saveDataSheet } from './sheetFiles';

interface Props {
  /** The one that is shown; none where the machines have several. */
  sheet: DataSheet | undefined;
  isOwn: boolean;
  machines: readonly string[];
  /** The button goes with what it does; who shows the form brings the keyboard to it. */
  onMadeOwn: () => void;
}

/** What can be done with the data sheet as a whole. */
export function DataSheetActions({ sheet, isOwn, machines, onMadeOwn }: Props) {
  return (
    <div className="actions">
      {!isOwn && (
        <button
          type="button"
          className="press"
          data-kind="strong"
          onClick={() => {
            onMadeOwn();
            actions.run((plan) => makeSheetOwn(plan, machines));
          }}
        >
          <PencilLine size={15} /> Make this data sheet my own
        </button>
      )}
      {sheet && isOwn && (
        <button
          type="button"
          className="press"
          title="What is chosen takes the copy; other machines keep theirs"
          onClick={() => actions.run((plan) => duplicateSheet(plan, sheet.id, machines))}
        >
          <Copy size={15} /> Duplicate the data sheet
        </button>
      )}
      {sheet && (
        <button type="button" className="press" onClick={() => saveDataSheet(sheet)}>
          <Save size={15} /> Save this data sheet
        </button>
      )}
      <button type="button" className="press" onClick={() => openDataSheetFile(machines)}>
        <FolderOpen size={15} /> Open a data sheet
      </button>
    </div>
  );
}
