import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read.ts";
import type { RatingName } from "../../../src/nameplate/vocabulary.ts";

const read = (text: string) => valuesOf(readMessage(text));

describe("a correction leaves the final value", () => {
  test.each([
    ["hp is 1.5, no wait 2", { hp: 2 }],
    ["not 56J, 56Y", { frame: "56Y" }],
    ["RPM 3540, sorry, 3450", { rpm: [3450] }],
    ["volts 115/230... er, looked again, 208-230", { volts: [208, 230] }],
    ["no es 230, es 115", { volts: [115] }],
    ["el factor de servicio no es 1.56, es 1.65", { serviceFactor: 1.65 }],
    ["two speed? no, single speed", { speedKind: "single" }],
    ["hp 1.5 *1.0", { hp: 1 }],
    ["Model QX-7714-K, oops, QX-7714-R", { modelNumbers: ["QX-7714-R"] }],
    ["The shaft isn't threaded, it has a keyway in it", { shaft: "keyed" }],
    ["HP is 2 (I said 1.5 earlier, ignore that)", { hp: 2 }],
    ["rpm I gave was 1725 and that's wrong, 3450", { rpm: [3450] }],
    ["I thought it was 2hp but the sticker says 1.5", { hp: 1.5 }],
    ["That 56Y was from the other motor, this one's 48Y", { frame: "48Y" }],
    ["Did I write 8.2 amps? Should be 9.2", { amps: [9.2] }],
    ["RPM 1725. No. RPM 3450.", { rpm: [3450] }],
    ["hp: 2 -> 1.5", { hp: 1.5 }],
    ["Amps I read as 8.6 first. With the flash on it's 9.6.", { amps: [9.6] }],
    ["Volts I told you 115. Flipped the tag over and it's 230 only.", { volts: [230] }],
    ["hp uno y medio digo uno", { hp: 1 }],
    ["HP 1.5 <- wrong, it's 1", { hp: 1 }],
    ["hp 1.5... wait that's the service factor. hp is 1", { hp: 1, serviceFactor: 1.5 }],
    ["frame 56J, I mean Y", { frame: "56Y" }],
    ["HP 3/4 (my mistake, HP 1)", { hp: 1 }],
    ["HP 1.5 crossed out and 1.0 written in pen", { hp: 1 }],
    ["Amps I first thought was 8.9 but with the glasses on it's 9.9", { amps: [9.9] }],
    ["hp 1 i thought, but its 1.5", { hp: 1.5 }],
    ["HP 2, rpm 3450. scratch the 3450, wrong line", { hp: 2 }],
    ["SF 1.25, HP 1. I take back the 1.25 SF", { hp: 1 }],
    ["hp 2, 230 v. olvide lo de los volts", { hp: 2 }],
    ["ignore what i said about the hp, its really 2", { hp: 2 }],
    ["don't forget the 1.25 SF", { serviceFactor: 1.25 }],
    ["He says 1725 rpm, I say 3450. Went and checked, I was right.", { rpm: [3450] }],
    ["mi esposo dice que son 3450 y yo 1725, tenía razón él", { rpm: [3450] }],
    ["I read 48Y, my son says 56Y. I was wrong", { frame: "56Y" }],
    ["what does SF 1.35 mean? it's on my motor label", { serviceFactor: 1.35 }],
    ["what does SF 1.35 mean?", {}],
    ["I want to say it's a 56Y, hp 1.5", { frame: "56Y", hp: 1.5 }],
    ["It's not 1725 like the website says, it's 3450.", { rpm: [3450] }],
    ["I can make out 230 and 3450 and that's about it", { volts: [230], rpm: [3450] }],
    ["does a pool motor usually need 115 or 230 volts?", {}],
  ])("%s", (text, expected) => {
    expect(read(text).nameplate).toEqual(expected);
  });
});

