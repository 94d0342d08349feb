import { type DataSheetPart, type Field, fieldsOfPart, formatField } from '../../../editor';
import type { Units } from '../../../units';
import { LIST_TITLES } from './listTitles';

/** A part of a data sheet that is only read: all that it states. */
export function SheetText({ part, fields, units }: { part: DataSheetPart; fields: readonly Field[]; units: Units }) {
  return fieldsOfPart(part, fields).map(({ list, index, title, fields: members }) => (
    <div key={`${list} ${index}`}>
      {index === 0 && list && LIST_TITLES[list] && <h4>{LIST_TITLES[list]}</h4>}
      {title && (
        <p className="part">
          <span>{title}</span>
        </p>
      )}
      <Values fields={members} units={units} />
    </div>
  ));
}

function Values({ fields, units }: { fields: readonly Field[]; units: Units }) {
  return (
    <dl className="figures">
      {fields.map((field) => (
        <div key={field.path.join('.')} data-long={field.kind === 'text'} title={field.help}>
          <dt className={field.label === 'Step' ? 'sr-only' : undefined}>{field.label}</dt>
          <dd>{sayValue(field, units)}</dd>
        </div>
      ))}
    </dl>
  );
}

const sayValue = (field: Field, units: Units) =>
  (field.kind === 'toggle' ? (field.value === true ? 'yes' : 'no') : formatField(field, units)) || 'not known';
