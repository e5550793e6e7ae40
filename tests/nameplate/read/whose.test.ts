import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read.ts";

const read = (text: string) => valuesOf(readMessage(text));

describe("only the label of the motor in question counts", () => {
  test.each([
    ["My clamp says 7.3 amps but the plate says 9.6 amps", { amps: [9.6] }],
    ["the impeller says 1.5 HP but the tag on the motor says 1 HP", { hp: 1 }],
    ["the manual says 1.5 HP but the plate says 1 HP", { hp: 1 }],
    ["my neighbor has a 2 hp 56J, mine is 1.5 hp 56Y", { hp: 1.5, frame: "56Y" }],
    ["have 1 hp 1.4 sf, would like 1.5 hp", { hp: 1, serviceFactor: 1.4 }],
    ["Can I put a 2 hp motor in place of my 1.5 hp?", { hp: 1.5 }],
    ["1/2 HP, 115 V. Don't mix it up with the spa, that's 2 HP 230 V.", { hp: 0.5, volts: [115] }],
    [
      "Spa booster motor: 1 HP 48Y. Pool motor: 1.5 HP 56Y. It's the spa booster I need to replace, the pool one is fine.",
      { hp: 1, frame: "48Y" },
    ],
    ["compadre el motor dice HP 1 1/2", { hp: 1.5 }],
    ["es de 2 caballos pero el vecino tiene uno de 3. el mio dice 230v", { hp: 2, volts: [230] }],
    ["2 hp, frame 56Y. that is what my wife reads to me", { hp: 2, frame: "56Y" }],
    ["my house is 3450 oak street lol. motor is 1 hp", { hp: 1 }],
    ["used to have a 56J. current dead one's frame is 56Y", { frame: "56Y" }],
    ["PUMP A (works great)\nHP 1.5\nV 230\n\nPUMP B (hums)\nHP 1\nV 115", { hp: 1, volts: [115] }],
    ["> Common motors are 1 hp 56Y.\n\nmine is 1.5 hp", { hp: 1.5 }],
    ["call 305-555-0156 after 3:45. motor is 1 hp", { hp: 1 }],
    ["20,000 gallons, 22 psi, lid o-ring 8.5 inches, motor 1 hp", { hp: 1 }],
    ["installed 06/2015 for $230. 1 hp", { hp: 1 }],
    ["Is 56J the round one? Mine says 56J.", { frame: "56J" }],
    ["it ran at 12.4 amps before it quit, label 9.6", { amps: [9.6] }],
    ["your website shows 10.4 amps. my plate says 9.6", { amps: [9.6] }],
    ["I see 2 stickers: motor 1.5 HP, pump 2.0 HP max", { hp: 1.5 }],
    ["1) HP 1.5 2) SF 1.1", { hp: 1.5, serviceFactor: 1.1 }],
    ["1725 Heron Lane. Motor 3/4 hp", { hp: 0.75 }],
    ["Left motor dead, right motor ok. Left label: HP .5. Right label: HP 1.", { hp: 0.5 }],
    ["the one for the slide (3 HP) still runs, the one for the filter quit and reads 1.5 HP", { hp: 1.5 }],
    ["a sticker says 115V but its on the timer, the motor one says 230V", { volts: [230] }],
    ["The spare (works) is 1 hp. The dead one: 1.5 hp", { hp: 1.5 }],
    ["it says 1HP on the wet end and .95 THP on the motor", { totalHp: 0.95 }],
    ["I'd like to go up to a 2 hp. What's on there now is a 1.5 hp", { hp: 1.5 }],
    ["I climbed behind the heater and what I see is FR 56Y", { frame: "56Y" }],
    ["This is what you want: 1 1/2 HP", { hp: 1.5 }],
    ["12 gauge wire, 9.6 amp motor", { amps: [9.6] }],
    ["los amps son 8.6 y es 1 HP", { amps: [8.6], hp: 1 }],
    ["spa pump 2 hp is fine, pool pump 1.5 hp is the one that died", { hp: 1.5 }],
    ["Filter pump is fine (2 HP). The waterfall one died and its label says 3/4 HP", { hp: 0.75 }],
    ["Two pumps. One runs a waterfall, it's 1 hp. The other is dead, it's 1.5 hp", { hp: 1.5 }],
    ["On the motor it says 9.8 amps and on the filter it says max 15 amps", { amps: [9.8] }],
    ["My brother in law swears it's a 2 hp. The label says 1.5.", { hp: 1.5 }],
    ["the motor I pulled is 1 hp, 3450", { hp: 1, rpm: [3450] }],
    ["Home inspector listed it as 2 hp. It's clearly 1.5 on the tag.", { hp: 1.5 }],
    ["In the box marked AMPS is 8.8", { amps: [8.8] }],
    ["I wrote down 3450 rpm", { rpm: [3450] }],
    ["I took the old 2 HP out years ago and the one I've had since is 1.5 HP", { hp: 1.5 }],
    ["Not the one by the hot tub, that's 2 HP. The one by the filter: 1 HP", { hp: 1 }],
    ["the guy said 12 amps is what it was pulling, tag full load amps 10.2", { amps: [10.2] }],
    ["they quoted a 2.25 THP variable speed for 900, current one is 1 HP", { hp: 1 }],
    ["My uncle (retired electrician) reckons 12 amps. Label: 9.8 amps", { amps: [9.8] }],
    ["WHY DO YOU KEEP ASKING ITS 230 VOLTS", { volts: [230] }],
  ])("%s", (text, expected) => {
    expect(read(text).nameplate).toEqual(expected);
  });

  test.each([
    [
      "My sister's pump takes 12 amps, ours 7.4. Also ours is 230 and hers runs on 115.",
      { amps: [7.4], volts: [230] },
    ],
    ["neighbor has a 2hp 56J, mine is only 3/4 and 48Y", { hp: 0.75, frame: "48Y" }],
    [
      "The listing shows 1.5 hp, 230 volts, 9.6 amps. Mine has 1.5, 208-230 and 9.2",
      { hp: 1.5, volts: [208, 230], amps: [9.2] },
    ],
    ["La bomba de mi hermana es de 115, la nuestra 230 y 9.8 amperes", { volts: [230], amps: [9.8] }],
    [
      "El de mi compadre jala 12 amperes, el mío 8.4. El de él es 115, el mío 230",
      { amps: [8.4], volts: [230] },
    ],
    ["My neighbor's is a 2 hp. Mine is 15 years old", {}],
  ])("what one's own is compared with names its figures: %s", (text, expected) => {
    expect(read(text).nameplate).toEqual(expected);
  });

  test.each([
    [
      "What do you charge for a 1.5 hp 48Y motor at 230 volts? That is what's on mine now.",
      { hp: 1.5, frame: "48Y", volts: [230] },
    ],
    ["Do you have a 3/4 hp, 48Y? The one I took off is exactly that.", { hp: 0.75, frame: "48Y" }],
    [
      "¿Cuánto cuesta uno de 1.5 hp, 56J, 230 volts? Es el que tengo puesto ahora.",
      { hp: 1.5, frame: "56J", volts: [230] },
    ],
    ["¿Tienen uno de 1 HP 115/230? Así dice la placa de la mía.", { hp: 1, volts: [115, 230] }],
    ["His says 1 hp 115/230 56J and so does mine", { hp: 1, volts: [115, 230], frame: "56J" }],
    ["Is 10.4 amps something you carry? Copied that straight off my label.", { amps: [10.4] }],
    ["I'd rather have 2 hp than the 1 hp I have now", { hp: 1 }],
    ["What do you charge for a 1.5 hp 48Y motor? That is what my neighbor has.", {}],
    ["How much is a 2 hp 56Y? That's not what's on mine.", {}],
    ["I saw a 2 hp 56Y online. This is what I have: 1 hp", { hp: 1 }],
    ["The garage compressor is 2 HP, 120 V. That's the one that quit.", {}],
    ["Can a 20 amp breaker run a 2 hp 230 v motor? That's our setup.", { hp: 2, volts: [230] }],
    [
      "You list 1.5 hp 56Y at $365. That's the one I have now, do I need anything else?",
      { hp: 1.5, frame: "56Y" },
    ],
    ["How much is a 1.5 hp 56J? It's what we have now and we'd like another.", { hp: 1.5, frame: "56J" }],
    ["¿Venden motores de 1 hp 56J? Es igualito al mío.", { hp: 1, frame: "56J" }],
    ["HP 1, SF 1.4. Forget what I said before about 2 hp.", { hp: 1, serviceFactor: 1.4 }],
    ["I want the exact same as before: 1 HP, 115/230, 56J", { hp: 1, volts: [115, 230], frame: "56J" }],
    ["quiero uno igual al que traigo: 2 hp, 230v, 56Y", { hp: 2, volts: [230], frame: "56Y" }],
    [
      "Would 1.5 hp, 10 amps, 230 volts be too much? Those are the numbers on my motor.",
      { hp: 1.5, amps: [10], volts: [230] },
    ],
    ["How much for 1.5 hp, 48Y frame? I'm reading it right off the old one.", { hp: 1.5, frame: "48Y" }],
  ])("what follows says whose the figures were: %s", (text, expected) => {
    expect(read(text).nameplate).toEqual(expected);
  });

  test.each([
    ["My pump: 1 hp, 115 V, 56J. Her pump: 1.5 hp, 230 V, 56Y.", { hp: 1, volts: [115], frame: "56J" }],
    ["Ours 48Y, theirs 56Y.", { frame: "48Y" }],
    ["The 1.5 hp is mine, the 2 hp belongs to the tenant", { hp: 1.5 }],
    ["Mine is bigger than my brother-in-law's 1 hp: the label says 2 hp", { hp: 2 }],
    ["My mother's pool pump stopped. Her motor says 1 HP, 56J.", { hp: 1, frame: "56J" }],
    ["I'm asking for my neighbor who has no computer. His motor is 1.5 hp, 56Y.", { hp: 1.5, frame: "56Y" }],
    ["Original was 1 hp. The current one's a 1.5, 230 volts.", { hp: 1.5, volts: [230] }],
    ["next door's is 230v and mine's 115v", { volts: [115] }],
    [
      "Got it off a friend: 1 HP, 56J. It's been on my pool four years and now it hums.",
      { hp: 1, frame: "56J" },
    ],
    [
      "I have 1.5 hp now and would rather have 1 hp. 56Y, 230 volts.",
      { hp: 1.5, frame: "56Y", volts: [230] },
    ],
    ["Amps on mine: 9.6. Amps on the one you recommend: 10.4.", { amps: [9.6] }],
    ["Mi suegra tiene una de 1 hp y la de nosotros es de 1.5, 230 voltios", { hp: 1.5, volts: [230] }],
    ["La bomba anterior era de 1 hp, esta es 1.5 hp 9.6 amps", { hp: 1.5, amps: [9.6] }],
    ["My pump and my sister's are the same model. Mine has a 1 hp motor, hers 3/4.", { hp: 1 }],
    ["This motor was my brother's before I got it: 1.5 hp, 56J", { hp: 1.5, frame: "56J" }],
    ["My husband wrote it down, his label is 1.5 hp", { hp: 1.5 }],
    ["one says 1 hp 115v, the other 1.5 hp 230v. the second was on the pump", { hp: 1.5, volts: [230] }],
  ])("two motors keep their figures apart: %s", (text, expected) => {
    expect(read(text).nameplate).toEqual(expected);
  });

  test.each([
    "is 56Y the same as 48Y?",
    "how many amps does a 1.5 hp motor usually pull at 230 volts?",
    "what does 1.65 service factor even mean",
    "would a 3/4 be enough for my pool? 12k gallons",
    "heater is 400k btu, 120/240v, and the salt cell says 8 amps",
    "there was a 2 HP on sale for $289",
    "our house number is 1725",
    "its 115 degrees out here",
    "hp 1 sf 1.25 ... actually disregard all of that, I was reading the tag on the cleaner pump",
    "it's not 230",
    "I never said 1.5 hp",
    "the motor before this one was a 2 hp 230v I think",
    "Well pump's a horse and a half but that ain't the one I'm asking on",
    "Do you guys carry 2.5 hp motors with a C flange at all",
    "we had a 1 hp motor from 2003 to 2019",
    "tracking no. 48Y-115-230-9961, says delivered",
  ])("no rating: %s", (text) => {
    expect(read(text)).toEqual({ nameplate: {}, site: {}, unreadable: [] });
  });
});

