import { unit } from "mathjs";
import { expect, test } from "vitest";
import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  hpFromWatts,
  wattsFromHp,
} from "../../src/engineering/units.ts";

// Against mathjs, a general-purpose library: conversion factors of NIST SP 811.

test("horsepower and watts agree with mathjs to one part in a million", () => {
  for (const hp of [0.25, 0.5, 0.75, 1, 1.5, 1.65, 2, 3, 5]) {
    expect(wattsFromHp(hp) / unit(hp, "hp").toNumber("W")).toBeCloseTo(1, 6);
  }
  for (const watts of [180, 370, 750, 1100, 2200]) {
    expect(hpFromWatts(watts) / unit(watts, "W").toNumber("hp")).toBeCloseTo(1, 6);
  }
});

test("degrees agree with mathjs", () => {
  for (let celsius = -20; celsius <= 90; celsius += 5) {
    expect(fahrenheitFromCelsius(celsius)).toBeCloseTo(unit(celsius, "degC").toNumber("degF"), 9);
  }
  for (const fahrenheit of [32, 104, 122, 140]) {
    expect(celsiusFromFahrenheit(fahrenheit)).toBeCloseTo(unit(fahrenheit, "degF").toNumber("degC"), 9);
  }
});

test("40 C is 104 F and 50 C is 122 F (definition)", () => {
  expect([40, 50].map(fahrenheitFromCelsius)).toEqual([104, 122]);
  expect([104, 122].map(celsiusFromFahrenheit)).toEqual([40, 50]);
});
