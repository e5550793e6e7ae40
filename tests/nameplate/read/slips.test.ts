import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read/message.ts";

const read = (text: string) => valuesOf(readMessage(text));

// What people type is common practice, no source.
describe("slips of ear and fingers", () => {
  test.each([
    ["letters exchanged", "230v, 3450prm", { volts: [230], rpm: [3450] }],
    ["letters exchanged in a word", "hosre power 2, 230 vlots", { hp: 2, volts: [230] }],
    ["written by ear", "servise factor 1.25, fraim 56Y", { serviceFactor: 1.25, frame: "56Y" }],
    ["both languages in one phrase", "single fase, 115 volts", { phase: 1, volts: [115] }],
    [
      "numbers by ear in Spanish",
      "dos cavallos, dosientos treinta boltios, factor de serbicio uno punto tres",
      { hp: 2, volts: [230], serviceFactor: 1.3 },
    ],
    ["two slips in one word", "botlage 230, anperes 9.6", { volts: [230], amps: [9.6] }],
    ["a short number with letters exchanged", "tow thirty volts", { volts: [230] }],
    ["Spanish ll as y", "1 cabayo y medio, monofacico", { hp: 1.5, phase: 1 }],
    ["volts by a Spanish ear", "115 bolts, 1 hp", { volts: [115], hp: 1 }],
    ["only the vowels wrong", "therded shaft", { shaft: "threaded" }],
    ["a letter left out", "aps 10.6, cod L", { amps: [10.6], kvaCode: "L" }],
    ["a fraction by ear", "thre quarters hp", { hp: 0.75 }],
    ["a half by ear", "horse power one and a haf", { hp: 1.5 }],
    ["the S of SF read as 5", "HP 1 5F 1.65", { hp: 1, serviceFactor: 1.65 }],
    ["run together", "threephase 460v 3hp", { phase: 3, volts: [460], hp: 3 }],
    ["the name after its letter", "K is the code letter, 60 cycle", { kvaCode: "K", hz: [60] }],
    ["current at full load, shortened", "FLC 8.8, 230 volts", { amps: [8.8], volts: [230] }],
    ["service factor after amps", "AMPS F.S. 9.9, HP 1", { serviceFactorAmps: [9.9], hp: 1 }],
  ])("%s", (_what, text, expected) => {
    expect(read(text).nameplate).toEqual(expected);
  });

  test.each([
    ["an abbreviation's dots", "S.F. AMPS 11.0, F.L.A. 10.1", { serviceFactorAmps: [11], amps: [10.1] }],
    ["values first", "230 is the volts. 10 even is the amps", { volts: [230], amps: [10] }],
    [
      "a count of ratings",
      "Two currents printed: FLA 6.9, SFA 8.3",
      { amps: [6.9], serviceFactorAmps: [8.3] },
    ],
  ])("%s", (_what, text, expected) => {
    expect(read(text).nameplate).toEqual(expected);
  });

  test.each([
    ["varaible speed, one fifeen volts", { speedKind: "variable", volts: [115] }],
    ["7.2 amps... scrtach that, 7.8", { amps: [7.8] }],
    ["two hundrred thity volts, 60 cylces", { volts: [230], hz: [60] }],
    ["la brida es cuarada y el eje tiene rsoca", { flange: "square", shaft: "threaded" }],
  ])("one letter off in any word the reader knows: %s", (text, expected) => {
    expect(read(text).nameplate).toEqual(expected);
  });

  test("a place left open in a list, a place without a mark", () => {
    expect(read("1.5 hp, sf ?, 230 volts").unreadable).toEqual(["serviceFactor"]);
    expect(read("9.2 amps, 1.5 HP. Frame unmarked.").unreadable).toEqual(["frame"]);
  });

  test("a breaker's poles glued and misspelled", () => {
    expect(read("1.5hp, brekr 20a 2pole").site).toEqual({ breakerAmps: 20, breakerPoles: 2 });
    expect(read("HP 1, the brekaer is a 15 amp, double poel").site).toEqual({
      breakerAmps: 15,
      breakerPoles: 2,
    });
  });

  test.each(["our team maps 20 pools", "I dont wanna tipe 20 things", "the kid faces 3 tests"])(
    "everyday words stay what they are: %s",
    (text) => expect(read(text).nameplate).toEqual({}),
  );
});

describe("letters by themselves", () => {
  test.each([
    ["frame fifty six why, horsepower two", { frame: "56Y", hp: 2 }],
    ["marco cincuenta y seis jota", { frame: "56J" }],
    ["last line 'FR 48Y INS CL B'", { frame: "48Y", insulationClass: "B" }],
    ["B's fine. class B's", {}],
    ["TYPE WR-C; HP 3/4", { modelNumbers: ["WR-C"], hp: 0.75 }],
  ])("%s", (text, expected) => {
    expect(valuesOf(readMessage(text)).nameplate).toEqual(expected);
  });
});