describe("a question about the label's own entry states it", () => {
  test.each([
    ["Can you cross reference part no. 3301-K? That's on the motor sticker.", { modelNumbers: ["3301-K"] }],
    ["what does code K mean? it's on my label", { kvaCode: "K" }],
    ["what does code K mean?", {}],
    ["Do you have a replacement for part number QX-2207?", { modelNumbers: ["QX-2207"] }],
    ["Is part number 9920-4 something you can match?", { modelNumbers: ["9920-4"] }],
    ["tienen reemplazo para el modelo QX-2207?", { modelNumbers: ["QX-2207"] }],
    ["do you carry model QX-22?", {}],
    ["does class B vs class F matter? mine is B", { insulationClass: "B" }],
    ["the air handler VFD reads 42 Hz 480 V. Pool motor: 60 HZ 230 V", { hz: [60], volts: [230] }],
    [
      "the booster is 3/4 hp 230. The main motor is 1.5 hp 230 with 8.4 amps",
      { hp: 1.5, volts: [230], amps: [8.4] },
    ],
    ["the display says 2850 rpm, the label is 3450 rpm", { rpm: [3450] }],
    ["Do you stock model AB-220? It's not on my label", {}],
  ])("%s", (text, expected) => {
    expect(read(text).nameplate).toEqual(expected);
  });
});

