import { distance } from '../../geometry';
import { setControls } from '../../plan';
import type { Line, PlacedControls, Scene } from '../../scene';
import { isInsideTurn, moveControls } from '../support/controls';
import { pathOf } from '../support/paths';
import { areaPlace, segmentPlace } from '../support/places';
import type { Check, Measurement } from '../types';

export const check: Check = {
  id: 'controls-inside-turn',
  title: 'Controls are on the inside of the turn',
  unit: 'yes-no',
  relation: 'equals',
  source: { kind: 'common-practice', text: 'Controls sit on the inside of the turn of a corner line, and at the front of a straight one.' },
  why: 'Turned the other way the controls end up under a table or behind the machine, where nobody can work them.',
  measure: (scene) => scene.lines.flatMap((line) => measureLine(scene, line)),
};

function measureLine(scene: Scene, line: Line): Measurement[] {
  const { inside, machine } = line;
  if (inside === null) return [];
  if (machine.controls === null) return [askPosition(scene, line)];
  const isGood = isInsideTurn(machine, machine.controls, inside);
  const off = offsetFrom(line, machine.controls);
  return [
    {
      subjects: [machine.machine.id],
      place: segmentPlace(machine.controls.face),
      value: isGood,
      limit: true,
      say: (f) => (isGood ? describeGood(line) : `${describeBad(line)}, ${f.length(off)} from where the operator stands. ${advise(line)}`),
      repairs: isGood ? [] : moveControls(scene, line),
    },
  ];
}

/** The plan names a position that the data sheet does not have. */
function askPosition(scene: Scene, { machine: { machine, sheet, footprint } }: Line): Measurement {
  return {
    subjects: [machine.id],
    place: areaPlace(footprint),
    value: null,
    limit: true,
    ask: { input: 'position of the controls', path: pathOf(scene.plan, 'machines', machine.id, 'controls') },
    say: () => 'The data sheet has no such position of the controls. Choose one that it has.',
    repairs: sheet.controls.map((position) => ({
      id: `controls-${position.id}`,
      label: () => `Controls: ${position.name.charAt(0).toLowerCase()}${position.name.slice(1)}`,
      edit: setControls(machine.id, position.id),
    })),
  };
}

/** From the controls to the corner of the turn, or to the middle of the front. */
const offsetFrom = ({ inside }: Line, controls: PlacedControls) => (inside === null ? 0 : distance(controls.centre, inside.corner));

const describeGood = ({ configuration }: Line) =>
  configuration.kind === 'corner'
    ? 'The controls are at the corner inside the turn.'
    : 'The controls are at the front, before the operator.';

const describeBad = ({ configuration }: Line) =>
  configuration.kind === 'corner' ? 'The controls are outside the turn' : 'The controls look away from the operator';

const advise = ({ machine: { sheet } }: Line) =>
  sheet.controlsChange === 'on-site' ? 'Move them on site before the tables go in.' : 'They cannot be moved on site: change the order.';
