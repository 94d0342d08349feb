import { createPen, elideText, LETTER, WIDTH } from '../../drawing';
import { readFigure } from '../../rules';
import type { PlacedRun, Scene } from '../../scene';
import { needAirflow, totalExhaustFigure } from '../../topics/air';
import { type Formatter, fromSI, roundToSum, shownUnit, toSI } from '../../units';
import { type Block, drawHeading, HEADING_HEIGHT, LINE_HEIGHT, NO_BLOCK } from '../block';

interface Row {
  label: string;
  /** As it is printed: whole, in the unit that is shown; null: not known. */
  airflow: number | null;
  isSum?: boolean;
}

const SUM_GAP = 1.4;

/**
 * The schedule of air that authorities ask for on the drawing (NYC Mechanical Code 508.1.2): what is drawn out, what is blown in
 * and what comes from the rooms about it. Only where something draws or blows air.
 */
export function createAirBalanceBlock(scene: Scene, f: Formatter, width: number): Block {
  const rows = listRows(scene, f);
  if (rows.length === 0) return NO_BLOCK;
  const sums = rows.filter(({ isSum }) => isSum).length;
  return {
    height: HEADING_HEIGHT + rows.length * LINE_HEIGHT + sums * SUM_GAP,
    draw: (x, y) => {
      let top = y + HEADING_HEIGHT;
      const drawn = rows.flatMap((row) => {
        top += row.isSum ? SUM_GAP : 0;
        const prims = drawRow(row, f, x, top, width);
        top += LINE_HEIGHT;
        return prims;
      });
      return [...drawHeading('Air balance', x, y, width), ...drawn];
    },
  };
}

const VALUE_WIDTH = 18;

function drawRow({ label, airflow, isSum = false }: Row, f: Formatter, x: number, y: number, width: number) {
  const pen = createPen('notes');
  const weight = isSum ? 'semibold' : 'regular';
  const value = airflow === null ? 'not known' : f.airflow(toSI(airflow, shownUnit('airflow', f.units)));
  const rule = y - SUM_GAP / 2 + 0.4;
  const words = elideText(label, { size: LETTER.text, width: width - VALUE_WIDTH, weight });
  return [
    ...(isSum
      ? [
          pen.line(
            [
              { x, y: rule },
              { x: x + width, y: rule },
            ],
            { stroke: 'hairline', width: WIDTH.narrow },
          ),
        ]
      : []),
    pen.text({ x, y: y + 3 }, words, LETTER.text, { weight }),
    pen.text({ x: x + width, y: y + 3 }, value, LETTER.text, { anchor: 'end', weight }),
  ];
}

/**
 * What draws, all of it together, what is blown in, and what is left for the rooms about it. A reader adds it up, so what is
 * printed adds up: what draws to all of it, and what is left is the difference of the two above it.
 */
function listRows(scene: Scene, f: Formatter): Row[] {
  const { hoods, runs, air } = scene.plan;
  const hasAir = hoods.length > 0 || runs.length > 0 || air.roomExhaust !== null || air.makeUp !== null;
  if (scene.machines.length === 0 || !hasAir) return [];
  const shown = (airflowM3s: number | null) => (airflowM3s === null ? null : fromSI(airflowM3s, shownUnit('airflow', f.units)));
  const whole = (airflowM3s: number | null) => roundIfKnown(shown(airflowM3s));
  const drawn = roundTogether(
    [...hoods.map(({ exhaust }) => exhaust), ...scene.runs.map((placed) => airflowOf(scene, placed)), air.roomExhaust].map(shown),
  );
  const [all, makeUp] = [whole(totalExhaustOf(scene)), whole(air.makeUp)];
  const left = all === null || makeUp === null ? null : all - makeUp;
  const tempered = air.makeUpC === null ? '' : ` at ${f.temperature(air.makeUpC)}`;
  const mark = (id: string) => scene.marks[id] ?? '';
  return [
    ...hoods.flatMap(({ id, cavityAir }, i) => {
      const row: Row = { label: `Drawn by hood ${mark(id)}`.trim(), airflow: drawn[i] ?? null };
      return (cavityAir ?? 0) > 0 ? [row, { label: 'of it blown into the hood', airflow: whole(cavityAir) }] : [row];
    }),
    ...runs.map(({ id }, i): Row => ({ label: `Drawn by run ${mark(id)}`.trim(), airflow: drawn[hoods.length + i] ?? null })),
    { label: 'General exhaust of the room', airflow: drawn.at(-1) ?? null },
    { label: 'Drawn out in all', airflow: all, isSum: true },
    { label: `Make-up air${tempered}`, airflow: makeUp },
    left !== null && left < 0
      ? { label: 'Pressed out to the next rooms', airflow: -left, isSum: true }
      : { label: 'From next rooms and cracks', airflow: left, isSum: true },
  ];
}

const roundIfKnown = (amount: number | null) => (amount === null ? null : Math.round(amount));

/** Rounded so that they add up where all are known; each by itself where there is no sum. */
function roundTogether(amounts: readonly (number | null)[]): (number | null)[] {
  const known = amounts.filter((amount) => amount !== null);
  return known.length === amounts.length ? roundToSum(known) : amounts.map(roundIfKnown);
}

const totalExhaustOf = (scene: Scene): number | null => readFigure(totalExhaustFigure, scene)[0]?.value ?? null;

/** What the run must carry, as its figures take it. */
function airflowOf(scene: Scene, placed: PlacedRun): number | null {
  const airflow = needAirflow(scene, placed);
  return 'known' in airflow ? airflow.known : null;
}
