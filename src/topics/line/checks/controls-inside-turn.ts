import { distance } from '../../../geometry';
import { pathOf } from '../../../plan';
import { areaPlace, type Check, type Measurement, segmentPlace } from '../../../rules';
import type { Inside, Line, PlacedControls, Scene } from '../../../scene';
import type { Formatter } from '../../../units';
import { isInsideTurn, moveControls } from './support/controls';

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
      say: (f) => (isGood ? describeGood(line) : `${describeBad(line, controls, inside, f)} ${advise(line)}`),
      repairs: () => (isGood ? [] : moveControls(scene, line)),
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
    ask: { input: 'position of the controls', path: pathOf(scene.plan, 'machines', machine.id, 'controls') },
    say: () => 'The data sheet has no such position of the controls. Choose one that it has.',
    repairs: () => moveControls(scene, line),
  };
}

const describeGood = ({ configuration }: Line) =>
  configuration.kind === 'corner'
    ? 'The controls are at the corner inside the turn.'
    : 'The controls are at the front, before the operator.';

function describeBad({ configuration }: Line, controls: PlacedControls, inside: Inside, f: Formatter): string {
  if (configuration.kind !== 'corner') return 'The controls are not at the front, where the operator stands.';
  return `The controls are outside the turn, ${f.length(distance(controls.centre, inside.corner))} from its corner.`;
}

const advise = ({ machine: { sheet } }: Line) =>
  sheet.controlsChange === 'on-site' ? 'Move them on site before the tables go in.' : 'They cannot be moved on site: change the order.';
