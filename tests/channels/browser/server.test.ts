import { connect } from "node:net";
import { networkInterfaces } from "node:os";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { nextTime } from "../../../src/channels/browser/place.ts";
import { BODY_BYTES, type TryPage } from "../../../src/channels/browser/server.ts";
import { ConfigError, readConfig } from "../../../src/config.ts";
import { startInBrowser } from "../../../src/in-browser.ts";
import { ask, openPage, post, seen } from "./visit.ts";

let page: TryPage;
beforeAll(async () => {
  page = await openPage();
});
afterAll(() => page.close());

describe("who is answered", () => {
  test.each(["shop.example", "127.0.0.1", "127.0.0.1:1", "localhost.shop.example:80", ""])(
    "nobody under the name %s: a page elsewhere may have pointed its own name here",
    async (host) => {
      expect((await ask(page, "/", { headers: { host } })).status).toBe(403);
      expect((await ask(page, "/events", { headers: { host } })).status).toBe(403);
    },
  );

  test("both names of this computer", async () => {
    const { port } = new URL(page.address);
    expect((await ask(page, "/")).status).toBe(200);
    expect((await ask(page, "/", { headers: { host: `localhost:${port}` } })).status).toBe(200);
  });

  test("no act of another page", async () => {
    const sent = await ask(page, "/acts", {
      method: "POST",
      headers: { "content-type": "application/json", origin: "https://shop.example" },
      body: '{"do":"afresh"}',
    });
    expect(sent.status).toBe(403);
  });

  test("nobody from the network: it listens on loopback only", async () => {
    const { port } = new URL(page.address);
    const outside = Object.values(networkInterfaces())
      .flatMap((addresses) => addresses ?? [])
      .filter(({ family, internal }) => family === "IPv4" && !internal);
    for (const { address } of outside) expect(await canConnect(address, Number(port))).toBe(false);
    expect(await canConnect("127.0.0.1", Number(port))).toBe(true);
  });
});

function canConnect(host: string, port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect({ host, port, timeout: 2000 });
    const end = (can: boolean) => () => {
      socket.destroy();
      resolve(can);
    };
    socket.once("connect", end(true)).once("error", end(false)).once("timeout", end(false));
  });
}

