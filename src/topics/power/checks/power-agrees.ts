import type { MachineSheet } from '../../../catalog';
import type { Machine, Order, Plan } from '../../../plan';
import {
  askOrder,
  type Check,
  correctOrder,
  editMachine,
  isOrderEmpty,
  list,
  type Measurement,
  machinePlace,
  phaseWords,
  powerWords,
  type Repair,
} from '../../../rules';
import { type Line, machinePath, type Scene } from '../../../scene';

/** Nominal voltages this near (220 and 230, 230 and 240) are the same supply by other names; the plate decides, so it is only a watch. */
const NEAR = 0.05;

export const check: Check = {
  id: 'power-agrees',
  order: 40,
  title: 'Order, machine and supply agree on power',
  group: 'power',
  unit: 'word',
  relation: 'equals',
  source: { kind: 'data-sheet', text: 'Electrical versions on the data sheet of the machine drawn.' },
  why: 'Voltage and phase are built in. The wrong version cannot be connected, and a wrong connection hurts people and destroys the machine. Preliminary: the connection plate inside the control compartment governs, not the one outside, and a licensed electrician decides.',
  measure: (scene) => scene.lines.flatMap((line) => measureLine(scene, line)),
};

type Version = MachineSheet['electrical'][number];

function measureLine({ plan }: Scene, line: Line): Measurement[] {
  const { sheet, machine } = line.machine;
  const version = sheet.electrical.find((item) => item.id === machine.electrical);
  if (version === undefined) return [measureUndecided(line, plan)];
  return [...measureOrder(line, version, plan), measureSupply(line, version, plan)];
}

/** No version is chosen. The order may name one that the machine is not made in; otherwise the choice is asked for. */
function measureUndecided(line: Line, plan: Plan): Measurement {
  const { sheet } = line.machine;
  const { order } = plan;
  const made = list(
    sheet.electrical.map((version) => powerWords(version.voltage, version.phase)),
    'or',
  );
  if (order.voltage !== null && order.phase !== null && !sheet.electrical.some((version) => isMadeFor(version, order))) {
    const ordered = powerWords(order.voltage, order.phase);
    const say = () => `The order says ${ordered}; the machine is made for ${made}. Change the order.`;
    return { value: ordered, limit: made, say, ...about(line, 'order') };
  }
  return {
    value: null,
    limit: null,
    ask: { input: 'electrical version of the machine', path: machinePath(line.machine, 'electrical') },
    say: () => `No electrical version is chosen. The machine is made for ${made}.`,
    repairs: () => chooseVersion(line, plan),
    ...about(line, 'order'),
  };
}

function measureOrder(line: Line, version: Version, plan: Plan): Measurement[] {
  if (isOrderEmpty(plan.order)) return [];
  return [
    compareOrder(line, 'voltage', plan, version, volts),
    compareOrder(line, 'phase', plan, version, (power) => (power.phase === null ? '' : phaseWords(power.phase))),
  ];
}

/** What order, supply and version have in common. */
type Power = Pick<Order, 'voltage' | 'phase'>;

function compareOrder(line: Line, field: keyof Power, plan: Plan, version: Version, words: (power: Power) => string): Measurement {
  const { order } = plan;
  const drawn = words(version);
  if (order[field] === null) return askOrder(line, field, field, drawn, drawn);
  const ordered = words(order);
  const isSame = order[field] === version[field];
  return {
    value: ordered,
    limit: drawn,
    say: () =>
      isSame
        ? `Order and machine agree: ${drawn}.`
        : `The order says ${ordered}; the machine drawn is ${drawn}. It cannot be changed on site: settle it with a licensed electrician before ordering.`,
    repairs: () => (isSame ? [] : [correctOrder(field, version[field], () => drawn), ...chooseVersion(line, plan)]),
    ...about(line, field),
  };
}

function measureSupply(line: Line, version: Version, plan: Plan): Measurement {
  const { supply } = plan;
  const drawn = powerWords(version.voltage, version.phase);
  const common = { limit: drawn, ...about(line, 'supply') };
  const missing = supply.voltage === null ? 'voltage' : 'phase';
  if (supply.voltage === null || supply.phase === null) {
    const ask = { input: `${missing} of the supply`, path: ['supply', missing] };
    return { value: null, ask, say: () => `The ${missing} in the building is not known; the machine drawn needs ${drawn}.`, ...common };
  }
  const found = powerWords(supply.voltage, supply.phase);
  if (found === drawn) return { value: found, say: () => `Supply and machine agree: ${drawn}.`, ...common };
  return {
    value: found,
    severity: isNear(version, supply) ? 'watch' : 'stop',
    say: () => `The building supplies ${found}; the machine drawn needs ${drawn}. ${adviseSupply(version, supply)}`,
    repairs: () => chooseVersion(line, plan),
    ...common,
  };
}

const isNear = (version: Version, supply: Power) =>
  supply.phase === version.phase && Math.abs((supply.voltage ?? 0) - version.voltage) <= NEAR * version.voltage;

const adviseSupply = (version: Version, supply: Power) =>
  isNear(version, supply)
    ? 'See that its plate lists that voltage.'
    : 'Choose another version, or have a licensed electrician bring that supply.';

const volts = (power: Power) => `${power.voltage} V`;

/** Drawing the machine in a version that agrees with whatever order and supply say; nothing where they say nothing. */
function chooseVersion({ machine: { sheet, machine } }: Line, { order, supply }: Plan): Repair[] {
  const known = [order, supply].filter((power) => power.voltage !== null || power.phase !== null);
  if (known.length === 0) return [];
  const versions = sheet.electrical.filter(
    (version) => version.id !== machine.electrical && known.every((power) => isMadeFor(version, power)),
  );
  return versions.map((version) => ({
    id: `choose-${version.id}`,
    label: () =>
      `Draw the machine for ${powerWords(version.voltage, version.phase)}${isWired(machine) ? '; its breaker and wire are open again' : ''}`,
    edit: (draft) => editMachine(draft, machine.id, (item) => rewire(item, version.id)),
  }));
}

const isWired = ({ hookUp }: Pick<Machine, 'hookUp'>) => hookUp.breakerA !== null || hookUp.wire !== null;

/** Another version draws another current: breaker and wire were chosen for the one before. */
function rewire(machine: Machine, electrical: string): void {
  machine.electrical = electrical;
  Object.assign(machine.hookUp, { breakerA: null, wire: null });
}

/** A version has the voltage and the phase that are stated; what is not stated does not exclude it. */
const isMadeFor = (version: Version, { voltage, phase }: Power) =>
  (voltage === null || version.voltage === voltage) && (phase === null || version.phase === phase);

const about = (line: Line, part: string) => ({
  part,
  subjects: [line.machine.machine.id],
  place: machinePlace(line.machine),
});
