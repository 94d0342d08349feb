import { formatNumber } from '../../../units';
import type { ChartScale } from './chartScale';

/** The field of a chart in its picture's own units, which are about a px at the width of a card. */
export interface Frame {
  left: number;
  top: number;
  width: number;
  height: number;
}

export interface Axis {
  scale: ChartScale;
  /** What it measures, with its unit. */
  label: string;
}

/** Where a pair of values lies in the picture. */
export const placeIn =
  ({ left, top, width, height }: Frame, x: ChartScale, y: ChartScale) =>
  (valueX: number, valueY: number) => ({
    x: left + ((valueX - x.from) / (x.to - x.from)) * width,
    y: top + height - ((valueY - y.from) / (y.to - y.from)) * height,
  });

/** Both axes of a chart with ticks, numbers and words; the upright one's words stand over it, so that nobody need turn the head. */
export function Axes({ frame, x, y }: { frame: Frame; x: Axis | null; y: Axis }) {
  const { left, top, width, height } = frame;
  const foot = top + height;
  const across = (value: number, { from, to }: ChartScale) => left + ((value - from) / (to - from)) * width;
  const up = (value: number, { from, to }: ChartScale) => foot - ((value - from) / (to - from)) * height;
  return (
    <g className="axes">
      {y.scale.ticks.map((tick) => (
        <g key={tick}>
          <line x1={left} x2={left + width} y1={up(tick, y.scale)} y2={up(tick, y.scale)} stroke="var(--hairline)" />
          <text x={left - 5} y={up(tick, y.scale) + 4} textAnchor="end">
            {formatNumber(tick, 2)}
          </text>
        </g>
      ))}
      <text x={0} y={top - 9}>
        {y.label}
      </text>
      <path d={`M${left} ${top}V${foot}H${left + width}`} fill="none" stroke="var(--ink)" />
      {x?.scale.ticks.map((tick) => (
        <g key={tick}>
          <line x1={across(tick, x.scale)} x2={across(tick, x.scale)} y1={foot} y2={foot + 4} stroke="var(--ink)" />
          <text x={across(tick, x.scale)} y={foot + 16} textAnchor="middle">
            {formatNumber(tick, 2)}
          </text>
        </g>
      ))}
      {x && (
        <text x={left + width} y={foot + 31} textAnchor="end">
          {x.label}
        </text>
      )}
    </g>
  );
}
