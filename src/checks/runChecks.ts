import { gather } from '../geometry';
import { memoizeByIdentity, rememberReads, type Scene } from '../scene';
import { findPlace, isSamePlace, listsOf, type Standing } from './findPlace';
import { TOLERANCE } from './tolerance';
import type {
  Check,
  CheckGroup,
  ElevationPlace,
  Finding,
  LatePlace,
  MeasuredValue,
  Measurement,
  MeasureUnit,
  Place,
  Relation,
  Repair,
  Source,
  Verdict,
} from './types';
import { VERDICTS } from './types';

/**
 * Runs each check on the scene and compares what it measured with its limit. Worst first. A check measures again only when
 * something changed that it read.
 */
export function runChecks(scene: Scene, checks: readonly Check[]): Finding[] {
  const found: Record<Verdict, Finding[]> = { stop: [], watch: [], ask: [], clear: [] };
  for (const memory of memoriesOf(checks)) for (const finding of findingsOf(memory, scene)) found[finding.verdict].push(finding);
  return gather(VERDICTS, (verdict) => found[verdict]);
}

/** The worst verdict of a list; `clear` only when something was checked, otherwise `ask`. */
export function deriveWorstVerdict(findings: readonly Finding[]): Verdict {
  const worst = VERDICTS.find((verdict) => findings.some((f) => f.verdict === verdict));
  return worst ?? 'ask';
}

/** What is remembered of a check: how it measures, and what it said last. */
interface Memory {
  check: Check;
  measure: (scene: Scene) => readonly Measurement[];
  last: Found | null;
}

interface Found {
  measurements: readonly Measurement[];
  findings: readonly Finding[];
  /** The lists that its places are looked up in; asked for when something has moved. */
  looked: readonly (keyof Standing)[] | null;
  /** What places are looked up in when they are asked for. */
  stood: Standing;
  /** A fault among them can be repaired. That can hang on anything, so it is found anew each time. */
  canRepair: boolean;
}

/** A finding stays what it was while its measurement and its place do. */
function findingsOf(memory: Memory, scene: Scene): readonly Finding[] {
  const measurements = memory.measure(scene);
  const { check, last } = memory;
  if (last === null || last.measurements !== measurements || last.canRepair) {
    const findings: Finding[] = [];
    const found: Found = { measurements, findings, looked: null, stood: scene, canRepair: false };
    for (const m of measurements) {
      const finding = new MeasuredFinding(check, m, found);
      if (finding.verdict !== 'clear' && m.repairs !== undefined) found.canRepair = true;
      findings.push(finding);
    }
    memory.last = found;
    return findings;
  }
  last.looked ??= listsLookedUp(measurements);
  if (last.looked.every((list) => last.stood[list] === scene[list])) return last.findings;
  last.findings = last.findings.map((finding, i) => {
    const m = measurements[i] as Measurement;
    const place = placeOf(m, scene);
    return isSamePlace(place, finding.place) ? finding : new MeasuredFinding(check, m, last);
  });
  last.stood = scene;
  return last.findings;
}

const placeOf = (m: Measurement, stood: Standing): Place => (isLate(m.place) ? findPlace(m.place, stood) : m.place);

const memoryOf = memoizeByIdentity((check: Check): Memory => ({ check, measure: rememberReads(check.measure), last: null }));

/** A list is looked up once; a check is remembered in whichever list it stands. */
const memoriesOf = memoizeByIdentity((checks: readonly Check[]): readonly Memory[] => checks.map((check) => memoryOf(check)));

const isLate = (place: Place | LatePlace): place is LatePlace =>
  place.kind !== 'point' && place.kind !== 'segment' && place.kind !== 'area';

function listsLookedUp(measurements: readonly Measurement[]): readonly (keyof Standing)[] {
  const lists: (keyof Standing)[] = [];
  for (const { place } of measurements) {
    if (!isLate(place)) continue;
    for (const list of listsOf(place)) if (!lists.includes(list)) lists.push(list);
  }
  return lists;
}

/** A class, since hundreds of them are made for a plan, and what most of them can tell is asked of few. */
class MeasuredFinding implements Finding {
  readonly verdict: Verdict;
  private readonly rule: Check;
  private readonly found: Measurement;
  private readonly among: Found;
  private name: string | null = null;
  private stands: Place | null = null;
  private tried: readonly Repair[] | null = null;

  constructor(rule: Check, found: Measurement, among: Found) {
    this.verdict = judge(found, found.relation ?? rule.relation);
    this.among = among;
    this.rule = rule;
    this.found = found;
  }

  get id(): string {
    const { part, subjects } = this.found;
    this.name ??= [this.rule.id, ...(part === undefined ? [] : [part]), ...subjects].join(':');
    return this.name;
  }

  get place(): Place {
    this.stands ??= placeOf(this.found, this.among.stood);
    return this.stands;
  }

  get check(): string {
    return this.rule.id;
  }

  get part(): string | null {
    return this.found.part ?? null;
  }

  get title(): string {
    return this.rule.title;
  }

  get group(): CheckGroup {
    return this.rule.group ?? 'line';
  }

  get measured(): MeasuredValue | null {
    return this.found.value;
  }

  get limit(): MeasuredValue | null {
    return this.found.limit;
  }

  get watchLimit(): number | null {
    return this.found.watchLimit ?? null;
  }

  get margin(): number | null {
    return margin(this.measured, this.limit, this.relation);
  }

  get unit(): MeasureUnit {
    return this.found.unit ?? this.rule.unit;
  }

  get relation(): Relation {
    return this.found.relation ?? this.rule.relation;
  }

  get subjects(): string[] {
    return this.found.subjects;
  }

  get elevation(): ElevationPlace | null {
    return this.found.elevation ?? null;
  }

  get source(): Source {
    return this.found.source ?? this.rule.source;
  }

  get ask(): Finding['ask'] {
    return this.found.ask ?? null;
  }

  get say(): Measurement['say'] {
    return this.found.say;
  }

  get repairs(): readonly Repair[] {
    this.tried ??= this.found.repairs?.() ?? [];
    return this.tried;
  }
}

function judge(m: Measurement, relation: Relation): Verdict {
  if (m.value === null || m.limit === null) return 'ask';
  if (!holds(m.value, m.limit, relation)) return m.severity ?? 'stop';
  // A stricter limit holds when it is just reached, also where the limit itself must be passed.
  const soft = relation === 'more-than' ? 'at-least' : relation;
  if (m.watchLimit !== undefined && !holds(m.value, m.watchLimit, soft)) return 'watch';
  return 'clear';
}

function holds(value: MeasuredValue, limit: MeasuredValue, relation: Relation): boolean {
  if (relation === 'equals')
    return typeof value === 'number' && typeof limit === 'number' ? Math.abs(value - limit) <= TOLERANCE : value === limit;
  const left = margin(value, limit, relation);
  if (left === null) return false;
  return relation === 'more-than' ? left > TOLERANCE : left >= -TOLERANCE;
}

function margin(value: MeasuredValue | null, limit: MeasuredValue | null, relation: Relation): number | null {
  if (typeof value !== 'number' || typeof limit !== 'number') return null;
  if (relation === 'equals') return -Math.abs(value - limit);
  return relation === 'at-most' ? limit - value : value - limit;
}
