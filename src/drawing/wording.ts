import type { Fitting, Table } from '../plan';
import { type CheckGroup, type MeasuredValue, type MeasureUnit, type Relation, type Source, type Verdict } from '../rules';
import type { Configuration } from '../scene';
import { figureWords } from '../text';
import { type Formatter, formatQuantity } from '../units';

/** Words for people that the page, the paper and the command line share. Data carry ids; this is where they become words. */

/** What a verdict is called; the word that stands beside its mark. */
export const VERDICT_NAMES: Record<Verdict, string> = { stop: 'stop', watch: 'watch', ask: 'ask', clear: 'clear' };

/** How a measured value must stand to its limit: “at most 15 mm”. */
export const RELATION_WORDS: Record<Relation, string> = {
  'at-most': 'at most',
  'at-least': 'at least',
  'more-than': 'more than',
  equals: 'exactly',
};

/** The caution that stands on every drawing and beside every list of findings. */
export const CAUTION =
  'Preliminary. The connection plate inside the machine, local code and licensed trades govern. Lock out power, and let hot water and chemicals drain and cool, before work on the machine.';

/** `straight through`, `corner`, `no configuration`. */
export function configurationWords(kind: Configuration['kind']): string {
  return { straight: 'straight through', corner: 'corner', none: 'no configuration' }[kind];
}

export { powerWords } from '../text';

/** Name of a fitting: a sink with a spray is the pre-rinse. */
export function fittingName(fitting: Fitting, role: Table['role']): string {
  switch (fitting.kind) {
    case 'sink':
      return fitting.spray ? 'pre-rinse' : 'sink';
    case 'landing':
      return `${role} landing`;
    case 'drop-off':
    case 'scrap':
    case 'overshelf':
      return fitting.kind;
  }
}

/** A measured value or its limit in words: `4 ½″`, `2.1 %`, `yes`. */
export function measureWords(value: MeasuredValue, unit: MeasureUnit, f: Formatter, group: CheckGroup = 'line'): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  if (!Number.isFinite(value)) return 'no limit';
  if (unit === 'mm') return f.length(value);
  if (unit === 'ratio') return f.slope(value);
  if (unit === 'deg') return f.angle(value);
  if (unit === 'share') return formatQuantity(value, 'share', f.units);
  if (unit === 'count' || unit === 'word' || unit === 'yes-no') return String(Number(value.toFixed(2)));
  return figureWords(value, unit, f, group);
}

/** One line on where a limit comes from. */
export function sourceWords(source: Source): string {
  switch (source.kind) {
    case 'published':
      return `${source.document}, ${source.section}`;
    case 'data-sheet':
      return `Machine data sheet. ${source.text}`;
    case 'common-practice':
      return `Common practice. ${source.text}`;
    case 'geometry':
      return `Geometry. ${source.text}`;
  }
}
