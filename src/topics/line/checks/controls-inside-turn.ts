import type { DataSheet } from '../../../catalog';
import { distance } from '../../../geometry';
import { pathOf } from '../../../plan';
import { areaPlace, type Check, createMessages, type Measurement, type Message, type NoParams, segmentPlace } from '../../../rules';
import type { Inside, Line, PlacedControls, Scene } from '../../../scene';
import { isInsideTurn, offerToMoveControls } from './support/controls';

export const check: Check = {
  id: 'controls-inside-turn',
  order: 50,
  title: 'Controls are on the inside of the turn',
  unit: 'yes-no',
  relation: 'equals',
  source: { kind: 'common-practice', text: 'Controls sit on the inside of the turn of a corner line, and at the front of a straight one.' },
  why: 'Turned the other way the controls end up under a table or behind the machine, where nobody can work them.',
  measure: (scene) => scene.lines.flatMap((line) => measureLine(scene, line)),
};

/** What is said of where the controls are, and whether they can be moved on site. */
export interface ControlsInsideTurnMessages {
  'controls-inside-turn/inside': NoParams;
  'controls-inside-turn/at-front': NoParams;
  'controls-inside-turn/outside': { fromCorner: number; change: DataSheet['controlsChange'] };
  'controls-inside-turn/not-at-front': { change: DataSheet['controlsChange'] };
  'controls-inside-turn/no-such-position': NoParams;
  'controls-inside-turn/ask-position': NoParams;
}

const say = createMessages<ControlsInsideTurnMessages>();

function measureLine(scene: Scene, line: Line): Measurement[] {
  const { inside, machine } = line;
  const { controls } = machine;
  if (inside === null) return [];
  if (controls === null) return [askPosition(scene, line)];
  const isGood = isInsideTurn(machine, controls, inside);
  return [
    {
      subjects: [machine.machine.id],
      place: segmentPlace(controls.face),
      value: isGood,
      limit: true,
      message: isGood ? describeGood(line) : describeBad(line, controls, inside),
      ...(isGood ? {} : { repairs: offerToMoveControls(scene, line) }),
    },
  ];
}

/** The plan names a position that the data sheet does not have. */
function askPosition(scene: Scene, line: Line): Measurement {
  const { machine, footprint } = line.machine;
  return {
    subjects: [machine.id],
    place: areaPlace(footprint),
    value: null,
    limit: true,
    ask: { input: say('controls-inside-turn/ask-position'), path: pathOf(scene.plan, 'machines', machine.id, 'controls') },
    message: say('controls-inside-turn/no-such-position'),
    repairs: offerToMoveControls(scene, line),
  };
}

const describeGood = ({ configuration }: Line): Message =>
  configuration.kind === 'corner' ? say('controls-inside-turn/inside') : say('controls-inside-turn/at-front');

function describeBad({ configuration, machine: { sheet } }: Line, controls: PlacedControls, inside: Inside): Message {
  const change = sheet.controlsChange;
  return configuration.kind === 'corner'
    ? say('controls-inside-turn/outside', { fromCorner: distance(controls.centre, inside.corner), change })
    : say('controls-inside-turn/not-at-front', { change });
}
