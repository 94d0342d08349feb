/** How surely something is known. */
export type Confidence = 'read' | 'secondary' | 'memory' | 'practice' | 'geometry';

/** One entry of the bibliography. */
export interface SourceDocument {
  title: string;
  /** Edition, date or version; null where it is not known or there is none. */
  edition: string | null;
  /**
   * How far the document is known at best: `read`: the text itself; `secondary`: a restatement; `memory`: known, but checked against no
   * text; `practice`: the trade's habit, in no document; `geometry`: follows from the drawing or by arithmetic. One place in it may be
   * known less well: what rests on it says so.
   */
  confidence: Confidence;
  /** What of it was read, or through what. */
  read: string;
}
