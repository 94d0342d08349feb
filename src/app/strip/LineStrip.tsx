import { insertStation } from '../../editor';
import { deriveWorstVerdict, type Finding } from '../../rules';
import type { Line, Station, StationKind } from '../../scene';
import type { Formatter } from '../../units';
import { capital } from '../parts/capital';
import { Mark } from '../parts/Mark';
import { Menu } from '../parts/Menu';
import { actions } from '../store/actions';
import { chosenLine } from '../store/chosenLine';
import { update, useApp } from '../store/store';
import { useFormat, usePanelWork } from '../store/work';

/** The spine of the program: the stations as a rack meets them, each with its length in racks and its verdict. */
export function LineStrip() {
  const { scene, findings } = usePanelWork();
  const format = useFormat();
  const chosen = useApp((s) => s.editor.selection);
  const line = chosenLine(scene, chosen);
  if (!line) return <NoLine />;
  return (
    <nav className="strip" aria-label="The line, from drop-off to storage">
      <ol>
        {line.stations.map((station, index) => (
          <li key={`${station.kind}-${index}`}>
            {index > 0 && <AddHere line={line} after={index} />}
            <StationPress
              line={line}
              station={station}
              findings={findings}
              format={format}
              isChosen={station.subject !== null && chosen.includes(station.subject)}
            />
          </li>
        ))}
      </ol>
    </nav>
  );
}

function StationPress(props: { line: Line; station: Station; findings: readonly Finding[]; format: Formatter; isChosen: boolean }) {
  const { line, station, findings, format, isChosen } = props;
  const { subject } = station;
  const about = subjectsOf(line, station);
  const own = findings.filter((f) => f.subjects.some((id) => about.includes(id)));
  const verdict = deriveWorstVerdict(own);
  const isWhole = useApp((s) => s.loadedChecks === 'all');
  return (
    <button
      type="button"
      className="station"
      data-side={sideOf(station.kind)}
      data-absent={subject === null}
      data-station={station.kind}
      aria-pressed={isChosen}
      onClick={() => actions.select(subject === null ? [] : [subject])}
    >
      <span className="name">
        {own.length > 0 && (isWhole || verdict !== 'clear') && <Mark verdict={verdict} size={12} />}
        {capital(STATION_NAMES[station.kind])}
      </span>
      <span className="much">{muchOf(station, format)}</span>
    </button>
  );
}

/** What a station's verdict is about: itself, and for a landing the table that it is a part of. */
function subjectsOf({ soiled, clean }: Line, { kind, subject }: Station): string[] {
  const table = { 'soiled-landing': soiled, 'clean-landing': clean }[kind as string]?.table.id;
  return [subject, table].filter((id) => id !== null && id !== undefined);
}

function muchOf({ subject, racks, length }: Station, format: Formatter): string {
  if (subject === null) return 'none';
  const parts = [racks === null ? '' : `${racks} ${racks === 1 ? 'rack' : 'racks'}`, length === null ? '' : format.length(length)];
  return parts.filter(Boolean).join(' · ') || '\u00a0';
}

/** The ring between two stations: adds one there. */
function AddHere({ line, after }: { line: Line; after: number }) {
  const before = line.stations[after - 1];
  const absent = line.stations.filter((s) => s.subject === null).map((s) => s.kind);
  const choices = [...new Set<StationKind>([...absent, ...ADDABLE])];
  const title = `Add a station after ${STATION_NAMES[before?.kind ?? 'drop-off']}`;
  return (
    <Menu
      className="add-here"
      title={title}
      label={<span>+</span>}
      groups={[
        {
          title,
          entries: choices.map((kind) => ({
            label: capital(STATION_NAMES[kind]),
            run: () => actions.run((plan) => insertStation(plan, line.machine.machine.id, kind, before?.kind ?? null)),
          })),
        },
      ]}
    />
  );
}

const ADDABLE: readonly StationKind[] = ['scrap', 'pre-rinse', 'drop-off', 'soiled-landing', 'clean-landing'];

function NoLine() {
  return (
    <nav className="strip" aria-label="The line">
      <div className="none">
        <span className="quiet">No machine in this room yet.</span>
        <button type="button" className="press" onClick={() => update({ page: 'start' })}>
          Begin with a line
        </button>
      </div>
    </nav>
  );
}

const STATION_NAMES: Record<StationKind, string> = {
  'drop-off': 'drop-off',
  scrap: 'scrap',
  'pre-rinse': 'pre-rinse',
  'soiled-landing': 'soiled landing',
  machine: 'machine',
  'clean-landing': 'clean landing',
  storage: 'storage',
};

/** On which side of the machine a station lies. */
function sideOf(kind: StationKind): 'soiled' | 'machine' | 'clean' {
  if (kind === 'machine') return 'machine';
  return kind === 'clean-landing' || kind === 'storage' ? 'clean' : 'soiled';
}
