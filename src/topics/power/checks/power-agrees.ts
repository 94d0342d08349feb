import type { Machine, Order, Plan } from '../../../plan';
import {
  askOrder,
  type Check,
  correctOrder,
  createMessages,
  editMachine,
  isOrderEmpty,
  list,
  type Measurement,
  type Message,
  machinePlace,
  type Offer,
  phaseWords,
  powerWords,
  type Repair,
} from '../../../rules';
import type { Line, Scene } from '../../../scene';
import { supplyAsk, type Version, versionAsk } from '../figures/support/power';

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

/** What is said of order, machine and supply. */
export interface PowerAgreesMessages {
  'power-agrees/voltage': Pick<Made, 'voltage'>;
  'power-agrees/phase': Pick<Made, 'phase'>;
  'power-agrees/undecided': { made: readonly Made[] };
  'power-agrees/not-made': { ordered: Made; made: readonly Made[] };
  /** `ordered`, `drawn`: voltage or phase. */
  'power-agrees/order-agrees': { drawn: Message };
  'power-agrees/order-differs': { ordered: Message; drawn: Message };
  'power-agrees/supply-unknown': { field: Field; drawn: Made };
  'power-agrees/supply-agrees': { drawn: Made };
  'power-agrees/supply-near': { found: Made; drawn: Made };
  'power-agrees/supply-differs': { found: Made; drawn: Made };
  /** `isOpened`: its breaker and wire have been chosen and are open again. */
  'power-agrees/repair-choose': { version: Made; isOpened: boolean };
}

/** What a machine is made for. */
type Made = Pick<Version, 'voltage' | 'phase'>;

type Field = keyof Made;

const say = createMessages<PowerAgreesMessages>();

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
  const made = sheet.electrical.map(powerOf);
  if (order.voltage !== null && order.phase !== null && !sheet.electrical.some((version) => isMadeFor(version, order))) {
    const ordered = { voltage: order.voltage, phase: order.phase };
    const limit = list(made.map(wordsOf), 'or');
    return { value: wordsOf(ordered), limit, message: say('power-agrees/not-made', { ordered, made }), ...about(line, 'order') };
  }
  return {
    value: null,
    limit: null,
    ask: versionAsk(line.machine),
    message: say('power-agrees/undecided', { made }),
    ...offerVersions(line, plan),
    ...about(line, 'order'),
  };
}

const powerOf = ({ voltage, phase }: Version): Made => ({ voltage, phase });

/** As a measured value. */
const wordsOf = ({ voltage, phase }: Made) => powerWords(voltage, phase);

function measureOrder(line: Line, version: Version, plan: Plan): Measurement[] {
  const { order } = plan;
  if (isOrderEmpty(order)) return [];
  return [
    compareOrder(line, plan, version, {
      field: 'voltage',
      drawn: describeVoltage(version.voltage),
      ordered: order.voltage === null ? null : describeVoltage(order.voltage),
    }),
    compareOrder(line, plan, version, {
      field: 'phase',
      drawn: describePhase(version.phase),
      ordered: order.phase === null ? null : describePhase(order.phase),
    }),
  ];
}

/** Voltage or phase, as a measured value and in a sentence. */
interface Stated {
  value: string;
  message: Message;
}

const describeVoltage = (voltage: number): Stated => ({ value: `${voltage} V`, message: say('power-agrees/voltage', { voltage }) });

const describePhase = (phase: Made['phase']): Stated => ({ value: phaseWords(phase), message: say('power-agrees/phase', { phase }) });

interface Compared {
  field: Field;
  drawn: Stated;
  ordered: Stated | null;
}

function compareOrder(line: Line, plan: Plan, version: Version, { field, drawn, ordered }: Compared): Measurement {
  if (ordered === null) return askOrder(line, field, field, drawn.value, drawn.message);
  const common = { value: ordered.value, limit: drawn.value, ...about(line, field) };
  if (plan.order[field] === version[field]) return { message: say('power-agrees/order-agrees', { drawn: drawn.message }), ...common };
  return {
    message: say('power-agrees/order-differs', { ordered: ordered.message, drawn: drawn.message }),
    repairs: offer([correctOrder(field, version[field], drawn.message), ...chooseVersion(line, plan)]),
    ...common,
  };
}

function measureSupply(line: Line, version: Version, plan: Plan): Measurement {
  const { supply } = plan;
  const drawn = powerOf(version);
  const common = { limit: wordsOf(drawn), ...about(line, 'supply') };
  if (supply.voltage === null || supply.phase === null) {
    const field = supply.voltage === null ? 'voltage' : 'phase';
    return { value: null, ask: supplyAsk(field), message: say('power-agrees/supply-unknown', { field, drawn }), ...common };
  }
  const found = { voltage: supply.voltage, phase: supply.phase };
  const value = wordsOf(found);
  if (value === common.limit) return { value, message: say('power-agrees/supply-agrees', { drawn }), ...common };
  const isClose = isNear(version, supply);
  return {
    value,
    severity: isClose ? 'watch' : 'stop',
    message: say(isClose ? 'power-agrees/supply-near' : 'power-agrees/supply-differs', { found, drawn }),
    ...offerVersions(line, plan),
    ...common,
  };
}

/** What order, supply and version have in common. */
type Power = Pick<Order, Field>;

const isNear = (version: Version, supply: Power) =>
  supply.phase === version.phase && Math.abs((supply.voltage ?? 0) - version.voltage) <= NEAR * version.voltage;

const offer = (repairs: readonly Repair[]): Offer => ({ ids: repairs.map(({ id }) => id), find: () => [...repairs] });

/** Nothing where no other version would agree. */
function offerVersions(line: Line, plan: Plan): { repairs?: Offer } {
  const versions = chooseVersion(line, plan);
  return versions.length === 0 ? {} : { repairs: offer(versions) };
}

/** Drawing the machine in a version that agrees with whatever order and supply say; nothing where they say nothing. */
function chooseVersion({ machine: { sheet, machine } }: Line, { order, supply }: Plan): Repair[] {
  const known = [order, supply].filter((power) => power.voltage !== null || power.phase !== null);
  if (known.length === 0) return [];
  const versions = sheet.electrical.filter(
    (version) => version.id !== machine.electrical && known.every((power) => isMadeFor(version, power)),
  );
  return versions.map((version) => ({
    id: `choose-${version.id}`,
    label: say('power-agrees/repair-choose', { version: powerOf(version), isOpened: isWired(machine) }),
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
