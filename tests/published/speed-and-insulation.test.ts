import { describe, expect, test } from "vitest";
import { affinity, measuredHalfSpeedPowerRatio, realPowerRatio } from "../../src/engineering/affinity.ts";
import { insulationMaxC, isInsulationClass, standardAmbientC } from "../../src/engineering/insulation.ts";
import { polesFromRpm, slip, synchronousRpm } from "../../src/engineering/speed.ts";

describe("synchronous speed, 120 x Hz / poles (definition; electricalengineeringtoolbox.com, textbook problem)", () => {
  test.each([
    [60, 2, 3600],
    [60, 4, 1800],
    [60, 6, 1200],
    [60, 8, 900],
    [50, 2, 3000],
    [50, 4, 1500],
    [50, 6, 1000],
    [50, 8, 750],
  ])("%s Hz, %s poles: %s rpm", (hz, poles, rpm) => {
    expect(synchronousRpm(hz, poles)).toBe(rpm);
  });

  test("1450 rpm at 50 Hz slips by 50 rpm (engineeringtoolbox.com)", () => {
    expect(slip(1450, 50, 4) * 1500).toBeCloseTo(50, 9);
  });
});

describe("usual full-load speeds of small motors (NEMA MG 1 10.32, section from memory; handbook pages)", () => {
  test.each([
    [3450, 60, 2],
    [3400, 60, 2],
    [3525, 60, 2],
    [1725, 60, 4],
    [1700, 60, 4],
    [1770, 60, 4],
    [2850, 50, 2],
    [2800, 50, 2],
    [2920, 50, 2],
    [1425, 50, 4],
    [1400, 50, 4],
    [1460, 50, 4],
  ])("%s rpm at %s Hz is a %s-pole speed", (rpm, hz, poles) => {
    expect(polesFromRpm(rpm, hz)).toBe(poles);
  });
});

describe("insulation classes (IEC 60085; NEMA MG 1 12.42)", () => {
  test("A 105, B 130, F 155, H 180 deg C", () => {
    expect(insulationMaxC).toEqual({ A: 105, B: 130, F: 155, H: 180 });
  });

  test("no other letter is taken for a class of a small motor", () => {
    const known = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"].filter(isInsulationClass);
    expect(known).toEqual(["A", "B", "F", "H"]);
  });

  test("a motor without a marked ambient is built for 40 deg C (NEMA MG 1 12.42)", () => {
    expect(standardAmbientC).toBe(40);
  });
});

describe("affinity laws", () => {
  test("1750 to 3500 rpm: 100 gpm, 100 ft, 5 hp become 200, 400, 40 (engineeringtoolbox.com)", () => {
    const ratio = affinity(1750, 3500);
    expect([100 * ratio.flow, 100 * ratio.head, 5 * ratio.power]).toEqual([200, 400, 40]);
  });

  test("1000 to 1200 rpm: 100 m3/h, 40 m, 10 kW become 120, 57.6, 17.28 (processconvert.com)", () => {
    const ratio = affinity(1000, 1200);
    expect(100 * ratio.flow).toBeCloseTo(120, 9);
    expect(40 * ratio.head).toBeCloseTo(57.6, 9);
    expect(10 * ratio.power).toBeCloseTo(17.28, 9);
  });

  test("10 percent faster: 10, 21 and about 33 percent more (engineering digest)", () => {
    const ratio = affinity(1000, 1100);
    expect(ratio.flow).toBeCloseTo(1.1, 9);
    expect(ratio.head).toBeCloseTo(1.21, 9);
    expect(ratio.power).toBeCloseTo(1.33, 2);
  });

  test("half speed takes one-eighth of the power in theory (U.S. EPA blog, 2014)", () => {
    expect(affinity(3450, 1725).power).toBe(0.125);
  });

  test("a measured pump took 381 of 1957 W at half speed (U.S. EPA pool pump list, data set 2ppn-v3hp)", () => {
    expect(measuredHalfSpeedPowerRatio).toBeCloseTo(0.1947, 4);
    expect(1957 * realPowerRatio(0.5)).toBeCloseTo(381, 6);
    expect(realPowerRatio(1)).toBe(1);
  });
});
