/** Several servers with chance arrivals, by Erlang's formulas as queueing texts have them, known from memory. */
export interface ErlangInputs {
  servers: number;
  /** Arrivals times the time of service: how many servers would be busy if none were lost. */
  offered: number;
}

/** Part of the arrivals that find every server busy and go away (Erlang B). B(0) = 1, B(k) = a B / (k + a B) is stable for any number. */
export function lostShare({ servers, offered }: ErlangInputs): number {
  let lost = 1;
  for (let k = 1; k <= servers; k++) lost = (offered * lost) / (k + offered * lost);
  return lost;
}

/** Part of the arrivals that have to wait, where they do wait (Erlang C). Holds for less load than servers. */
export function waitingShare({ servers, offered }: ErlangInputs): number {
  const lost = lostShare({ servers, offered });
  return (servers * lost) / (servers - offered * (1 - lost));
}

/** Mean number waiting before several servers. */
export function waitingAtServers({ servers, offered }: ErlangInputs): number {
  const load = offered / servers;
  return (waitingShare({ servers, offered }) * load) / (1 - load);
}
