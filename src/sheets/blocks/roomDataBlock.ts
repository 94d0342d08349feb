import { createPen, LETTER, powerWords, wrapText } from '../../drawing';
import { readFigure } from '../../rules';
import type { Scene } from '../../scene';
import { airChanges, totalExhaustFigure } from '../../topics/air';
import type { Formatter } from '../../units';
import { type Block, drawHeading, HEADING_HEIGHT, LINE_HEIGHT, NO_BLOCK } from '../block';

const LABEL_WIDTH = 20;
const MOST_LINES = 2;

/** What plan reviewers want to read on the drawing beside the equipment: finishes, light, hot water, power and ventilation of the room. */
export function createRoomDataBlock(scene: Scene, f: Formatter, width: number): Block {
  if (scene.machines.length === 0) return NO_BLOCK;
  const column = { size: LETTER.text, width: width - LABEL_WIDTH, maxLines: MOST_LINES };
  const rows = listRows(scene, f).map(([label, text]) => ({ label, lines: wrapText(text, column) }));
  const lines = rows.reduce((sum, row) => sum + row.lines.length, 0);
  return {
    height: HEADING_HEIGHT + lines * LINE_HEIGHT,
    draw: (x, y) => {
      const pen = createPen('notes');
      let top = y + HEADING_HEIGHT + 3;
      const drawn = rows.flatMap(({ label, lines: words }) => {
        const at = top;
        top += words.length * LINE_HEIGHT;
        return [
          pen.text({ x, y: at }, label, LETTER.text, { hue: 'second' }),
          ...words.map((line, i) => pen.text({ x: x + LABEL_WIDTH, y: at + i * LINE_HEIGHT }, line, LETTER.text)),
        ];
      });
      return [...drawHeading('Room', x, y, width), ...drawn];
    },
  };
}

const NOT_KNOWN = 'not known';

/** What is known, after commas; one word where nothing is. */
const join = (...parts: (string | null)[]) => parts.filter((part) => part !== null).join(', ') || NOT_KNOWN;

/** The words for a value, or null where it is not known. */
const when = <T>(value: T | null, words: (value: T) => string): string | null => (value === null ? null : words(value));

function listRows(scene: Scene, f: Formatter): [label: string, text: string][] {
  const { room, finish, supply, pipes } = scene.plan;
  const changes = countChanges(scene);
  return [
    [
      'Floor',
      join(
        f.area(scene.room.areaMm2),
        when(finish.floorCoved, (coved) => (coved ? 'coved to the walls' : 'not coved')) ?? 'cove not known',
        when(finish.floorSlope, (slope) => (slope === 0 ? 'level' : `falls ${f.slope(slope)} to its drain`)),
      ),
    ],
    [
      'Ceiling',
      join(
        when(room.ceilingHeight, (height) => `${f.length(height)} high`) ?? 'height not known',
        when(finish.ceilingWashable, (washable) => (washable ? 'washable' : 'not washable')) ?? 'finish not known',
      ),
    ],
    ['Light', join(when(finish.light, (light) => `${f.illuminance(light)} where ware is washed`))],
    [
      'Hot water',
      join(
        when(supply.hotWaterC, (temperature) => `${f.temperature(temperature)} at the stub`) ?? 'temperature not known',
        when(supply.flowPressureKpa, (pressure) => `${f.pressure(pressure * 1000)} flowing`),
        when(pipes.heaterPower, (power) => `heater ${f.power(power)}`),
        when(pipes.storage, (volume) => `${f.volume(volume)} in store`),
      ),
    ],
    [
      'Power',
      supply.voltage === null ? NOT_KNOWN : supply.phase === null ? f.voltage(supply.voltage) : powerWords(supply.voltage, supply.phase),
    ],
    [
      'Ventilation',
      join(
        when(totalExhaustOf(scene), (airflow) => `${f.airflow(airflow)} drawn out`),
        when(scene.plan.air.makeUp, (airflow) => `${f.airflow(airflow)} made up`),
        when(changes, (count) => `${count.toFixed(0)} air changes an hour`),
      ),
    ],
  ];
}

const totalExhaustOf = (scene: Scene): number | null => readFigure(totalExhaustFigure, scene)[0]?.value ?? null;

/** Air drawn out over the room's volume, 1/h; null while one of them is not known. */
function countChanges(scene: Scene): number | null {
  const airflowM3s = totalExhaustOf(scene);
  const { ceilingHeight, areaMm2 } = scene.room;
  if (airflowM3s === null || ceilingHeight === null) return null;
  const changes = airChanges({ airflowM3s, volumeM3: (areaMm2 * ceilingHeight) / 1e9 });
  return changes.ok ? changes.value : null;
}
