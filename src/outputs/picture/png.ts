import { zlibSync } from "fflate/browser";

/** A picture whose pixels are numbers of colours, rows from the top. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** A byte each. */
  readonly pixels: Uint8Array;
  /** Red, green and blue of each colour, at most 256 of them. */
  readonly palette: Uint8Array;
}

const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
/** Bits of a pixel, colour type palette, and the one way of packing, filtering and ordering that is used here. */
const KIND = [8, 3, 0, 0, 0];

/** Returns the bytes of a PNG file with this picture (ISO/IEC 15948, indexed colour of 8 bits). */
export function png({ width, height, pixels, palette }: Picture): Uint8Array {
  const row = 1 + width;
  // The first byte of each row names its filter: 0, none.
  const raw = new Uint8Array(height * row);
  for (let y = 0; y < height; y++) raw.set(pixels.subarray(y * width, (y + 1) * width), y * row + 1);
  const head = new Uint8Array([...bigEndian(width), ...bigEndian(height), ...KIND]);
  return joined([
    new Uint8Array(SIGNATURE),
    chunk("IHDR", head),
    chunk("PLTE", palette),
    chunk("IDAT", zlibSync(raw, { level: 0 })),
    chunk("IEND", new Uint8Array(0)),
  ]);
}

/** A chunk: its length, its name, what it holds, and a check sum of name and content. */
function chunk(name: string, content: Uint8Array): Uint8Array {
  const named = joined([Uint8Array.from(name, (letter) => letter.charCodeAt(0)), content]);
  return joined([bigEndian(content.length), named, bigEndian(checkSum(named))]);
}

const bigEndian = (value: number) => Uint8Array.from([24, 16, 8, 0], (shift) => value >>> shift);

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/** The remainders of all bytes (ISO/IEC 15948, annex D). */
const REMAINDERS = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1;
  return rest;
});

function checkSum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (let at = 0; at < bytes.length; at++)
    sum = (REMAINDERS[(sum ^ (bytes[at] as number)) & 0xff] as number) ^ (sum >>> 8);
  return ~sum >>> 0;
}
