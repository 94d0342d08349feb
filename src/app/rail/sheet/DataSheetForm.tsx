import { Plus, Trash2 } from 'lucide-react';
import type { DataSheet } from '../../../catalog';
import {
  addToSheet,
  type DataSheetListName,
  type DataSheetPart,
  type Field,
  type FieldRun,
  fieldsOfPart,
  removeFromSheet,
  SHEET_LISTS,
} from '../../../editor';
import { readField } from '../../../plan';
import { actions } from '../../store/actions';
import { FieldRow } from '../FieldRow';
import { LongText } from './LongText';
import { LIST_TITLES } from './listTitles';

interface Props {
  part: DataSheetPart;
  sheet: DataSheet;
  fields: readonly Field[];
}

/** A part of a data sheet of the user's own as a form; its lists grow and shrink. */
export function DataSheetForm({ part, sheet, fields }: Props) {
  const runs = fieldsOfPart(part, fields);
  return (
    <>
      {runs
        .filter(({ list }) => list === null)
        .map((run) => (
          <Rows key="own" fields={run.fields} />
        ))}
      {listsOf(part, sheet).map((list) => (
        <ListForm key={list} list={list} sheet={sheet} members={runs.filter((run) => run.list === list)} />
      ))}
    </>
  );
}

/** The lists that a part of the data sheet has now; only a direct vent has a fan. */
function listsOf({ keys }: DataSheetPart, sheet: DataSheet): DataSheetListName[] {
  const names = Object.keys(SHEET_LISTS) as DataSheetListName[];
  return names.filter((name) => {
    const { path } = SHEET_LISTS[name];
    return keys.some((key) => key === path[0]) && Array.isArray(readField(sheet, path));
  });
}

function ListForm({ list, sheet, members }: { list: DataSheetListName; sheet: DataSheet; members: readonly FieldRun[] }) {
  const { noun } = SHEET_LISTS[list];
  return (
    <section aria-label={LIST_TITLES[list] ?? `Each ${noun}`}>
      {LIST_TITLES[list] && <h4>{LIST_TITLES[list]}</h4>}
      {members.map(({ index, title, fields }) => (
        <div key={index} role="group" aria-label={title ?? undefined}>
          <p className="part">
            <span>{title}</span>
            <MemberActs list={list} sheet={sheet.id} index={index ?? 0} name={`${noun} ${(index ?? 0) + 1}`} />
          </p>
          <Rows fields={fields} />
        </div>
      ))}
      <button type="button" className="press" onClick={() => actions.run((plan) => addToSheet(plan, sheet.id, list, members.length - 1))}>
        <Plus size={15} /> Add a {noun}
      </button>
    </section>
  );
}

function MemberActs({ list, sheet, index, name }: { list: DataSheetListName; sheet: string; index: number; name: string }) {
  return (
    <>
      <button
        type="button"
        className="press"
        data-kind="bare"
        aria-label={`Add one after ${name}`}
        title="Add one after it"
        onClick={() => actions.run((plan) => addToSheet(plan, sheet, list, index))}
      >
        <Plus size={15} />
      </button>
      <button
        type="button"
        className="press"
        data-kind="bare"
        aria-label={`Remove ${name}`}
        title="Remove it"
        onClick={() => actions.run((plan) => removeFromSheet(plan, sheet, list, index))}
      >
        <Trash2 size={15} />
      </button>
    </>
  );
}

function Rows({ fields }: { fields: readonly Field[] }) {
  return fields.map((field) => {
    const Row = field.kind === 'text' ? LongText : FieldRow;
    return <Row key={field.path.join('.')} field={field} />;
  });
}
