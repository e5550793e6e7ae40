import { describe, expect, test } from "vitest";
import { FACE_SCALE } from "../../src/pictures/mount/faces.ts";
import { SHAFT_SCALE } from "../../src/pictures/mount/shafts.ts";
import { facePicture, shaftPicture } from "../../src/pictures/mount.ts";
import { wording } from "./examples.ts";
import { elements, placedWords } from "./placed-words.ts";

const face = facePicture(wording);
const circles = elements(face.svg, "circle").map(({ cx, cy, r }) => ({
  x: Number(cx),
  y: Number(cy),
  r: Number(r),
}));
const said = placedWords(face).map(({ text }) => text);

/** The circles around one middle, which are the face's rings, and the four holes nearest outside its rabbet. */
function faceAround(middle: { x: number; y: number }, rabbetIn: number) {
  const rings = circles.filter(({ x, y }) => x === middle.x && y === middle.y);
  const holes = circles.filter(({ x, y, r }) => {
    const away = Math.hypot(x - middle.x, y - middle.y);
    return r < 6 && away > (rabbetIn / 2) * FACE_SCALE && away < 1.6 * (rabbetIn / 2) * FACE_SCALE;
  });
  return { rings, holes };
}

// NEMA MG 1 Part 4, Type C face: AJ, AK, BF and U; the 1/4 in hole of the 48C from memory.
describe.each([
  ["56C and 56J", { aj: 5.875, ak: 4.5, bf: 0.375, u: 0.625, words: "56C, 56J: 5-7/8 in" }],
  ["48C", { aj: 3.75, ak: 3.0, bf: 0.25, u: 0.5, words: "48C: 3-3/4 in" }],
])("the round face %s is drawn to scale", (_, { aj, ak, bf, u, words }) => {
  const rabbet = circles.find(({ r }) => Math.abs(r - (ak / 2) * FACE_SCALE) < 0.01)!;
  const { rings, holes } = faceAround(rabbet, ak);

  test("with the rabbet and the shaft of the standard", () => {
    const inches = rings.map(({ r }) => (2 * r) / FACE_SCALE);
    expect(inches.some((diameter) => Math.abs(diameter - ak) < 0.005)).toBe(true);
    expect(inches.some((diameter) => Math.abs(diameter - u) < 0.005)).toBe(true);
    expect(inches.some((diameter) => Math.abs(diameter - aj) < 0.005)).toBe(true);
  });

  test("with four holes, 90 degrees apart, on the bolt circle", () => {
    expect(holes).toHaveLength(4);
    const angles = holes
      .map(({ x, y }) => (Math.atan2(y - rabbet.y, x - rabbet.x) * 180) / Math.PI)
      .sort((a, b) => a - b);
    for (const [index, angle] of angles.slice(1).entries()) expect(angle - angles[index]!).toBeCloseTo(90, 1);
    for (const { x, y, r } of holes) {
      expect((2 * Math.hypot(x - rabbet.x, y - rabbet.y)) / FACE_SCALE).toBeCloseTo(aj, 2);
      // A hole is never drawn too small to be seen.
      expect(r).toBeCloseTo(Math.max((bf / 2) * FACE_SCALE, 3), 1);
    }
  });

  test("with its measure in words", () => expect(said).toContain(words));
});

test("what no standard measures is marked as not to scale", () => {
  expect(said.filter((text) => text === "not to scale")).toHaveLength(2);
});

test("the ruler is two inches long at the scale of the faces", () => {
  const ruler = elements(face.svg, "path").find(({ d }) => d!.includes("v10"))!;
  expect(Number(/h([\d.]+)/.exec(ruler["d"]!)![1])).toBeCloseTo(2 * FACE_SCALE, 2);
});

// NEMA MG 1 Part 4 (56C: U 5/8, N-W 1-7/8, key 3/16 square, 1-3/8 long) and MG 1 18 (56J: N-W 2-7/16).
describe("shafts are drawn to scale", () => {
  const { svg } = shaftPicture(wording);
  const inches = elements(svg, "rect").map(({ width, height }) => [
    Number(width) / SHAFT_SCALE,
    Number(height) / SHAFT_SCALE,
  ]);
  const has = (width: number, height: number) =>
    inches.some(([w, h]) => Math.abs(w! - width) < 0.005 && Math.abs(h! - height) < 0.005);

  test("the keyed one with its key, from the side and from the end", () => {
    expect(has(1.875, 0.625)).toBe(true);
    expect(has(1.375, 0.1875)).toBe(true);
    expect(has(0.1875, 0.1875)).toBe(true);
  });

  test("the threaded one: plain part and 7/16 thread together are 2-7/16 in", () => {
    const thread = inches.find(([, height]) => Math.abs(height! - 0.4375) < 0.005)!;
    const plain = inches.find(([width, height]) => Math.abs(height! - 0.625) < 0.005 && width !== 1.875)!;
    expect(thread[0]! + plain[0]!).toBeCloseTo(2.4375, 2);
  });
});
