import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read.ts";

const label = (text: string) => valuesOf(readMessage(text)).nameplate;
const dual = { hp: 1.5, serviceFactor: 1.1, volts: [115, 230], amps: [19.2, 9.6] };

describe("layouts", () => {
  test.each([
    ["label order", "HP 1.5 SF 1.1 V 115/230 A 19.2/9.6"],
    ["values first", "1.5 HP, 1.1 SF, 115/230 V, 19.2/9.6 A"],
    ["run together", "HP1.5SF1.1V115/230A19.2/9.6"],
    ["a line each", "HP: 1 1/2\nSF: 1.10\nVOLTS: 115/230\nAMPS: 19.2/9.6"],
    ["name and value on lines of their own", "HP\n1.5\nSF\n1.1\nVOLTS\n115/230\nAMPS\n19.2/9.6"],
    ["all names, then all values", "HP SF VOLTS AMPS\n1.5 1.1 115/230 19.2/9.6"],
    ["values above their names", "1.5\nHP\n1.1\nSF\n115/230\nVOLTS\n19.2/9.6\nAMPS"],
    ["tabs", "HP\tSF\tV\tA\n1-1/2\t1.10\t115/230\t19.2/9.6"],
    ["a drawn table", "| HP | SF | V | A |\n| 1.5 | 1.1 | 115/230 | 19.2/9.6 |"],
    ["names above an empty line, values below", "HP\nSF\nVOLTS\nAMPS\n\n1.5\n1.1\n115/230\n19.2/9.6"],
    ["one voltage above the other", "HP 1.5 SF 1.1\nVOLTS\n115\n230\nAMPS\n19.2\n9.6"],
    ["numbered lines", "1 - hp is 1.5\n2 - sf is 1.1\n3 - volts 115/230\n4 - amps 19.2/9.6"],
    [
      "values before what they are",
      "1.5 is what it says at hp, sf 1.1, 115/230 is the volts, 19.2/9.6 for amps",
    ],
    ["numbers of a list in brackets", "(1) HP 1.5 (2) SF 1.1 (3) volts 115/230 (4) amps 19.2/9.6"],
    ["numbers of a list in one line", "1. HP 1.5 2. SF 1.1 3. volts 115/230 4. amps 19.2/9.6"],
    ["a wide gap between the two of a pair", "HP 1.5 SF 1.1\nVOLTS: 115   230\nAMPS: 19.2   9.6"],
    [
      "a rule under the heads of a table",
      "| HP | SF | V | A |\n|---|---|---|---|\n| 1.5 | 1.1 | 115/230 | 19.2/9.6 |",
    ],
    ["values broken over lines", "HP 1.5 SF 1.1 VOLTS 115/\n230 AMPS 19.2/\n9.6"],
    ["letters spaced out", "H P 1 . 5\nS F 1 . 1\nV 1 1 5 / 2 3 0\nA 1 9 . 2 / 9 . 6"],
    ["a table with another column", "asset,hp,sf,volts,amps\nPMP-2,1.5,1.1,115/230,19.2/9.6"],
    ["look-alike figures in the names", "HP l.5 SF l.l V0LTS ll5/23O AMP5 l9.2/9.6"],
    ["dot leaders", "HP......1.5\nSF......1.10\nV.......115/230\nA.......19.2/9.6"],
    ["misspelled", "horspower 1.5 sevice factor 1.1 volst 115/230 ampss 19.2/9.6"],
    ["vowels left out", "HRSPWR 1.5 SRV FCTR 1.1 VLTS 115/230 AMPS 19.2/9.6"],
    ["no names at all", "1.5 1.1 115/230 19.2/9.6"],
    ["in two questions and answers", "hp? 1.5. sf? 1.1. volts? 115/230. amps? 19.2/9.6"],
  ])("%s", (_, text) => {
    expect(label(text)).toEqual(dual);
  });
});

