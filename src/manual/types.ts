/** What an entry of the manual is about. */
export const MANUAL_KINDS = ['check', 'figure', 'formula', 'limit', 'rule', 'source'] as const;
export type ManualKind = (typeof MANUAL_KINDS)[number];

/** A piece of an entry, in words and numbers of the reader's units. */
export type ManualPart =
  | { kind: 'text'; text: string }
  | { kind: 'formula'; text: string }
  | { kind: 'facts'; rows: readonly (readonly [name: string, value: string])[] }
  | { kind: 'table'; title: string; head: readonly string[]; rows: readonly (readonly string[])[] }
  /** Ids of other entries. */
  | { kind: 'links'; title: string; to: readonly string[] };

export interface ManualEntry {
  /** `check/joint-flush`: the kind, and the id that the registry has. */
  id: string;
  kind: ManualKind;
  title: string;
  /** The heading that it stands under. */
  group: string;
  parts: readonly ManualPart[];
}
