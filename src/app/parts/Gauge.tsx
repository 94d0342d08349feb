import { useId } from 'react';
import { measureWords, RELATION_WORDS } from '../../drawing';
import type { Finding } from '../../rules';
import type { Formatter } from '../../units';

/**
 * A bar with the limit as a notch and the measured value as a needle. The bad side of the limit is
 * hatched, so that the eye sees on which side the needle stands. Only for numbers.
 */
export function Gauge({ finding, format }: { finding: Finding; format: Formatter }) {
  const hatch = useId();
  const { measured, limit, watchLimit, relation, unit, verdict, group } = finding;
  if (typeof measured !== 'number' || typeof limit !== 'number' || !Number.isFinite(measured)) return null;
  const scale = deriveScale(measured, limit, watchLimit);
  // The limit that is spoken of: the stricter one once the other holds.
  const spoken = verdict !== 'stop' && watchLimit !== null ? watchLimit : limit;
  const badFrom = relation === 'at-most' ? scale(limit) : 0;
  const badTo = relation === 'at-most' ? 100 : scale(limit);
  const needle = scale(measured);
  return (
    <span className="gauge">
      <svg viewBox="0 0 100 16" preserveAspectRatio="none" aria-hidden="true">
        <defs>
          <pattern id={hatch} width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <line x1="0" y1="0" x2="0" y2="4" stroke="var(--stop)" strokeWidth="1" opacity=".55" />
          </pattern>
        </defs>
        <rect x="0" y="5" width="100" height="6" fill="var(--soft)" />
        {relation !== 'equals' && <rect x={badFrom} y="5" width={Math.max(0, badTo - badFrom)} height="6" fill={`url(#${hatch})`} />}
        <Stroke x={scale(limit)} from={2} to={14} hue="var(--ink)" width={1.5} />
        {watchLimit !== null && <Stroke x={scale(watchLimit)} from={4} to={12} hue="var(--watch)" width={1.5} />}
        <Stroke x={needle} from={0} to={16} hue={`var(--${verdict})`} width={3} />
      </svg>
      <span>
        <b>{measureWords(measured, unit, format, group)}</b> · {RELATION_WORDS[relation]} {measureWords(spoken, unit, format, group)}
      </span>
    </span>
  );
}

function Stroke({ x, from, to, hue, width }: { x: number; from: number; to: number; hue: string; width: number }) {
  return <line x1={x} x2={x} y1={from} y2={to} stroke={hue} strokeWidth={width} vectorEffect="non-scaling-stroke" />;
}

/** Puts the limit near the middle and keeps the value on the bar. Percent of the bar's length. */
function deriveScale(measured: number, limit: number, watchLimit: number | null) {
  const low = Math.min(0, measured, limit);
  const high = Math.max(measured, limit, watchLimit ?? limit, low + 1e-9);
  const reach = high - low;
  const from = low < 0 ? low - 0.08 * reach : 0;
  const to = high + 0.18 * reach;
  return (value: number) => ((value - from) / (to - from)) * 100;
}
