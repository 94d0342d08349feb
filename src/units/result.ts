/** What became of a text that a person typed: a value, or one sentence on why it was refused. */
export type Parsed<K extends string> = ({ ok: true } & { [key in K]: number }) | Refusal;

export interface Refusal {
  ok: false;
  reason: string;
}

export const refuse = (reason: string): Refusal => ({ ok: false, reason });
