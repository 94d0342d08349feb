import { deriveFigures, FIGURE_GROUPS, FIGURES, type Figure, figureWords, type How } from '../../figures';
import type { Formatter } from '../../units';
import { rememberLast } from '../parts/rememberLast';
import { useApp } from '../store/store';
import { useFormat, usePanelWork } from '../store/work';
import { AskField } from './AskField';
import { MachineFigures } from './MachineFigures';

/** The figures of what is chosen, or of the plan as a whole: each a number that can be opened to how it was computed. Under a machine's, its data sheet. */
export function Figures() {
  const { scene } = usePanelWork();
  const format = useFormat();
  const [id] = useApp((s) => s.editor.selection);
  const machine = scene.machines.find((placed) => placed.machine.id === id);
  const figures = figuresOf(scene, FIGURES).filter(({ subjects: [first] }) => first === id);
  return (
    <>
      <FigureGroups figures={figures} format={format} />
      {machine && <MachineFigures placed={machine} scene={scene} />}
    </>
  );
}

function FigureGroups({ figures, format }: { figures: readonly Figure[]; format: Formatter }) {
  return FIGURE_GROUPS.filter((group) => figures.some((f) => f.group === group)).map((group) => (
    <section key={group} className="group">
      <h3>Figures: {group}</h3>
      {figures
        .filter((f) => f.group === group)
        .map((figure) => (
          <FigureEntry key={figure.id} figure={figure} format={format} />
        ))}
    </section>
  ));
}

const figuresOf = rememberLast(deriveFigures);

function FigureEntry({ figure, format }: { figure: Figure; format: Formatter }) {
  const { title, part, value, unit, group, note, ask, refusal, how } = figure;
  return (
    <details className="figure" data-figure={figure.figure}>
      <summary>
        <span>
          {title}
          {part && <span className="quiet"> · {part.replaceAll('-', ' ')}</span>}
        </span>
        <b>{value === null ? '—' : figureWords(value, unit, format, group)}</b>
      </summary>
      {note && <p>{note}</p>}
      {refusal && <p>Not computed: {refusal}.</p>}
      {ask && <AskField ask={ask} />}
      {how && <HowComputed how={how} format={format} group={group} />}
    </details>
  );
}

function HowComputed({ how, format, group }: { how: How; format: Formatter; group: Figure['group'] }) {
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