describe("what is answered", () => {
  test.each(["/", "/style.css", "/page.js", "/regular.ttf", "/icon.svg", "/nothing", "/acts"])(
    "%s under a policy that lets nothing in from outside and no script inside the page",
    async (path) => {
      const { headers } = await ask(page, path);
      const policy = String(headers["content-security-policy"]);
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("script-src 'self'");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).not.toMatch(/unsafe|https?:|\*/);
      expect(headers["x-content-type-options"]).toBe("nosniff");
    },
  );

  test("the page names no other place and carries no script or style of its own", async () => {
    const html = (await ask(page, "/")).body;
    for (const path of ["/", "/style.css", "/page.js"]) {
      const { body } = await ask(page, path);
      expect(body.replace("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|url\(["']?\/\//);
    }
    expect(html).not.toMatch(/<style|\sstyle=|\son\w+=|<script[^>]*>[^<]/);
  });

  test.each(["/../server.ts", "/page.js/../../server.ts", "/%2e%2e/server.ts", "/pictures/../../etc/passwd"])(
    "no file that is not the page's: %s",
    async (path) => {
      expect((await ask(page, path)).status).toBe(404);
    },
  );

  test("no other methods, types, sizes or acts", async () => {
    const json = { "content-type": "application/json" };
    const refused = async (asked: Parameters<typeof ask>[2], path = "/acts") =>
      (await ask(page, path, asked)).status;
    expect(await refused({ method: "GET" })).toBe(405);
    expect(await refused({ method: "DELETE" }, "/")).toBe(405);
    expect(await refused({ method: "POST", headers: { "content-type": "text/plain" }, body: "{}" })).toBe(
      415,
    );
    const long = JSON.stringify({ do: "write", text: "x".repeat(BODY_BYTES) });
    expect(await refused({ method: "POST", headers: json, body: long })).toBe(413);
    for (const body of [
      "",
      "{",
      "[]",
      '{"do":"obey"}',
      '{"do":"clock","to":"25:00"}',
      '{"do":"afresh","x":1}',
    ])
      expect(await refused({ method: "POST", headers: json, body })).toBe(400);
  });
});

test("a homeowner writes, the desk takes and answers, and each side sees its own", async () => {
  const first = await seen(page, ({ homeowners }) => homeowners[0]!.entries.length >= 2);
  expect(first.clock).toMatchObject({ time: "21:40", desk: expect.stringContaining("closed") });
  const ada = { side: "home", person: first.homeowners[0]!.id };
  const [kim, lee] = first.staff.map(({ id }) => ({ side: "desk", person: id }));

  await post(page, { do: "write", as: ada, text: "1.5 hp 230V frame 56Y. I want a person" });
  const waiting = await seen(page, ({ cases }) => cases[0]?.entries[0] !== undefined);
  const [card] = waiting.cases;
  expect(card).toMatchObject({ number: "1", state: "waiting" });
  const topic = card!.topic;
  const brief = card!.entries[0]!;
  const pressed = await post(page, { do: "press", as: { ...kim, topic }, message: brief.id, button: "Take" });
  expect(pressed).toMatchObject({ status: 200, body: expect.stringContaining("yours") });

  await post(page, { do: "write", as: { ...kim, topic }, text: "two on the shelf" });
  await post(page, { do: "write", as: { ...kim, topic }, text: "> Hello from the shelf" });
  const told = await seen(page, ({ homeowners }) =>
    homeowners[0]!.entries.some(({ text }) => text.includes("Hello from the shelf")),
  );
  expect(told.homeowners[0]!.entries.some(({ text }) => text.includes("two on the shelf"))).toBe(false);

  await post(page, { do: "write", as: { ...lee, topic }, text: "/takeover" });
  const taken = await seen(page, ({ cases }) =>
    cases[0]!.entries.some(({ text }) => text.includes("Case 1") && text.includes("Lee")),
  );
  expect(taken.cases[0]!.state).toBe("taken");
});

test("a photo is shown to both sides", async () => {
  const before = await seen(page, () => true);
  const id = before.homeowners[0]!.id;
  await post(page, { do: "photo", as: { side: "home", person: id } });
  const { homeowners } = await seen(page, ({ cases }) =>
    cases[0]!.entries.some(({ picture }) => picture !== undefined),
  );
  const shown = homeowners[0]!.entries.findLast(({ picture }) => picture !== undefined)!;
  const { headers, status } = await ask(page, shown.picture!);
  expect([status, headers["content-type"]]).toEqual([200, "image/png"]);
  expect((await ask(page, "/pictures/photo-file-999")).status).toBe(404);
});

test("what nobody could do is refused with a sentence", async () => {
  const { homeowners } = await seen(page, () => true);
  const as = { side: "home", person: homeowners[0]!.id };
  const none = await post(page, { do: "press", as, message: 1, button: "Sell everything" });
  expect(none).toMatchObject({ status: 409, body: expect.stringContaining("no button") });
  expect((await post(page, { do: "write", as: { ...as, person: 7 }, text: "hello" })).status).toBe(409);
});

test("beginning afresh forgets everybody and sets the clock back", async () => {
  await post(page, { do: "another-homeowner" });
  await post(page, { do: "clock", to: "08:00" });
  await seen(page, ({ homeowners, clock }) => homeowners.length === 2 && clock.time === "08:00");
  await post(page, { do: "afresh" });
  const { homeowners, cases, clock } = await seen(page, () => true);
  expect([homeowners.length, cases.length, clock.time]).toEqual([1, 0, "21:40"]);
});

test("the clock goes on to the next time it is that time at the shop, over the change to summer time too", () => {
  const zone = "America/Chicago";
  expect(nextTime("22:00", "2026-11-25T03:40:00.000Z", zone)).toBe("2026-11-25T04:00:00.000Z");
  expect(nextTime("08:00", "2026-11-25T03:40:00.000Z", zone)).toBe("2026-11-25T14:00:00.000Z");
  // Clocks go forward on the second Sunday of March (15 U.S.C. 260a), 2026-03-08.
  expect(nextTime("08:00", "2026-03-08T04:00:00.000Z", zone)).toBe("2026-03-08T13:00:00.000Z");
});

describe("the port", () => {
  test("is named in the settings, or nobody is served", () => {
    expect(readConfig({}).tryPort).toBe("free");
    expect(readConfig({ NAMEPLATE_TRY_PORT: "9000" }).tryPort).toBe(9000);
    for (const off of ["0", "off"]) expect(readConfig({ NAMEPLATE_TRY_PORT: off }).tryPort).toBe("off");
    expect(() => readConfig({ NAMEPLATE_TRY_PORT: "many" })).toThrow(
      /NAMEPLATE_TRY_PORT: a port number, or off/,
    );
  });

  test("that is taken is told as such", async () => {
    const tryPort = Number(new URL(page.address).port);
    await expect(startInBrowser({ ...readConfig({}), tryPort })).rejects.toThrow(ConfigError);
  });
});