describe("what cannot be read is named, with no value", () => {
  test.each<[string, RatingName[]]>([
    ["can't read the sf or the amps", ["serviceFactor", "amps"]],
    ["volts is rubbed off", ["volts"]],
    ["SF ???", ["serviceFactor"]],
    ["AMPS: (illegible)", ["amps"]],
    ["frame is 56 something", ["frame"]],
    ["its either 48Y or 56Y, cant tell", ["frame"]],
    ["sf 1.5 or 1.6, can't tell", ["serviceFactor"]],
    ["hp 1.?", ["hp"]],
    ["volts reads 2_0", ["volts"]],
    ["11?/230 volts", ["volts"]],
    ["amps start with a 9, the rest is gone", ["amps"]],
    ["could be 48Y or 46Y", ["frame"]],
    ["volts 115/2--", ["volts"]],
    ["SF looks like 1.4 but might be 1.1", ["serviceFactor"]],
    ["the amps could be a 6 or an 8 point 4", ["amps"]],
    ["5?J for the frame", ["frame"]],
    ["volts 2??", ["volts"]],
    ["looks like 8.6 or maybe 8.8 on the amps", ["amps"]],
    ["amps: something .6", ["amps"]],
    ["volts? no idea, it's worn", ["volts"]],
    ["hp is unreadable, so is the rpm", ["hp", "rpm"]],
    ["Amps are gone. Same with volts.", ["amps", "volts"]],
    ["los amperios están borrados y el voltaje también", ["amps", "volts"]],
    ["el modelo no se ve y la serie tampoco", ["modelNumbers", "serialNumber"]],
    ["I got the hp fine, amps are gone", ["amps"]],
    ["rpm is missing, volts ok", ["rpm"]],
    ["motor is rusty and i need the volts", []],
    ["neither the volts nor the amps can be read", ["volts", "amps"]],
    ["Nothing on it says phase. No rpm either.", ["phase", "rpm"]],
    ["los rpm tampoco vienen", ["rpm"]],
    ["A (can't read) / RPM (can't read)", ["amps", "rpm"]],
    ["where it says RPM theres just a scratch", ["rpm"]],
    ["the amps and volts are burnt white by the sun", ["amps", "volts"]],
    ["the hp was painted black by the previous owner", ["hp"]],
    ["the frame is somewhere under the strap", ["frame"]],
    ["the numbers at the bottom are mush. That's hp and amps.", ["hp", "amps"]],
    ["model starts 74-2 then scraped", ["modelNumbers"]],
    ["es 115 o 230, no distingo", ["volts"]],
    ["le falta la parte de abajo a la etiqueta", []],
    ["rpm ??? / a ??? / hz ???", ["rpm", "amps", "hz"]],
    ["the label ripped so the amps didn't survive", ["amps"]],
    ["the rpm wore off", ["rpm"]],
    ["sf=?, a=?, rpm=?", ["serviceFactor", "amps", "rpm"]],
    ["The amps number has a crack through it.", ["amps"]],
    ["Everything except the serial number is legible", ["serialNumber"]],
    ["la fase no la dice", ["phase"]],
    ["el amperaje, el sol se lo comió", ["amps"]],
    ["My label doesn't mention rpm. or frame.", ["rpm", "frame"]],
    ["somebody sprayed right over the model and serial numbers", ["modelNumbers", "serialNumber"]],
    ["I don't see any phase marking or duty on it", ["phase", "duty"]],
    ["The hp and the sf were on the part that tore off.", ["hp", "serviceFactor"]],
    ["frame 5-something-Y", ["frame"]],
    ["parece 48Y pero puede ser 46Y", ["frame"]],
    ["its impossible to see the horsepower with all this dirt", ["hp"]],
    ["the amps say 1 and then there is a hole in the label", ["amps"]],
    ["could be 1.25 could be 1.75 on the sf", ["serviceFactor"]],
    ["la parte de los amperes está quemada por el sol", ["amps"]],
    ["se le fue la tinta al voltaje", ["volts"]],
    ["el factor de servicio dice 1 punto y ya no se ve", ["serviceFactor"]],
    ["the sun ate the volts", ["volts"]],
    ["everything is readable except the service factor", ["serviceFactor"]],
    ["can't for the most part even make out the frame", ["frame"]],
    ["los voltios no se alcanzan a leer", ["volts"]],
    ["no se ve el factor de servicio", ["serviceFactor"]],
    ["there's no service factor on the label", ["serviceFactor"]],
    ["hp is unreadable, so is the rpm", ["hp", "rpm"]],
    ["Nothing on it says phase. No rpm either.", ["phase", "rpm"]],
    ["the service factor part has peeled off", ["serviceFactor"]],
    ["THP box is emtpy", ["totalHp"]],
    ["where the amps should be its just white", ["amps"]],
    ["The frame though, hopeless.", ["frame"]],
    ["First digit of the amps is scratched, could be 19.2 or 9.2.", ["amps"]],
  ])("%s", (text, unreadable) => {
    expect(read(text)).toEqual({ nameplate: {}, site: {}, unreadable });
  });
});