describe("values apart from their names, or close to other figures", () => {
  test.each([
    ["HP\nSF\nVOLTS\n\n1\n1.65\n115/230", { hp: 1, serviceFactor: 1.65, volts: [115, 230] }],
    ["HP 1\n1/2\nVOLTS 115/\n230\nFRAME 56\nY", { hp: 1.5, volts: [115, 230], frame: "56Y" }],
    // NANP: no area code begins with 0 or 1, so this is no telephone number.
    ["1hp 115/230 3450 48Y", { hp: 1, volts: [115, 230], rpm: [3450], frame: "48Y" }],
    [
      "V 115/230 and A 16.0/8.0 and SFA 18.2/9.1",
      { volts: [115, 230], amps: [16, 8], serviceFactorAmps: [18.2, 9.1] },
    ],
    ["1 1/2 ..... HP\n230 ..... V", { hp: 1.5, volts: [230] }],
    ["theres 2hp on the tag", { hp: 2 }],
    ["3/4 - 115/230 - 3450 - 48Y", { hp: 0.75, volts: [115, 230], rpm: [3450], frame: "48Y" }],
    ["S.F.-1.27 V-230", { serviceFactor: 1.27, volts: [230] }],
    ["S.F....1.10\nRPM....3450", { serviceFactor: 1.1, rpm: [3450] }],
    ["RPM2860INSF", { rpm: [2860], insulationClass: "F" }],
    ["SF1.4/INSB/CODEL/AMB50C", { serviceFactor: 1.4, insulationClass: "B", kvaCode: "L", ambientC: 50 }],
    ["HP1,5SF1,1V230A8,4RPM3450", { hp: 1.5, serviceFactor: 1.1, volts: [230], amps: [8.4], rpm: [3450] }],
    ["1hp 230v 3 450 S56Y", { hp: 1, volts: [230], rpm: [3450], frame: "S56Y" }],
    ["208 to two thirty volts", { volts: [208, 230] }],
    ["115 v 9.8 a 3/4 hp 3450 rpm", { volts: [115], amps: [9.8], hp: 0.75, rpm: [3450] }],
    ["de 208 a 230 voltios, 9.2 a 8.8 amps", { volts: [208, 230], amps: [9.2, 8.8] }],
    ["HP.............1.0\nSF.............1.25", { hp: 1, serviceFactor: 1.25 }],
    ["horsepower is one service factor is one point four", { hp: 1, serviceFactor: 1.4 }],
    ["THE END THAT MEETS THE PUMP IS A SQUARE FLANGE", { flange: "square" }],
    ["56Y FR K CODE", { frame: "56Y", kvaCode: "K" }],
    ["HP 1 SF 1\n.4 RPM 3450", { hp: 1, serviceFactor: 1.4, rpm: [3450] }],
    ["thre quater hp, 115/230 vlots", { hp: 0.75, volts: [115, 230] }],
    ["box in the garage says 1.5 HP, motor label says 3/4", { hp: 0.75 }],
    ["plate says CAP 53 MFD, sorry, 35, I swapped the digits", { capacitorUf: 35 }],
    ["1.10 <- service factor\n230 <- volts", { serviceFactor: 1.1, volts: [230] }],
    ["VOLTS 115/\n230\nRPM 34\n50", { volts: [115, 230], rpm: [3450] }],
    ["PH|l\nHZ|6O", { phase: 1, hz: [60] }],
    ["Alcanzo a ver 230 en VOLTS, 34 y algo en RPM, y 1.5 en HP", { volts: [230], hp: 1.5 }],
    ["motor is 1 HP, draws 16.6/8.3 amps at service factor", { hp: 1, serviceFactorAmps: [16.6, 8.3] }],
    ["water killed the bearings. 1.5hp 56j", { hp: 1.5, frame: "56J" }],
    ["10.0 FLA, continuous, 40 °C.", { amps: [10], duty: "continuous", ambientC: 40 }],
    ["then a 230 with a V. then 8.9 with an A.", { volts: [230], amps: [8.9] }],
    ["Type is listed as CX, model KRB-1002", { modelNumbers: ["CX", "KRB-1002"] }],
    [
      "2HP-230V-60HZ-1PH-3450RPM-CONT-56J-INS.B",
      {
        hp: 2,
        volts: [230],
        hz: [60],
        phase: 1,
        rpm: [3450],
        duty: "continuous",
        frame: "56J",
        insulationClass: "B",
      },
    ],
    ["MODEL 2HP-230V-X", { modelNumbers: ["2HP-230V-X"] }],
    ["SFA 16.O/B.O", { serviceFactorAmps: [16, 8] }],
  ])("%s", (text, expected) => {
    expect(label(text)).toEqual(expected);
  });
});

describe("service factor, its amps and its horsepower", () => {
  test.each([
    ["SF 1.1 AMPS 9.6", { serviceFactor: 1.1, amps: [9.6] }],
    ["SF AMPS 9.6", { serviceFactorAmps: [9.6] }],
    ["SFA 9.6 FLA 8.8", { serviceFactorAmps: [9.6], amps: [8.8] }],
    ["max 9.6 amps", { serviceFactorAmps: [9.6] }],
    ["SFHP 1.65", { totalHp: 1.65 }],
    ["1.5 hp, 1.1 sf", { hp: 1.5, serviceFactor: 1.1 }],
    ["HP 1 THP 1.65", { hp: 1, totalHp: 1.65 }],
  ])("%s", (text, expected) => {
    expect(label(text)).toEqual(expected);
  });
});

