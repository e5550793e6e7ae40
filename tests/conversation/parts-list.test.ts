import { describe, expect, test } from "vitest";
import { evening } from "../desk/evening.ts";
import { knowledge } from "./knowledge.ts";

const [pump] = knowledge.catalogue.pumps;
const asks = `my pump is a ${pump?.model}. motor: 1 hp, SF 1.65, 230V, frame 56Y, single phase, 3450 rpm, wired for 240 volts`;

describe("a verdict on a known pump brings its parts", () => {
  test("to the customer with price and stock, and the day they are of", async () => {
    const replies = (await evening().says("ana", asks)).join("\n");
    expect(replies).toMatch(/Needs a new shaft seal .*: SIMMER-436 \(\$18\.75, 10 in stock\), HOOP-974 \(\$/);
    expect(replies).toMatch(/Prices and stock as of 2026-11-24\.$/);
  });

  test("to the desk, optional ones marked", async () => {
    // With 2.2 total hp for 1.95 a matching impeller is the customer's choice.
    const motors = knowledge.catalogue.motors.filter(({ sku }) => sku === "BAKLAVA-578");
    const catalogue = { ...knowledge.catalogue, motors };
    const shop = evening({ catalogue: () => catalogue });
    await shop.says("ana", asks.replace("1 hp, SF 1.65", "1.5 hp, SF 1.3"));
    const brief = (await shop.engine.show(1, "2026-11-24T16:00:00.000Z"))?.text ?? "";
    expect(brief).toMatch(/Parts: shaft-seal SIMMER-436 \(\$18\.75, 10 in stock\); gasket HOOP-974/);
    expect(brief).toMatch(/impeller TWIRL-\d+ \(.*\), optional/);
    expect(brief).toContain("Prices and stock as of 2026-11-24.");
  });

  test("with a day of their own where the parts were imported on another one", async () => {
    const catalogue = { ...knowledge.catalogue, sparesImportedOn: "2026-10-01" };
    const replies = await evening({ catalogue: () => catalogue }).says("ana", asks);
    expect(replies.at(-1)).toMatch(/Prices and stock as of 2026-11-24, those of parts as of 2026-10-01\.$/);
  });

  test("and a price that is asked for says of which day it is", async () => {
    const shop = evening();
    await shop.says("ana", asks);
    expect((await shop.says("ana", "how much is it?")).join("\n")).toMatch(/in stock \(as of 2026-11-24\)/);
  });
});
