import type { PlacedRun, Scene } from '../../scene';
import { equivalentLength } from '../../topics/duct';
import type { Formatter } from '../../units';

/** What stands beside a run: its duct, and its equivalent length beside the limit where the machine's data sheet has one. */
export function describeRun(scene: Scene, placed: PlacedRun, f: Formatter): string {
  const duct = `Ø ${f.length(placed.run.diameter)}`;
  const length = measureEquivalent(scene, placed);
  if (length === null) return `${duct} duct, ${f.length(placed.length)} long`;
  return `${duct} duct, equivalent ${f.length(length.value)} of ${f.length(length.limit)}`;
}

/** Equivalent length of a run and its limit, mm; null where the machine is no direct-vent one or the formula refuses. */
export function measureEquivalent(scene: Scene, placed: PlacedRun): { value: number; limit: number } | null {
  const vent = scene.machines.find(({ machine }) => machine.id === placed.run.machine)?.sheet.vent;
  if (vent?.kind !== 'direct') return null;
  const outcome = equivalentLength({
    straightM: placed.length / 1000,
    elbowM: vent.elbowAllowance / 1000,
    bendsDeg: placed.bends.map((bend) => bend.angleDeg),
    rule: 'stricter',
  });
  return outcome.ok ? { value: outcome.value * 1000, limit: vent.maxEquivalentLength } : null;
}
