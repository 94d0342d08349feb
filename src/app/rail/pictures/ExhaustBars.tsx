import { useId } from 'react';
import { type FigureReading } from '../../../rules';
import { partWords } from '../../../text';
import type { Formatter } from '../../../units';

const ROW = 22;
const WORDS = 112;
const BAR = 108;

/** Exhaust of one hood under each rule, side by side; the one that governs is filled, the others hatched, the way of design that is no rule only outlined. */
export function ExhaustBars({ readings, format }: { readings: readonly FigureReading[]; format: Formatter }) {
  const hatch = useId();
  const rows = readings.flatMap((reading) => (reading.value === null ? [] : [{ ...reading, value: reading.value }]));
  if (rows.length < 2) return null;
  const most = Math.max(...rows.map(({ value }) => value));
  const said = rows.map((row) => `${words(row)} ${format.airflow(row.value)}${row.governs ? ', governs' : ''}`).join('; ');
  return (
    <figure className="chart">
      <svg viewBox={`0 0 280 ${rows.length * ROW + 2}`} role="img" aria-label={`Exhaust under each rule: ${said}.`}>
        <defs>
          <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <line x1="0" y1="0" x2="0" y2="5" stroke="var(--air)" strokeWidth="1.4" />
          </pattern>
        </defs>
        {rows.map((row, i) => (
          <g key={row.part} fontWeight={row.governs ? 600 : 400}>
            <text x="0" y={i * ROW + 15}>
              {words(row)}
            </text>
            <rect
              x={WORDS}
              y={i * ROW + 4}
              width={(row.value / most) * BAR}
              height={ROW - 8}
              fill={row.governs ? 'var(--air)' : row.part === 'capture' ? 'none' : `url(#${hatch})`}
              stroke="var(--air)"
              strokeDasharray={row.part === 'capture' ? '3 3' : undefined}
            />
            <text x={WORDS + (row.value / most) * BAR + 6} y={i * ROW + 15}>
              {format.airflow(row.value)}
            </text>
          </g>
        ))}
      </svg>
      <figcaption className="keys">
        <span>{rows.some(({ governs }) => governs) ? 'The filled bar governs.' : 'None of them governs yet.'}</span>
      </figcaption>
    </figure>
  );
}

const words = ({ part = '' }: FigureReading) => partWords(part);
