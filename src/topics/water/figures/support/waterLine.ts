import { toLocal } from '../../../../geometry';
import { askFor, createMessages, type FigureReading, type FormulaResult, type NoParams } from '../../../../rules';
import { dataSheetPath, type PlacedMachine, type Scene } from '../../../../scene';
import { toSI } from '../../../../units';
import { rinseFlow } from '../../formulas/rinseFlow';
import { feedOf } from './feed';

/** What the inputs are called, and what the length is. */
export interface WaterLineMessages {
  'water-line/ask-connection': NoParams;
  'water-line/ask-cold-water-stub': NoParams;
  'water-line/ask-hot-water-stub': NoParams;
  'water-line/ask-bore': NoParams;
  'water-line/right-angles': NoParams;
}

const message = createMessages<WaterLineMessages>();

/** The way of the water from the nearest stub of its kind to the machine. */
export interface WaterLine {
  stub: string;
  /** At right angles with the machine's sides, up and down included. */
  lengthM: number;
  /** How far it climbs; below 0 when the stub is higher. */
  riseM: number;
}

/** The line of a machine, or the reading that asks for what it lacks: a water connection, or a stub of the right kind. */
export function needWaterLine(scene: Scene, placed: PlacedMachine): { line: WaterLine } | { ask: FigureReading } {
  const { machine, frame, connections } = placed;
  const feed = feedOf(placed);
  const inlet = connections.find(({ connection }) => connection.kind.endsWith('-water'));
  if (inlet === undefined)
    return { ask: askFor([machine.id], message('water-line/ask-connection'), dataSheetPath(scene, placed, 'connections')) };
  const to = toLocal(frame, inlet.point);
  const [nearest] = scene.room.stubs
    .filter(({ stub }) => stub.kind === `${feed}-water`)
    .map(({ stub, point }) => {
      const from = toLocal(frame, point);
      const length = Math.abs(to.x - from.x) + Math.abs(to.y - from.y) + Math.abs(inlet.point.z - point.z);
      return { stub: stub.id, lengthM: length / 1000, riseM: (inlet.point.z - point.z) / 1000 };
    })
    .sort((a, b) => a.lengthM - b.lengthM);
  return nearest === undefined
    ? { ask: askFor([machine.id], message(`water-line/ask-${feed}-water-stub`), ['room', 'stubs']) }
    : { line: nearest };
}

/** Flow of the line while the machine rinses. */
export const lineFlow = ({ sheet }: Pick<PlacedMachine, 'sheet'>): FormulaResult =>
  rinseFlow({ perRackM3: toSI(sheet.rinseWaterL, 'L'), rinseS: sheet.cycle.rinseS });

/** Inside diameter of the pipe, in metres, or the reading that asks for it. */
export function needBore({ plan }: Scene, { machine }: PlacedMachine): { boreM: number } | { ask: FigureReading } {
  const { bore } = plan.pipes;
  if (bore !== null) return { boreM: bore / 1000 };
  return { ask: askFor([machine.id], message('water-line/ask-bore'), ['pipes', 'bore']) };
}

/** What the length of the line is. */
export const RIGHT_ANGLES = message('water-line/right-angles');
