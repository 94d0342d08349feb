/** Text that could not be read, and why, in words for the person who typed it. */
export interface Refusal {
  ok: false;
  reason: string;
}

/** A refusal with its reason. */
export const refuse = (reason: string): Refusal => ({ ok: false, reason });
