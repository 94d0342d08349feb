import { type FormulaRecord, findOutOfRange, type Outcome } from '../record';

export interface ErlangInputs {
  servers: number;
  /** Arrivals times service time: the mean number of busy servers if none were lost. */
  offered: number;
}

/** Part of the arrivals that find every server busy and go away (Erlang B). */
export function lostShare(inputs: ErlangInputs): Outcome {
  const reason = refusal(lostShareRecord, inputs);
  return reason === null ? { ok: true, value: erlangB(inputs) } : { ok: false, reason };
}

/** Part of the arrivals that have to wait, where they do wait (Erlang C). */
export function waitingShare(inputs: ErlangInputs): Outcome {
  const reason = refusal(waitingShareRecord, inputs) ?? overload(inputs);
  return reason === null ? { ok: true, value: erlangC(inputs) } : { ok: false, reason };
}

/** Mean number waiting before several servers. */
export function waitingAtServers(inputs: ErlangInputs): Outcome {
  const reason = refusal(waitingAtServersRecord, inputs) ?? overload(inputs);
  if (reason !== null) return { ok: false, reason };
  const load = inputs.offered / inputs.servers;
  return { ok: true, value: (erlangC(inputs) * load) / (1 - load) };
}

/** B(0) = 1, B(k) = a B / (k + a B): stable for any number of servers. */
function erlangB({ servers, offered }: ErlangInputs): number {
  let lost = 1;
  for (let k = 1; k <= servers; k++) lost = (offered * lost) / (k + offered * lost);
  return lost;
}

function erlangC({ servers, offered }: ErlangInputs): number {
  const lost = erlangB({ servers, offered });
  return (servers * lost) / (servers - offered * (1 - lost));
}

function refusal(record: FormulaRecord<ErlangInputs>, inputs: ErlangInputs): string | null {
  const reason = findOutOfRange(record, inputs);
  return reason ?? (Number.isInteger(inputs.servers) ? null : `servers is ${inputs.servers}; it is a whole number`);
}

const also = 'the offered load is below the number of servers';
const overload = ({ servers, offered }: ErlangInputs) =>
  offered < servers ? null : `offered is ${offered} at ${servers} servers; ${also}`;

const inputs: FormulaRecord<ErlangInputs>['inputs'] = {
  servers: { text: 'Servers, such as people who scrap', unit: 'count', min: 1, max: 100 },
  offered: { text: 'Arrivals times service time', unit: 'count', min: 0, max: 100 },
};
const source: FormulaRecord<ErlangInputs>['source'] = [
  { text: "Erlang's formulas, standard in queueing texts; values as exact fractions (L-Q06 to L-Q08)", confidence: 'memory' },
];
const unprinted = 'The fractions are worked out exactly; no table of them is at hand.';

export const lostShareRecord: FormulaRecord<ErlangInputs> = {
  id: 'lost-share',
  title: 'Share that finds no server',
  formula: 'B = (a^c / c!) / Σ a^k / k!, k from 0 to c',
  inputs,
  result: { text: 'Part of the arrivals', unit: 'ratio', min: 0, max: 1 },
  source,
  unprinted,
  examples: [{ kind: 'regression', from: '3 servers, load 2: 4/19', inputs: { servers: 3, offered: 2 }, result: 4 / 19, tolerance: 1e-12 }],
};

export const waitingShareRecord: FormulaRecord<ErlangInputs> = {
  id: 'waiting-share',
  title: 'Share that waits',
  formula: 'C = c B / (c − a (1 − B))',
  inputs,
  result: { text: 'Part of the arrivals', unit: 'ratio', min: 0, max: 1 },
  also,
  source,
  unprinted,
  examples: [{ kind: 'regression', from: '3 servers, load 2: 4/9', inputs: { servers: 3, offered: 2 }, result: 4 / 9, tolerance: 1e-12 }],
};

export const waitingAtServersRecord: FormulaRecord<ErlangInputs> = {
  id: 'waiting-at-servers',
  title: 'Number waiting before several servers',
  formula: 'Lq = C ρ / (1 − ρ), ρ = a / c',
  inputs,
  result: { text: 'Mean number waiting', unit: 'count', min: 0, max: Number.POSITIVE_INFINITY },
  also,
  source,
  unprinted,
  examples: [{ kind: 'regression', from: '3 servers, load 2: 8/9', inputs: { servers: 3, offered: 2 }, result: 8 / 9, tolerance: 1e-12 }],
};