describe("facts of the place stay apart from the label", () => {
  test.each([
    ["20 amp double pole breaker", { breakerAmps: 20, breakerPoles: 2 }],
    ["pastilla de un polo, de 15 amperios", { breakerAmps: 15, breakerPoles: 1 }],
    ["it's wired for 240 volts", { supplyVolts: 240 }],
    ["two pole 30 amp breaker feeding it, 240 volts", { breakerAmps: 30, breakerPoles: 2, supplyVolts: 240 }],
    ["Tengo 240 voltios en el equipo", { supplyVolts: 240 }],
    ["my electrician says we have 208 volts here at the condo", { supplyVolts: 208 }],
    ["hours: we run it 8 a day", { hoursPerDay: 8 }],
    ["pump model no. is TR-56-115", { pumpModel: "TR-56-115" }],
    ["the outlet is 120", { supplyVolts: 120 }],
    ["pastilla doble de 20, 220 volts en la caja", { breakerAmps: 20, breakerPoles: 2, supplyVolts: 220 }],
    ["on a 20A GFCI double-pole", { breakerAmps: 20, breakerPoles: 2 }],
    ["mi casa tiene 220", { supplyVolts: 220 }],
    ["en el contacto hay 127 volts", { supplyVolts: 127 }],
    ["wires say 240 with my tester", { supplyVolts: 240 }],
    ["Supply is 208 three phase at this building", { supplyVolts: 208 }],
    ["cuesta 0.18 dólares el kWh", { pricePerKwh: 0.18 }],
    ["The pump itself is an Ellery Cove 5.", { pumpModel: "Ellery Cove 5" }],
    ["The dryer is on a 30, the pump's on a 20 two pole.", { breakerAmps: 20, breakerPoles: 2 }],
    ["Pump housing says Ostrand X-20.", { pumpModel: "Ostrand X-20" }],
    ["I measured 118 volts at the lugs", { supplyVolts: 118 }],
    [
      "breaker_amps;breaker_poles;supply_volts\n30;2;240",
      { breakerAmps: 30, breakerPoles: 2, supplyVolts: 240 },
    ],
    ["we pay 31 cents a kwh and run it 8 hours a day", { pricePerKwh: 0.31, hoursPerDay: 8 }],
    ["$0.42 a kilowatt hour", { pricePerKwh: 0.42 }],
    ["The pump is a Marlowe Cascade 340", { pumpModel: "Marlowe Cascade 340" }],
  ])("%s", (text, expected) => {
    expect(read(text)).toEqual({ nameplate: {}, site: expected, unreadable: [] });
  });

  test("volts that feed the pump and volts the motor is marked with", () => {
    const { nameplate, site } = read("There's 208 volts feeding the pump. Motor is marked 230, 2 HP.");
    expect({ nameplate, site }).toEqual({ nameplate: { volts: [230], hp: 2 }, site: { supplyVolts: 208 } });
  });

  test("a label voltage beside a wired one", () => {
    const { nameplate, site } = read("I've got it wired for 230 but the label says 115/230");
    expect(nameplate).toEqual({ volts: [115, 230] });
    expect(site).toEqual({ supplyVolts: 230 });
  });
});
