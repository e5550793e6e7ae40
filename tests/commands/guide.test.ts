import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parseMotors } from "../../src/catalogue/motors-csv.ts";
import { nameplateRatingNames, siteRatingNames } from "../../src/nameplate/vocabulary.ts";
import { nameplate } from "./run.ts";

const file = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
const explain = JSON.parse(file("intents/answers/explain.json")) as Record<string, string>;
const plain = (html: string) =>
  html
    .replace(/<\/?b>/g, "")
    .replace(/<[^>]+>/g, " ")
    .replaceAll("&apos;", "'")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");

describe("guide", () => {
  const { stdout, stderr, status } = nameplate(["guide"]);

  test("is one HTML page on stdout", () => {
    expect(status).toBe(0);
    expect(stderr).toBe("");
    expect(stdout).toMatch(/^<!doctype html>\n<html lang="en">[\s\S]+<\/html>\n$/);
  });

  test("explains every rating in the words of the chat", () => {
    const text = plain(stdout);
    const explained = [...nameplateRatingNames, ...siteRatingNames].filter((rating) => rating in explain);
    expect(explained.length).toBeGreaterThan(20);
    for (const rating of explained) expect(text, rating).toContain(explain[rating]);
  });

  test("holds its pictures and needs nothing from outside", () => {
    expect(stdout.match(/<svg /g)).toHaveLength(6);
    expect(stdout.match(/aria-label="/g)).toHaveLength(6);
    const addresses = stdout.replaceAll('xmlns="http://www.w3.org/2000/svg"', "");
    expect(addresses).not.toMatch(/https?:|src=|href=|url\(|@import|<script|<link/);
  });

  test("names no shop and no maker", () => {
    const shop = JSON.parse(file("data/shop.json")) as { name: string; town: string };
    const makers = new Set(parseMotors(file("data/motors.csv")).motors.map(({ maker }) => maker));
    expect(makers.size).toBeGreaterThan(1);
    for (const name of [shop.name, shop.town, ...makers]) expect(stdout).not.toContain(name);
  });

  test("numbers the entries as the drawn label does", () => {
    const list = /<ol[^>]*>([\s\S]*)<\/ol>/.exec(stdout)?.[1] ?? "";
    const entries = [...list.matchAll(/<li><b>([^<]+)/g)].map(([, name]) => name);
    expect(entries).toHaveLength(18);
    expect(entries.slice(0, 3)).toEqual(["HP", "SF", "THP"]);
  });

  test("tells first to switch the power off", () => {
    const text = plain(stdout);
    expect(text.indexOf("Power off at the breaker")).toBeGreaterThan(0);
    expect(text.indexOf("Power off at the breaker")).toBeLessThan(text.indexOf("What the entries mean"));
  });
});
