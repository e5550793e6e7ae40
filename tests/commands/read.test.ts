import { describe, expect, test } from "vitest";
import { jsonLines, nameplate } from "./run.ts";

describe("read", () => {
  const ran = nameplate(
    ["read"],
    jsonLines(
      { id: "a", text: "HP 1.5 SF 1.1 V 115/230 A 19.2/9.6 FR 56Y, can't read the rpm" },
      { id: "b", text: "HP 15, volts 115/230, amps 19.2/9.6" },
      { id: "c", text: "my breaker keeps tripping" },
      { id: "d", text: "" },
    ) + `{"id":"e"}\nnot json\n`,
  );

  test("gives plain values of what the text states, in order", () => {
    expect(ran.lines[0]).toEqual({
      id: "a",
      nameplate: { hp: 1.5, serviceFactor: 1.1, volts: [115, 230], amps: [19.2, 9.6], frame: "56Y" },
      site: {},
      unreadable: ["rpm"],
      intents: expect.arrayContaining(["ratings"]),
      hazard: null,
      doubts: [],
    });
    expect(ran.lines.map(({ id }) => id)).toEqual(["a", "b", "c", "d", "e", null]);
  });

  test("keeps an implausible value as typed and doubts it", () => {
    expect(ran.lines[1]).toMatchObject({
      nameplate: { hp: 15 },
      doubts: [{ ratings: expect.arrayContaining(["hp"]) }],
    });
  });

  test("names the danger", () => {
    expect(ran.lines[2]).toMatchObject({ hazard: "trip", nameplate: {} });
  });

  test("an empty message states nothing", () => {
    expect(ran.lines[3]).toMatchObject({ nameplate: {}, site: {}, unreadable: [], hazard: null });
  });

  test("a bad line is answered with what was wrong, the run goes on, and the status says so", () => {
    expect(ran.lines[4]).toEqual({ id: "e", error: expect.stringMatching(/text/) });
    expect(ran.lines[5]).toEqual({ id: null, error: expect.stringMatching(/JSON/) });
    expect(ran.status).toBe(1);
    expect(ran.stderr).toBe("");
  });
});
