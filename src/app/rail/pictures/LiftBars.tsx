import { useId } from 'react';
import type { LiftPicture } from '../../../topics/people';
import { type Formatter, formatNumber } from '../../../units';

const ROW = 18;
/** Words in front, the bar of 1, and where its number stands. */
const [WORDS, BAR, NUMBER] = [134, 108, 250];
/** A bar of 0 is still seen. */
const LEAST = 0.5;

/** What each multiplier of a lift leaves, as bars of 0 to 1; the one that costs most is filled, the others hatched. */
export function LiftBars({ lift, format }: { lift: LiftPicture; format: Formatter }) {
  const hatch = useId();
  const title = `${ENDS[lift.part]} at ${format.length(lift.height)}`;
  return (
    <figure className="chart">
      <svg viewBox={`0 0 280 ${(lift.bars.length + 1) * ROW + 2}`} role="img" aria-label={describe(lift, title, format)}>
        <defs>
          <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <line x1="0" y1="0" x2="0" y2="5" stroke="var(--second)" strokeWidth="1.4" />
          </pattern>
        </defs>
        <g fontWeight="600">
          <text x="0" y="13">
            {title}
          </text>
          <text x="280" y="13" textAnchor="end">
            {format.mass(lift.limitKg)}
          </text>
        </g>
        {lift.bars.map(({ name, value, costsMost }, i) => {
          const top = (i + 1) * ROW;
          return (
            <g key={name} fontWeight={costsMost ? 600 : 400}>
              <text x="0" y={top + 13}>
                {WORDS_OF[name]}
              </text>
              <rect x={WORDS} y={top + 4} width={BAR} height={ROW - 7} fill="none" stroke="var(--hairline)" />
              <rect
                x={WORDS}
                y={top + 4}
                width={Math.max(value * BAR, LEAST)}
                height={ROW - 7}
                fill={costsMost ? 'var(--ink)' : `url(#${hatch})`}
                stroke={costsMost ? 'var(--ink)' : 'var(--second)'}
              />
              <text x={NUMBER} y={top + 13}>
                {formatNumber(value, 2)}
              </text>
            </g>
          );
        })}
      </svg>
      <figcaption className="keys">
        <span>{sum(lift, format)}</span>
      </figcaption>
    </figure>
  );
}

/** Where the hands are at each end. */
const ENDS: Readonly<Record<LiftPicture['part'], string>> = {
  deck: 'Off the clean table',
  shelf: 'Onto the lowest shelf',
  overshelf: 'Onto the overshelf',
};

const WORDS_OF: Readonly<Record<LiftPicture['bars'][number]['name'], string>> = {
  horizontal: 'how far from the body',
  vertical: 'how high',
  distance: 'how far up or down',
  asymmetry: 'how far turned',
  frequency: 'how often',
  coupling: 'how well held',
};

/** What is left in the end, and what costs most. */
function sum({ bars, loadKg, limitKg }: LiftPicture, format: Formatter): string {
  const most = bars.filter(({ costsMost }) => costsMost).map(({ name }) => WORDS_OF[name]);
  if (limitKg === 0) return `Nobody should lift so. What leaves nothing: ${most.join(' and ')}.`;
  const left = `Of ${format.mass(loadKg)} at best ${format.mass(limitKg)} may be lifted`;
  return most.length === 0 ? `${left}.` : `${left}. What costs most: ${most.join(' and ')}.`;
}

function describe(lift: LiftPicture, title: string, format: Formatter): string {
  const said = lift.bars.map(
    ({ name, value, costsMost }) => `${WORDS_OF[name]} ${formatNumber(value, 2)}${costsMost ? ', costs most' : ''}`,
  );
  return `${title}, multipliers of 0 to 1: ${said.join('; ')}. ${sum(lift, format)}`;
}
