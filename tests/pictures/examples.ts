import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseMotors } from "../../src/catalogue/motors-csv.ts";
import { loadContent } from "../../src/content.ts";
import { assessThread } from "../../src/conversation/assess.ts";
import { type CostComparison, costsOf } from "../../src/conversation/money.ts";
import { briefOf } from "../../src/desk/brief.ts";
import { breakersPicture } from "../../src/pictures/breakers.ts";
import { briefCard } from "../../src/pictures/brief-card.ts";
import { drawnRatings } from "../../src/pictures/label/sample.ts";
import { labelPicture, numberedLabel } from "../../src/pictures/label.ts";
import { facePicture, shaftPicture } from "../../src/pictures/mount.ts";
import type { Picture } from "../../src/pictures/picture.ts";
import { placesPicture } from "../../src/pictures/places.ts";
import { runningCostPicture } from "../../src/pictures/running-cost.ts";
import { knowledge, say } from "../conversation/knowledge.ts";

const root = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

export const { wording } = loadContent(root("intents"));

/** A label that can be read in full: 1.5 hp, total 1.65. */
export const read = {
  nameplate: { hp: 1.5, serviceFactor: 1.1, volts: [115, 230], amps: [19.2, 9.6], phase: 1 as const },
  site: {},
};

/** The old motor against the first demo motor of its size whose efficiency is printed. */
export function comparison(site = {}): CostComparison {
  const { motors } = parseMotors(readFileSync(root("data/motors.csv"), "utf8"));
  const motor = motors.find(({ label, efficiencyPct }) => label.hp === 1.5 && efficiencyPct !== undefined);
  if (!motor) throw new Error("the demo stock has no 1.5 hp motor with an efficiency");
  const { use, before, after } = costsOf({ ...read, site }, motor, knowledge.shop);
  if (!before || !after) throw new Error("the label or the stock says too little");
  return { use, before, after };
}

export function briefText(urgency: "danger" | "ready-to-confirm", ...messages: readonly string[]): string {
  const thread = say(...messages).at(-1)!.thread;
  const reason = urgency === "danger" ? "danger" : "verdict-ready";
  return briefOf({ urgency, reason, offered: null, partEdits: [] }, thread, assessThread(thread, knowledge), {
    knowledge,
    numbers: [],
  });
}

const fullLabel = "HP 1.5 SF 1.1 115/230 V 19.2/9.6 A FR 56Y 3450 rpm 60 hz 1 ph, double breaker";

/** Every picture the project draws, by name; of those with a choice, each choice. */
export const everyPicture: readonly (readonly [string, Picture])[] = [
  ...drawnRatings.map((rating) => [`label, ${rating}`, labelPicture([rating], wording)] as const),
  ["label, three marked", labelPicture(["hp", "serviceFactorAmps", "frame"], wording)],
  ["label, all marked", labelPicture(drawnRatings, wording)],
  ["label, nothing marked", labelPicture([], wording)],
  ["label, numbered", numberedLabel(drawnRatings, wording)],
  ["places of the motor's label", placesPicture("motor", wording)],
  ["places of the pump's model", placesPicture("pump", wording)],
  ["faces", facePicture(wording)],
  ["shafts", shaftPicture(wording)],
  ["breaker handles", breakersPicture("poles", wording)],
  ["breaker figure", breakersPicture("amps", wording)],
  ["running cost", runningCostPicture(comparison(), wording)],
  [
    "running cost, own figures",
    runningCostPicture(comparison({ hoursPerDay: 6, pricePerKwh: 0.31 }), wording),
  ],
  ["brief", briefCard(briefText("ready-to-confirm", fullLabel), "ready-to-confirm", wording)],
  [
    "brief of a danger",
    briefCard(briefText("danger", "i get a tingle at the ladder <b>&amp; HP 15"), "danger", wording),
  ],
];
