import { inflateSync } from "node:zlib";

export interface Pixels {
  readonly width: number;
  readonly height: number;
  /** Red, green and blue, 0 to 255, of one pixel. */
  readonly at: (x: number, y: number) => readonly [number, number, number];
}

/** Decodes a PNG of 8-bit RGBA without interlace. Source of the filters: W3C PNG (Third Edition), clause 9. */
export function decodePng(png: Buffer): Pixels {
  if (png.toString("latin1", 1, 4) !== "PNG") throw new Error("not a PNG");
  const width = png.readUInt32BE(16);
  const height = png.readUInt32BE(20);
  if (png[24] !== 8 || png[25] !== 6 || png[28] !== 0) throw new Error("not 8-bit RGBA without interlace");
  const data: Buffer[] = [];
  for (let offset = 8; offset < png.length; ) {
    const length = png.readUInt32BE(offset);
    if (png.toString("latin1", offset + 4, offset + 8) === "IDAT") {
      data.push(png.subarray(offset + 8, offset + 8 + length));
    }
    offset += 12 + length;
  }
  const raw = inflateSync(Buffer.concat(data));
  const stride = width * 4;
  const out = Buffer.alloc(stride * height);
  for (let y = 0; y < height; y++) {
    const filter = raw[y * (stride + 1)]!;
    for (let x = 0; x < stride; x++) {
      const left = x >= 4 ? out[y * stride + x - 4]! : 0;
      const up = y > 0 ? out[(y - 1) * stride + x]! : 0;
      const corner = x >= 4 && y > 0 ? out[(y - 1) * stride + x - 4]! : 0;
      const predicted = [0, left, up, (left + up) >> 1, paeth(left, up, corner)][filter]!;
      out[y * stride + x] = raw[y * (stride + 1) + 1 + x]! + predicted;
    }
  }
  return {
    width,
    height,
    at: (x, y) => {
      const offset = Math.floor(y) * stride + Math.floor(x) * 4;
      return [out[offset]!, out[offset + 1]!, out[offset + 2]!];
    },
  };
}

function paeth(left: number, up: number, corner: number): number {
  const estimate = left + up - corner;
  const [toLeft, toUp, toCorner] = [left, up, corner].map((value) => Math.abs(estimate - value)) as [
    number,
    number,
    number,
  ];
  if (toLeft <= toUp && toLeft <= toCorner) return left;
  return toUp <= toCorner ? up : corner;
}
