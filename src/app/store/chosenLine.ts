import type { Line, Scene } from '../../scene';

/** The line that what is chosen belongs to, or the first; null in a room without a machine. */
export function chosenLine(scene: Scene, chosen: readonly string[]): Line | null {
  return scene.lines.find((line) => isOf(line, chosen)) ?? scene.lines[0] ?? null;
}

const isOf = (line: Line, ids: readonly string[]) =>
  ids.includes(line.machine.machine.id) || line.stations.some((s) => s.subject !== null && ids.includes(s.subject));
