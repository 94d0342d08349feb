/** Ids of rows in the project's tables of facts serve those who check a record, not those who read it: the same text without them. */
export function withoutRowIds(text: string): string {
  return text
    .replace(/ ?\([ALW]-[^)]*\)/g, '')
    .replace(ROW_ID, '')
    .trim();
}

const ROW_ID = /\b[ALW]-[A-Z]{1,3}\d+[a-z]?(?:[:,](?= )|\b)(?: turned about:)? ?/g;
