import { useId } from 'react';
import type { HeatUnitsPicture as HeatData } from '../../../topics/heat';
import { type Formatter, formatNumber, fromSI, shownUnit, UNITS } from '../../../units';
import { Axes, type Frame, placeIn } from './Axes';
import { type ChartScale, createScale } from './chartScale';

const ABOVE: Frame = { left: 40, top: 24, width: 232, height: 78 };
const BELOW: Frame = { left: 40, top: 132, width: 232, height: 78 };

/** What a plate felt over one cycle, and the heat units that it gathered, against what a cycle must gather. */
export function HeatUnitsPicture({ data, format }: { data: HeatData; format: Formatter }) {
  const hatch = useId();
  const unit = shownUnit('temperature', format.units);
  const temps = data.record.map(({ at, tempC }): Pair => [at, fromSI(tempC, unit)]);
  const units = data.total.map(({ at, units: sum }): Pair => [at, sum]);
  const time = createScale(
    temps.map(([at]) => at),
    4,
  );
  const heat = createScale(
    temps.map(([, temp]) => temp),
    3,
    null,
  );
  const sum = createScale([...units.map(([, value]) => value), data.needed], 3);
  const line = placeIn(BELOW, time, sum)(0, data.needed).y;
  const area = linePath(units, BELOW, time, sum);
  const foot = BELOW.top + BELOW.height;
  const ends = [units[0], units.at(-1)].map((p) => (p ? placeIn(BELOW, time, sum)(p[0], 0).x : 0));
  const gathered = units.at(-1)?.[1] ?? 0;
  return (
    <figure className="chart">
      <svg viewBox="0 0 280 248" role="img" aria-label={describe(data, gathered, format)}>
        <defs>
          <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <line x1="0" y1="0" x2="0" y2="5" stroke="var(--water)" strokeWidth="1.4" />
          </pattern>
        </defs>
        <Axes frame={ABOVE} x={null} y={{ scale: heat, label: `at the plate, ${UNITS[unit].symbol}` }} />
        <path d={linePath(temps, ABOVE, time, heat)} fill="none" stroke="var(--soiled)" strokeWidth="2" />
        <Axes frame={BELOW} x={{ scale: time, label: 'seconds' }} y={{ scale: sum, label: 'heat units gathered' }} />
        <path d={`${area}L${ends[1]} ${foot}L${ends[0]} ${foot}Z`} fill={`url(#${hatch})`} />
        <path d={area} fill="none" stroke="var(--water)" strokeWidth="2" />
        <line
          x1={BELOW.left}
          x2={BELOW.left + BELOW.width}
          y1={line}
          y2={line}
          stroke="var(--ink)"
          strokeWidth="1.5"
          strokeDasharray="2 3"
        />
      </svg>
      <figcaption className="keys">
        <span>
          Gathered {formatNumber(gathered, 0)}; a cycle needs {formatNumber(data.needed, 0)}, the dotted line.
        </span>
      </figcaption>
    </figure>
  );
}

type Pair = readonly [x: number, y: number];

function linePath(points: readonly Pair[], frame: Frame, x: ChartScale, y: ChartScale): string {
  const at = placeIn(frame, x, y);
  return points
    .map(([px, py], i) => {
      const p = at(px, py);
      return `${i === 0 ? 'M' : 'L'}${p.x.toFixed(1)} ${p.y.toFixed(1)}`;
    })
    .join('');
}

function describe({ record, needed }: HeatData, gathered: number, format: Formatter): string {
  const hottest = Math.max(...record.map(({ tempC }) => tempC));
  const last = record.at(-1)?.at ?? 0;
  return `Temperatures at the plate over ${formatNumber(last, 0)} s, ${format.temperature(hottest)} at most, and the heat units that they gather: ${formatNumber(gathered, 0)} of the ${formatNumber(needed, 0)} that a cycle needs.`;
}
