import { readFileSync } from 'node:fs';

/** What the tests read out of a TrueType file: the advance width of a character, and the height of capitals, in font units. */
export interface Font {
  unitsPerEm: number;
  capHeight: number;
  xHeight: number;
  descender: number;
  /** null where the font has no such character. */
  advance: (codePoint: number) => number | null;
}

/** Reads the tables `head`, `hhea`, `OS/2`, `hmtx` and `cmap` (format 4) of a TTF, independently of the program's own width table. */
export function readFont(path: string): Font {
  const file = readFileSync(path);
  const tables = readTables(file);
  const at = (name: string) => {
    const offset = tables.get(name);
    if (offset === undefined) throw new Error(`${path} has no table ${name}`);
    return offset;
  };
  const metrics = file.readUInt16BE(at('hhea') + 34);
  const glyphOf = readCharacterMap(file, at('cmap'));
  return {
    unitsPerEm: file.readUInt16BE(at('head') + 18),
    capHeight: file.readInt16BE(at('OS/2') + 88),
    xHeight: file.readInt16BE(at('OS/2') + 86),
    descender: file.readInt16BE(at('hhea') + 6),
    advance: (codePoint) => {
      const glyph = glyphOf(codePoint);
      return glyph === 0 ? null : file.readUInt16BE(at('hmtx') + 4 * Math.min(glyph, metrics - 1));
    },
  };
}

function readTables(file: Buffer): Map<string, number> {
  const count = file.readUInt16BE(4);
  const rows = Array.from({ length: count }, (_, i) => 12 + 16 * i);
  return new Map(rows.map((row) => [file.toString('latin1', row, row + 4), file.readUInt32BE(row + 8)]));
}

function readCharacterMap(file: Buffer, cmap: number): (codePoint: number) => number {
  const subtables = Array.from({ length: file.readUInt16BE(cmap + 2) }, (_, i) => cmap + file.readUInt32BE(cmap + 8 + 8 * i));
  const table = subtables.find((offset) => file.readUInt16BE(offset) === 4);
  if (table === undefined) throw new Error('no character map of format 4');
  const segments = file.readUInt16BE(table + 6) / 2;
  const word = (block: number, i: number) => table + 14 + (block === 0 ? 0 : 2) + 2 * segments * block + 2 * i;
  return (codePoint) => {
    for (let i = 0; i < segments; i += 1) {
      if (file.readUInt16BE(word(0, i)) < codePoint) continue;
      const start = file.readUInt16BE(word(1, i));
      if (start > codePoint) return 0;
      const delta = file.readInt16BE(word(2, i));
      const range = file.readUInt16BE(word(3, i));
      if (range === 0) return (codePoint + delta) & 0xffff;
      const glyph = file.readUInt16BE(word(3, i) + range + 2 * (codePoint - start));
      return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
    }
    return 0;
  };
}
