import type { FanPicture as FanData, FanPicturePoint } from '../../../topics/duct';
import { type Formatter, formatQuantity, fromSI, shownUnit, UNITS } from '../../../units';
import { Axes, type Frame, placeIn } from './Axes';
import { createScale } from './chartScale';

const FRAME: Frame = { left: 40, top: 24, width: 232, height: 122 };

/** The fan's curve, the run's, and where they meet: there the fan runs. The upright dashes are the air that the run must carry. */
export function FanPicture({ data, format }: { data: FanData; format: Formatter }) {
  const [air, airPressure] = [shownUnit('airflow', format.units), shownUnit('air-pressure', format.units)];
  const show = ({ airflow, pressure }: FanPicturePoint) => ({ x: fromSI(airflow, air), y: fromSI(pressure, airPressure) });
  const [fan, system] = [data.fan.map(show), data.system.map(show)];
  const needed = show(data.needed);
  const all = [...fan, ...system, needed];
  const x = createScale(
    all.map((p) => p.x),
    4,
  );
  const y = createScale(
    [...fan, ...system].map((p) => p.y),
    4,
  );
  const at = placeIn(FRAME, x, y);
  const path = (points: readonly { x: number; y: number }[]) =>
    points.map((p, i) => `${i === 0 ? 'M' : 'L'}${pair(at(p.x, p.y))}`).join('');
  const point = data.point && show(data.point);
  const spot = point && at(point.x, point.y);
  const neededX = at(needed.x, 0).x;
  return (
    <figure className="chart">
      <svg viewBox="0 0 280 182" role="img" aria-label={describe(data, format)}>
        <Axes
          frame={FRAME}
          x={{ scale: x, label: `airflow, ${UNITS[air].symbol}` }}
          y={{ scale: y, label: `pressure, ${UNITS[airPressure].symbol}` }}
        />
        <line x1={neededX} x2={neededX} y1={FRAME.top} y2={FRAME.top + FRAME.height} stroke="var(--ink)" strokeDasharray="2 3" />
        <path d={path(system)} fill="none" stroke="var(--second)" strokeWidth="2" strokeDasharray="7 4" />
        <path d={path(fan)} fill="none" stroke="var(--air)" strokeWidth="2" />
        {fan.map((p) => {
          const dot = at(p.x, p.y);
          return <circle key={p.x} cx={dot.x} cy={dot.y} r="2.4" fill="var(--air)" />;
        })}
        {spot && <circle cx={spot.x} cy={spot.y} r="5.5" fill="var(--sheet)" stroke="var(--ink)" strokeWidth="2" />}
        {spot && <circle cx={spot.x} cy={spot.y} r="1.8" fill="var(--ink)" />}
      </svg>
      <figcaption className="keys">
        <Key dash="" hue="var(--air)" words="fan" />
        <Key dash="7 4" hue="var(--second)" words="run" />
        <Key dash="2 3" hue="var(--ink)" words={`needed, ${format.airflow(data.needed.airflow)}`} />
        <span>
          {data.point
            ? `Runs at ${format.airflow(data.point.airflow)}, ${formatQuantity(data.point.pressure, 'air-pressure', format.units)}.`
            : 'The two curves do not meet.'}
        </span>
      </figcaption>
    </figure>
  );
}

/** A line of the picture and what it is. */
function Key({ dash, hue, words }: { dash: string; hue: string; words: string }) {
  return (
    <span className="key">
      <svg width="24" height="8" aria-hidden="true">
        <line x1="0" x2="24" y1="4" y2="4" stroke={hue} strokeWidth="2" strokeDasharray={dash} />
      </svg>
      {words}
    </span>
  );
}

const pair = ({ x, y }: { x: number; y: number }) => `${x.toFixed(1)} ${y.toFixed(1)}`;

function describe({ fan, point, needed }: FanData, format: Formatter): string {
  const ends = [fan[0], fan.at(-1)].map((p) =>
    p ? `${format.airflow(p.airflow)} at ${formatQuantity(p.pressure, 'air-pressure', format.units)}` : '',
  );
  const meets = point
    ? `They meet at ${format.airflow(point.airflow)} and ${formatQuantity(point.pressure, 'air-pressure', format.units)}.`
    : 'They do not meet.';
  return `Curves of fan and run. The fan goes from ${ends.join(' to ')}. ${meets} The run must carry ${format.airflow(needed.airflow)}.`;
}
