import fc from "fast-check";
import { expect, test } from "vitest";
import { customer, type Evening, evening, kim, LABEL, lee } from "./evening.ts";

/** Words of a note that appear nowhere else: one of them in the customer's lane is a leak. */
const SECRET = "zzsecret";

const lines = fc.constantFrom(
  "/take",
  "/takeover",
  `${SECRET} he sounds drunk`,
  `/note > ${SECRET} to be typed with care`,
  `${SECRET}\n> quoting the customer`,
  `>1.1 ${SECRET}`,
  "> Good morning",
  "/fix sf 1.25",
  `/fix ${SECRET} nothing in it`,
  "/offer MUFFIN-806 it is here",
  "/offer NOPE-1 nice",
  "/part drop gasket",
  `/part add HOOP-327 ${SECRET}`,
  `/part other clamps: ${SECRET}`,
  "/part undo gasket",
  "/parts",
  "/confirm",
  "/back",
  "/allclear",
  "/urgency danger",
  "/close sold MUFFIN-806",
  "/close wrong-part",
  "/close no-reply",
  "/reopen",
);
const said = fc.constantFrom(
  LABEL,
  "can I talk to a person",
  "thanks!",
  "yes",
  "the frame is 48Y",
  "there's smoke coming from it",
  "power is off",
  "start over",
);
const events = fc.array(
  fc.oneof(
    { weight: 3, arbitrary: fc.record({ by: fc.constantFrom(kim, lee), line: lines }) },
    { weight: 1, arbitrary: fc.record({ said }) },
    { weight: 1, arbitrary: fc.record({ minutes: fc.constantFrom(1, 20, 300, 1200) }) },
  ),
  { minLength: 5, maxLength: 25 },
);

test("property: whatever the order of acts, a note never reaches the customer and what was told does", async () => {
  await fc.assert(
    fc.asyncProperty(events, async (happenings) => {
      const shop = evening();
      let now = Date.parse("2026-11-24T16:00:00Z");
      await shop.says("ana", LABEL);
      let told = 0;
      for (const happening of happenings) {
        if ("minutes" in happening) {
          now += happening.minutes * 60_000;
          shop.at(new Date(now).toISOString());
          await shop.tick();
        } else if ("said" in happening) await shop.says("ana", happening.said);
        else told += await typed(shop, happening.by, happening.line);
        await consistent(shop);
      }
      const heard = await shop.texts(customer("ana"));
      expect(heard.filter((text) => text.includes(SECRET))).toEqual([]);
      expect(heard.filter((text) => text.endsWith("at the desk: Good morning"))).toHaveLength(told);
      expect(shop.troubles).toEqual([]);
      await shop.store.close();
    }),
    { seed: 11, numRuns: 60 },
  );
}, 60_000);

/** 1 when words were told to the customer. */
async function typed(shop: Evening, by: typeof kim, line: string): Promise<number> {
  if (line.startsWith(">1")) return 0; // unclear: never becomes an act
  const answer = await shop.types(by, 1, line);
  return answer.done && line.startsWith(">") ? 1 : 0;
}

/** The thread's mirror always agrees with the case: the bot is silent exactly while a person has it. */
async function consistent(shop: Evening): Promise<void> {
  const cases = await shop.store.cases();
  expect(cases).toHaveLength(1);
  const state = cases[0]?.state;
  const mirror = (await shop.engine.thread("ana")).case.state;
  expect(mirror).toBe(state === "waiting" || state === "taken" ? state : "none");
}
