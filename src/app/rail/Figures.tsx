import type { Machine } from '../../plan';
import { type Derivation, deriveFigures, FIGURE_GROUPS, type Figure, type FigureGroup, readFigure } from '../../rules';
import type { Scene } from '../../scene';
import { figureWords, notesWords, partWords, refusalWords } from '../../text';
import { deriveFanPicture } from '../../topics/duct';
import { deriveHeatUnitsPicture } from '../../topics/heat';
import { hoodExhaustFigure } from '../../topics/hood';
import { deriveLiftPictures } from '../../topics/people';
import { FIGURES } from '../../topics/registry';
import type { Formatter } from '../../units';
import { rememberLast } from '../parts/rememberLast';
import { update, useApp } from '../store/store';
import { useFormat, usePanelWork } from '../store/work';
import { AskField } from './AskField';
import { MachineFigures } from './MachineFigures';
import { PlateRecord } from './PlateRecord';
import { ExhaustBars } from './pictures/ExhaustBars';
import { FanPicture } from './pictures/FanPicture';
import { HeatUnitsPicture } from './pictures/HeatUnitsPicture';
import { LiftBars } from './pictures/LiftBars';

/**
 * The figures of what is chosen, or of the plan as a whole: each a number that can be opened to how it was computed, with a
 * picture where one helps. Under a machine's, its data sheet.
 */
export function Figures() {
  const { scene } = usePanelWork();
  const format = useFormat();
  const [id] = useApp((s) => s.editor.selection);
  const machine = scene.machines.find((placed) => placed.machine.id === id);
  const figures = figuresOf(scene, FIGURES).filter(({ subjects: [first] }) => first === id);
  return (
    <>
      {machine && figures.some(({ figure }) => figure === 'heat-units') && <Record key={machine.machine.id} machine={machine.machine} />}
      {FIGURE_GROUPS.filter((group) => figures.some((f) => f.group === group)).map((group) => (
        <section key={group} className="group">
          <h3>Figures: {group}</h3>
          {id !== undefined && <Picture scene={scene} id={id} group={group} format={format} />}
          {figures
            .filter((f) => f.group === group)
            .map((figure) => (
              <FigureEntry key={figure.id} figure={figure} format={format} />
            ))}
        </section>
      ))}
      {machine && <MachineFigures placed={machine} scene={scene} />}
    </>
  );
}

/** What a plate's thermometer showed, folded. */
function Record({ machine }: { machine: Machine }) {
  const { length } = machine.hookUp.plateRecord;
  return (
    <details className="group">
      <summary>
        Temperatures at a plate <span>{length === 0 ? 'not known' : `${length} readings`}</span>
      </summary>
      <PlateRecord machine={machine.id} label="What a plate’s thermometer showed over one cycle" />
    </details>
  );
}

/** The picture that belongs to a group of a thing's figures; nothing where none does, or where its inputs are missing. */
function Picture({ scene, id, group, format }: { scene: Scene; id: string; group: FigureGroup; format: Formatter }) {
  if (group === 'air') {
    const fan = deriveFanPicture(scene, id);
    if (fan) return <FanPicture data={fan} format={format} />;
    const exhaust = readFigure(hoodExhaustFigure, scene).filter(({ subjects: [hood] }) => hood === id);
    return exhaust.length > 0 ? <ExhaustBars readings={exhaust} format={format} /> : null;
  }
  if (group === 'people') return deriveLiftPictures(scene, id).map((lift) => <LiftBars key={lift.id} lift={lift} format={format} />);
  const heat = group === 'heat' ? deriveHeatUnitsPicture(scene, id) : null;
  return heat && <HeatUnitsPicture data={heat} format={format} />;
}

const figuresOf = rememberLast(deriveFigures);

function FigureEntry({ figure, format }: { figure: Figure; format: Formatter }) {
  const { title, part, value, unit, group, ask, refusal, how } = figure;
  const note = notesWords(figure, format);
  return (
    <details className="figure" data-figure={figure.figure}>
      <summary>
        <span>
          {title}
          {part && <span className="quiet"> · {partWords(part)}</span>}
        </span>
        <b>{value === null ? '—' : figureWords(value, unit, format, group)}</b>
      </summary>
      {note && <p>{note}</p>}
      {refusal && <p>Not computed: {refusalWords(refusal, format, group)}.</p>}
      {ask && <AskField ask={ask} />}
      {how && <HowComputed how={how} format={format} group={group} />}
      <button type="button" className="how" onClick={() => update({ pane: 'manual', entry: `figure/${figure.figure}` })}>
        In the manual
      </button>
    </details>
  );
}

function HowComputed({ how, format, group }: { how: Derivation; format: Formatter; group: Figure['group'] }) {
  return (
    <>
      <p className="formula">{how.formula}</p>
      <dl className="figures">
        {how.inputs.map(({ name, value, unit }, i) => (
          <div key={`${name}-${i}`}>
            <dt>{name}</dt>
            <dd>{figureWords(value, unit, format, group)}</dd>
          </div>
        ))}
      </dl>
      {how.source.map(({ text, confidence }) => (
        <p key={text} className="quiet">
          {CONFIDENCE[confidence]}
          {text}
        </p>
      ))}
    </>
  );
}

const CONFIDENCE = {
  read: 'Source: ',
  secondary: 'As restated: ',
  memory: 'From memory, unchecked: ',
  practice: 'Common practice: ',
  geometry: '',
} as const;
