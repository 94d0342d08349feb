import { convertConfiguration, swapHand } from '../../editor';
import type { PlacedMachine, Scene } from '../../scene';
import { actions } from '../store/actions';
import { useFormat } from '../store/work';
import { DataSheetFold } from './DataSheetFold';

/** What the data sheet says of the machine, its connections, and the conversion done on site. */
export function MachineFigures({ placed, scene }: { placed: PlacedMachine; scene: Scene }) {
  const format = useFormat();
  const { sheet, machine } = placed;
  const configuration = scene.lines.find((l) => l.machine.machine.id === machine.id)?.configuration;
  const isCorner = configuration?.kind === 'corner';
  const steps = isCorner ? sheet.conversion.toStraight : sheet.conversion.toCorner;
  return (
    <>
      <section className="group">
        <h3>Line</h3>
        <div className="actions">
          {(['straight', 'left-front', 'right-front'] as const).map((to) => (
            <button
              key={to}
              type="button"
              className="press"
              aria-pressed={keyOf(configuration) === to}
              onClick={() => actions.run((plan) => convertConfiguration(plan, machine.id, to))}
            >
              {CONFIGURATION_WORDS[to]}
            </button>
          ))}
          <button type="button" className="press" onClick={() => actions.run((plan) => swapHand(plan, machine.id))}>
            Swap the hand
          </button>
        </div>
      </section>
      <section className="group">
        <h3>Main sizes</h3>
        <dl className="figures">
          <dt>Footprint</dt>
          <dd>
            {format.length(sheet.width)} × {format.length(sheet.depth)}
          </dd>
          <dt>Height, doors open</dt>
          <dd>{format.length(sheet.doorLiftHeight)}</dd>
          <dt>Clear opening</dt>
          <dd>{format.length(sheet.clearOpening)}</dd>
          <dt>Rack track above the floor</dt>
          <dd>{format.length(sheet.deckHeight)}</dd>
          <dt>Cycle with changing racks</dt>
          <dd>{sheet.cycle.washS + sheet.cycle.rinseS + sheet.cycle.dwellS + sheet.cycle.loadS} s</dd>
        </dl>
      </section>
      <DataSheetFold />
      <section className="group">
        <h3>Connections</h3>
        <dl className="figures">
          {placed.connections.map(({ connection, point }) => (
            <FigureRow
              key={connection.id}
              name={connection.kind.replaceAll('-', ' ')}
              value={`${format.length(point.z)} above the floor`}
              note={connection.note}
            />
          ))}
        </dl>
        <p className="caution">
          Preliminary. The connection plate inside the control compartment governs; a licensed electrician and plumber decide.
        </p>
      </section>
      <details className="group">
        <summary>{isCorner ? 'Conversion on site to straight-through' : 'Conversion on site to a corner'}</summary>
        <ol className="steps">
          {steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </details>
    </>
  );
}

function FigureRow({ name, value, note }: { name: string; value: string; note: string }) {
  return (
    <>
      <dt title={note}>{name}</dt>
      <dd>{value}</dd>
    </>
  );
}

const CONFIGURATION_WORDS = {
  straight: 'Straight',
  'left-front': 'Corner, left and front',
  'right-front': 'Corner, right and front',
} as const;

function keyOf(configuration: Scene['lines'][number]['configuration'] | undefined) {
  if (configuration?.kind === 'straight') return 'straight';
  return configuration?.kind === 'corner' ? (`${configuration.side}-front` as const) : null;
}
