import { needAirflow, readingsOf } from '../../../figures';
import type { Run } from '../../../plan';
import type { Scene } from '../../../scene';
import type { Formatter } from '../../../units';
import { LETTER, WIDTH } from '../../support/ink';
import { createPen } from '../../support/pen';
import { elideText } from '../../text/wrapText';
import { type Block, drawHeading, HEADING_HEIGHT, LINE_HEIGHT, NO_BLOCK } from '../block';

interface Row {
  label: string;
  /** m³/s; null: not known. */
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
  const value = airflow === null ? 'not known' : f.airflow(airflow);
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

/** What draws, all of it together, what is blown in, and what is left for the rooms about it. */
function listRows(scene: Scene, f: Formatter): Row[] {
  const { hoods, runs, air } = scene.plan;
  const hasAir = hoods.length > 0 || runs.length > 0 || air.roomExhaust !== null || air.makeUp !== null;
  if (scene.appliances.length === 0 || !hasAir) return [];
  const transfer = valueOf(scene, 'transfer-air');
  const tempered = air.makeUpC === null ? '' : ` at ${f.temperature(air.makeUpC)}`;
  return [
    ...hoods.flatMap((hood) => {
      const drawn: Row = { label: `Drawn by hood ${scene.marks[hood.id] ?? ''}`.trim(), airflow: hood.exhaust };
      return (hood.cavityAir ?? 0) > 0 ? [drawn, { label: 'of it blown into the hood', airflow: hood.cavityAir }] : [drawn];
    }),
    ...runs.map((run): Row => ({ label: `Drawn by run ${scene.marks[run.id] ?? ''}`.trim(), airflow: airflowOf(scene, run) })),
    { label: 'General exhaust of the room', airflow: air.roomExhaust },
    { label: 'Drawn out in all', airflow: valueOf(scene, 'total-exhaust'), isSum: true },
    { label: `Make-up air${tempered}`, airflow: air.makeUp },
    transfer !== null && transfer < 0
      ? { label: 'Pressed out to the next rooms', airflow: -transfer, isSum: true }
      : { label: 'From next rooms and cracks', airflow: transfer, isSum: true },
  ];
}

const valueOf = (scene: Scene, figure: string): number | null => readingsOf(scene, figure)[0]?.value ?? null;

/** What the run must carry, as its figures take it. */
function airflowOf(scene: Scene, run: Run): number | null {
  const airflow = needAirflow(scene, { run });
  return 'known' in airflow ? airflow.known : null;
}
