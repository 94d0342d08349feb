import { CHAPTERS, type ManualEntry, type ManualPart } from '../../manual';
import { capital } from '../parts/capital';

interface Props {
  entry: ManualEntry;
  /** All of them, for the titles of links. */
  entries: readonly ManualEntry[];
  open: (id: string) => void;
}

/** One entry of the manual, written out. */
export function EntryText({ entry, entries, open }: Props) {
  return (
    <>
      <p className="quiet">
        {CHAPTERS[entry.kind]} · {capital(entry.group)}
      </p>
      <h3>{entry.title}</h3>
      {entry.parts.map((part, i) => (
        <Part key={`${entry.id} ${i}`} part={part} entries={entries} open={open} />
      ))}
    </>
  );
}

function Part({ part, entries, open }: { part: ManualPart; entries: readonly ManualEntry[]; open: (id: string) => void }) {
  switch (part.kind) {
    case 'text':
      return <p>{part.text}</p>;
    case 'formula':
      return <p className="formula">{part.text}</p>;
    case 'facts':
      return (
        <dl>
          {part.rows.map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      );
    case 'table':
      return <Table part={part} />;
    case 'links':
      return (
        <>
          <h4>{part.title}</h4>
          <ul className="links">
            {part.to.map((id) => (
              <li key={id}>
                <button type="button" className="press" onClick={() => open(id)}>
                  {entries.find((entry) => entry.id === id)?.title ?? id}
                </button>
              </li>
            ))}
          </ul>
        </>
      );
  }
}

/** Columns in which nothing stands are left out. */
function Table({ part }: { part: Extract<ManualPart, { kind: 'table' }> }) {
  const shown = part.head.map((_, column) => part.rows.some((row) => (row[column] ?? '') !== ''));
  const cells = (row: readonly string[]) => row.map((text, column) => ({ text, column })).filter(({ column }) => shown[column]);
  return (
    <>
      <h4>{part.title}</h4>
      <div className="table">
        <table>
          <thead>
            <tr>
              {cells(part.head).map(({ text, column }) => (
                <th key={column} scope="col">
                  {text}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {part.rows.map((row) => (
              <tr key={row.join('|')}>
                {cells(row).map(({ text, column }) => (
                  <td key={column}>{text}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
