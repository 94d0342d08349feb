export type Attributes = Record<string, string | number | undefined>;

/** One SVG element as text. Attributes that are undefined are left out; numbers have at most three decimals. */
export function el(tag: string, attributes: Attributes, ...children: string[]): string {
  const pairs = Object.entries(attributes).flatMap(([key, value]) => (value === undefined ? [] : [` ${key}="${attribute(value)}"`]));
  const open = `<${tag}${pairs.join('')}`;
  return children.length === 0 ? `${open}/>` : `${open}>${children.join('')}</${tag}>`;
}

/** Text between tags: what XML forbids is escaped or, where it has no form, dropped. */
export function escapeXml(text: string): string {
  return text.replace(FORBIDDEN, '').replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

/** At most three decimals, no negative zero: a thousandth of a paper millimetre is finer than any printer. */
export const num = (value: number) => String(Number(value.toFixed(3)) + 0);

/** Control characters and lone surrogates, which no XML document may hold. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters meant
const FORBIDDEN =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const attribute = (value: string | number) => (typeof value === 'number' ? num(value) : escapeXml(value));
