import { z } from 'zod/mini';
import { sourceWords } from '../drawing';
import type { Plan } from '../plan';
import { deriveWorstVerdict, type Finding, findRepairs, VERDICTS } from '../rules';
import type { Scene } from '../scene';
import { askWords, findingWords, repairWords } from '../text';
import { CHECKS } from '../topics/registry';
import { formatterFor, type Units } from '../units';

/**
 * What `check --json` prints: one object, stable within a version. Fields may be added; none is renamed, taken away or
 * given another meaning. Lengths are millimetres, slopes a ratio, angles degrees clockwise, all else SI with temperatures in °C, whatever `--units` says:
 * that only words the sentences. Points are plan millimetres, x to the right and y down the paper.
 */
export const FINDINGS_FORMAT = 'rackway-findings';
export const FINDINGS_VERSION = 1;

const value = z.nullable(z.union([z.number(), z.string(), z.boolean()]));
const point = z.strictObject({ x: z.number(), y: z.number() });

const place = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('point'), point }),
  z.strictObject({ kind: z.literal('segment'), segment: z.strictObject({ a: point, b: point }) }),
  z.strictObject({ kind: z.literal('area'), polygons: z.array(z.array(point)) }),
]);

const source = z.strictObject({
  kind: z.enum(['published', 'data-sheet', 'common-practice', 'geometry']),
  /** One line for people. */
  text: z.string(),
  /** Of a published document; null for the others. */
  document: z.nullable(z.string()),
  section: z.nullable(z.string()),
  /** `memory` is unchecked, and never more than a watch. */
  confidence: z.nullable(z.enum(['read', 'secondary', 'memory'])),
});

const finding = z.strictObject({
  /** Permanent for the same check, part and subjects. */
  id: z.string(),
  check: z.string(),
  /** What was measured, where the check measures several things; null otherwise. */
  part: z.nullable(z.string()),
  title: z.string(),
  verdict: z.enum(VERDICTS),
  measured: value,
  limit: value,
  /** A stricter limit whose breach is only a watch; null where there is none. */
  watchLimit: z.nullable(z.number()),
  /** How far the value is on the good side of its limit; negative when it is broken; null where that has no meaning. */
  margin: z.nullable(z.number()),
  /** `mm`, `ratio`, `deg`, `count`, `share`, `word`, `yes-no`, or an SI unit such as `m3/s`. */
  unit: z.string().check(z.minLength(1)),
  relation: z.enum(['at-most', 'at-least', 'more-than', 'equals']),
  /** Ids of the things concerned, the first the one to look at. */
  subjects: z.array(z.string()),
  place,
  source,
  sentence: z.string(),
  /** What the sentence is made of: the key of its words, and their parameters. */
  message: z.nullable(z.strictObject({ key: z.string(), params: z.record(z.string(), z.unknown()) })),
  /** The input that is missing, and its path in the plan; null when none is. */
  ask: z.nullable(z.strictObject({ input: z.string(), path: z.array(z.union([z.string(), z.number()])) })),
  repairs: z.array(z.strictObject({ id: z.string(), label: z.string() })),
});

const checkedFile = z.strictObject({
  file: z.string(),
  /** Project and alternative of the plan. */
  title: z.string(),
  /** The worst of the findings. */
  verdict: z.enum(VERDICTS),
  /** Worst first. */
  findings: z.array(finding),
});

/** Every file that could be read, in the order of the command line. Those that could not are named on stderr. */
export const findingsReportSchema = z.strictObject({
  format: z.literal(FINDINGS_FORMAT),
  version: z.literal(FINDINGS_VERSION),
  files: z.array(checkedFile),
});

export type FindingsReport = z.infer<typeof findingsReportSchema>;

/** One file's part of the report. */
export function createFileReport(file: string, scene: Scene, findings: readonly Finding[], units: Units): FindingsReport['files'][number] {
  return {
    file,
    title: planTitle(scene.plan),
    verdict: deriveWorstVerdict(findings),
    findings: findings.map((item) => createFinding(scene, item, units)),
  };
}

/** Project and alternative, as far as they are named. */
export const planTitle = ({ title }: Plan) => [title.project, title.alternative].filter((part) => part !== '').join(' · ');

function createFinding(scene: Scene, item: Finding, units: Units): FindingsReport['files'][number]['findings'][number] {
  const f = formatterFor(units);
  const { id, check, part, title, verdict, measured, limit, watchLimit, margin, unit, relation, subjects, ask } = item;
  return {
    id,
    check,
    part,
    title,
    verdict,
    measured,
    limit,
    watchLimit,
    margin,
    unit,
    relation,
    subjects,
    place: createPlace(item.place),
    source: createSource(item.source),
    sentence: findingWords(item, f),
    ask: ask === null ? null : { input: askWords(ask, f), path: [...ask.path] },
    message: item.message,
    repairs: repairsOf(scene, item).map((repair) => ({ id: repair.id, label: repairWords(repair, f) })),
  };
}

/** Those that would cure it. */
export const repairsOf = (scene: Scene, { id, repairs }: Finding) => (repairs.length === 0 ? [] : findRepairs(scene, CHECKS, id));

/** Points without what else they may carry. */
function createPlace(from: Finding['place']): z.infer<typeof place> {
  const flat = ({ x, y }: { x: number; y: number }) => ({ x, y });
  if (from.kind === 'point') return { kind: 'point', point: flat(from.point) };
  if (from.kind === 'segment') return { kind: 'segment', segment: { a: flat(from.segment.a), b: flat(from.segment.b) } };
  return { kind: 'area', polygons: from.polygons.map((polygon) => polygon.map(flat)) };
}

function createSource(from: Finding['source']): z.infer<typeof source> {
  const text = sourceWords(from);
  if (from.kind !== 'published') return { kind: from.kind, text, document: null, section: null, confidence: null };
  return { kind: 'published', text, document: from.document, section: from.section, confidence: from.confidence };
}
