/** Length of the PNG signature and of the header chunk (IHDR) after it: PNG specification, sections 5.2 and 11.2.2. */
const HEADER = 8 + 25;

/** The same PNG with a pHYs chunk (PNG specification, section 11.3.5.3): so many dots a metre, across and down. */
export function stampResolution(png: Buffer, dotsPerInch: number): Buffer {
  const dotsPerMetre = Math.round(dotsPerInch / 0.0254);
  const body = Buffer.alloc(13);
  body.write('pHYs', 0, 'latin1');
  body.writeUInt32BE(dotsPerMetre, 4);
  body.writeUInt32BE(dotsPerMetre, 8);
  body.writeUInt8(1, 12);
  const chunk = Buffer.alloc(21);
  chunk.writeUInt32BE(9, 0);
  body.copy(chunk, 4);
  chunk.writeUInt32BE(crc32(body), 17);
  return Buffer.concat([png.subarray(0, HEADER), chunk, png.subarray(HEADER)]);
}

/** Check sum of a chunk's name and data: PNG specification, annex D. */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