describe("a doubt is about one value, not about its neighbours", () => {
  test.each([
    [
      "hp 2, sf is 1.1 or 1.2 can't tell which, volts 230",
      { nameplate: { hp: 2, volts: [230] }, unreadable: ["serviceFactor"] },
    ],
    [
      "thp is 1.65, that's NOT the hp, the hp is 1.5",
      { nameplate: { totalHp: 1.65, hp: 1.5 }, unreadable: [] },
    ],
    ["the phone number on it ends in 3450, I find 1 HP", { nameplate: { hp: 1 }, unreadable: [] }],
    ["the fraim letter is unreadible but its 1hp", { nameplate: { hp: 1 }, unreadable: ["frame"] }],
    [
      "Not sure which of these matter so here you go, TYPE QVB, TIME: CONT",
      { nameplate: { modelNumbers: ["QVB"], duty: "continuous" }, unreadable: [] },
    ],
    ["los HP no se si es 1 o 1.5, volts 115/230", { nameplate: { volts: [115, 230] }, unreadable: ["hp"] }],
  ])("%s", (text, expected) => {
    expect(read(text)).toMatchObject(expected);
  });
});

describe("a bare answer is read as what was asked", () => {
  test.each<[string, RatingName[], object]>([
    ["1.5", ["hp"], { nameplate: { hp: 1.5 } }],
    ["the second one says 9.6", ["amps"], { nameplate: { amps: [9.6] } }],
    [
      "1, 1.4, 9.6",
      ["hp", "serviceFactor", "amps"],
      { nameplate: { hp: 1, serviceFactor: 1.4, amps: [9.6] } },
    ],
    ["square", ["flange"], { nameplate: { flange: "square" } }],
    ["240v", ["supplyVolts"], { site: { supplyVolts: 240 } }],
    ["two", ["breakerPoles"], { site: { breakerPoles: 2 } }],
    ["just one", ["speedKind"], { nameplate: { speedKind: "single" } }],
    ["can't read it", ["serviceFactor"], { unreadable: ["serviceFactor"] }],
    ["2 hp", ["volts"], { nameplate: { hp: 2 } }],
    ["привет", ["modelNumbers"], { nameplate: {} }],
    ["yes", ["hp"], { nameplate: {}, unreadable: [] }],
    ["3450", ["hp"], { nameplate: { rpm: [3450] } }],
    ["two handles tied", ["breakerPoles"], { site: { breakerPoles: 2 } }],
    ["just the one handle", ["breakerPoles"], { site: { breakerPoles: 1 } }],
    ["single i think", ["phase"], { nameplate: { phase: 1 } }],
    ["it's a Marmalade F5", ["pumpModel"], { site: { pumpModel: "Marmalade F5" } }],
    ["What do you mean", ["pumpModel"], { nameplate: {}, site: {}, unreadable: [] }],
    ["240 i believe", ["supplyVolts"], { site: { supplyVolts: 240 } }],
    ["10 hours", ["hoursPerDay"], { site: { hoursPerDay: 10 } }],
  ])("%s after being asked for %s", (text, expecting, expected) => {
    expect(valuesOf(readMessage(text, { expecting }))).toMatchObject(expected);
  });

  test("a reading keeps the customer's own words and where they stand", () => {
    const { readings } = readMessage("hi, my service factor looks like 1.65 thanks");
    expect(readings).toEqual([
      {
        rating: "serviceFactor",
        value: 1.65,
        words: "service factor looks like 1.65",
        span: { start: 7, end: 37 },
      },
    ]);
  });
});