describe("frame, face, shaft, speeds, phase and letters", () => {
  test.each([
    ["56Y", { frame: "56Y" }],
    ["frame 48-y", { frame: "48Y" }],
    ["fifty-six J frame", { frame: "56J" }],
    ["FR S6Y", { frame: "56Y" }],
    ["frame 56", { frame: "56" }],
    ["FR 145TC", { frame: "145TC" }],
    ["square flange, threaded shaft", { flange: "square", shaft: "threaded" }],
    ["brida redonda, eje con cuña", { flange: "round", shaft: "keyed" }],
    ["the shaft has a keyway", { shaft: "keyed" }],
    ["four long bolts run through the motor", { flange: "through-bolt" }],
    ["two speed 3450/1725", { speedKind: "two", rpm: [3450, 1725] }],
    ["SPEED: SINGLE", { speedKind: "single" }],
    ["PH 1 HZ 60", { phase: 1, hz: [60] }],
    ["3Ø", { phase: 3 }],
    ["monofásico, 60 ciclos", { phase: 1, hz: [60] }],
    ["INS CL B CODE L DUTY CONT", { insulationClass: "B", kvaCode: "L", duty: "continuous" }],
    ["CODEK INSF DUTY 60 MIN", { kvaCode: "K", insulationClass: "F", duty: 60 }],
    ["CAP 25 MFD 370 VAC", { capacitorUf: 25 }],
    ["class B insulation. I measured the pad", { insulationClass: "B" }],
    ["KEYED SHAFT NO THREADS", { shaft: "keyed" }],
    ["No es two speed, es single speed, ok?", { speedKind: "single" }],
    ["amperios 9.0, amperios max 10.5", { amps: [9], serviceFactorAmps: [10.5] }],
    ["1.5 HP, service factor horsepower 1.65", { hp: 1.5, totalHp: 1.65 }],
    ["I need to know if the shaft is keyed. Motor 2 HP", { hp: 2 }],
    ["insulation F, and there's a 40 by AMB", { insulationClass: "F", ambientC: 40 }],
    ["0.55 kW 0.75 HP", { kw: 0.55, hp: 0.75 }],
    ["the flange is square about 6.5 inches across", { flange: "square" }],
    ["1 HP pump on the square concrete pad by the round hot tub", { hp: 1 }],
    ["our pool is square, motor 1 HP", { hp: 1 }],
    ["it sits on a round patch of bricks, 1 HP", { hp: 1 }],
    ["la cara donde va la bomba es cuadrada", { flange: "square" }],
    ["the impeller screws right onto the shaft", { shaft: "threaded" }],
    ["el eje tiene rosca, no tiene cuña", { shaft: "threaded" }],
    [
      "Run capacitor is marked 30 µF 370 VAC. Motor is 1.5 HP, 230 V.",
      { capacitorUf: 30, hp: 1.5, volts: [230] },
    ],
    ["I replaced the capacitor, a 30 mfd 370 volt one, it still hums", { capacitorUf: 30 }],
    ["amperaje 8.2, amperaje con factor de servicio 9.4", { amps: [8.2], serviceFactorAmps: [9.4] }],
  ])("%s", (text, expected) => {
    expect(label(text)).toEqual(expected);
  });
});

describe("model and serial numbers are copied, never interpreted", () => {
  test.each([
    ["model px56y-115", { modelNumbers: ["PX56Y-115"] }],
    ["MODEL S0LB-1O5I HP 1", { modelNumbers: ["S0LB-1O5I"], hp: 1 }],
    ["Part no. QB-2107-R\nCat. no. 81WX4", { modelNumbers: ["QB-2107-R", "81WX4"] }],
    ["Cat# K-1102 Part# 1081-A Type: SCF", { modelNumbers: ["K-1102", "1081-A", "SCF"] }],
    ["PART 3450-115/230-A", { modelNumbers: ["3450-115/230-A"] }],
    ["serial 22-40318 hp 1", { serialNumber: "22-40318", hp: 1 }],
    ["serial no. PX 44 1093", { serialNumber: "PX 44 1093" }],
    ["the seal part number is 19-002, the motor is model PO-3", { modelNumbers: ["PO-3"] }],
    ["S/N 08-33-71", { serialNumber: "08-33-71" }],
    ["it just says 4471093 by the wires", {}],
    ["part nos. 88-4417 and 88-4417A, 230 volts", { modelNumbers: ["88-4417", "88-4417A"], volts: [230] }],
    ["Part number is TR-20B, and in small print TR-21B.", { modelNumbers: ["TR-20B", "TR-21B"] }],
    ["model TR-20B and 230/115 volts", { modelNumbers: ["TR-20B"], volts: [230, 115] }],
    ["the motor type is EHL, 7.2 amps", { modelNumbers: ["EHL"], amps: [7.2] }],
    ["TYPE CP  FORM 2A  HP 1", { modelNumbers: ["CP"], hp: 1 }],
  ])("%s", (text, expected) => {
    expect(label(text)).toEqual(expected);
  });
});
