import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import { type BrowserContext, chromium, type Locator, type Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { TryPage } from "../../../src/channels/browser/server.ts";
import { loadContent } from "../../../src/content.ts";
import { guidePage } from "../../../src/pictures/guide-page.ts";
import { CHAT_WIDTH_PX } from "../../../src/pictures/render.ts";
import { openPage } from "./visit.ts";

// The page as people have it: in a real Chromium. Set NAMEPLATE_SCREENSHOTS to a folder to keep the pictures.

const executablePath = "/usr/bin/chromium";
const args = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
/**
 * How long any one thing may take. What comes is waited for no longer than it takes; what never comes fails. On a busy
 * machine the first answer alone, for which the bot learns its words, has taken over ten seconds.
 */
const PATIENCE_MS = 45_000;
const TEST_MS = 150_000;
const wide = { width: 1200, height: 900 };
const narrow = { width: 360, height: 740 };

const profile = mkdtempSync(join(tmpdir(), "page-profile-"));
const pictures = process.env["NAMEPLATE_SCREENSHOTS"] ?? mkdtempSync(join(tmpdir(), "page-pictures-"));
let served: TryPage;
let browser: BrowserContext;
let page: Page;
const complaints: string[] = [];

beforeAll(async () => {
  if (!existsSync(executablePath))
    throw new Error(
      `These tests need Chromium at ${executablePath}. On Debian and Ubuntu: apt-get install -y chromium`,
    );
  served = await openPage();
  browser = await chromium.launchPersistentContext(profile, { executablePath, args, viewport: wide });
  browser.setDefaultTimeout(PATIENCE_MS);
  page = await browser.newPage();
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("request", (request) => {
    if (!request.url().startsWith(served.address)) complaints.push(`asked for ${request.url()}`);
  });
  await page.goto(served.address);
  // The place behind the page is opened by the first visit.
  await notebook().getByText("motor desk").waitFor();
}, TEST_MS);

afterAll(async () => {
  await browser?.close();
  await served?.close();
  rmSync(profile, { recursive: true, force: true });
  if (process.env["NAMEPLATE_SCREENSHOTS"] === undefined) rmSync(pictures, { recursive: true, force: true });
});

/** A picture has come and can be seen, in the size it was drawn in. */
async function seenWhole(picture: Locator): Promise<void> {
  await picture.waitFor();
  const widthPx = () =>
    picture.evaluate((image) => (image as unknown as { naturalWidth: number }).naturalWidth);
  await expect.poll(widthPx, { timeout: PATIENCE_MS }).toBe(CHAT_WIDTH_PX);
}

const notebook = () => page.getByRole("log", { name: "What was written" });
const card = () => page.getByRole("log", { name: "On this card" });
const shoot = (name: string) => page.screenshot({ path: join(pictures, `${name}.png`), fullPage: true });

async function homeownerWrites(text: string, heard: string | RegExp): Promise<void> {
  await page.getByLabel(/^Write to the shop/).fill(text);
  await page.keyboard.press("Enter");
  await notebook().getByText(heard).last().waitFor();
}

async function deskWrites(text: string, way: RegExp): Promise<void> {
  await page.getByRole("radio", { name: way }).check();
  await page.getByLabel(/^Write on the card/).fill(text);
  await page.getByRole("button", { name: "Put on the card" }).click();
}

/** Violations that keep people out, as axe-core finds them by the WCAG success criteria it names. */
async function barriers(): Promise<string[]> {
  const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
  // Evaluated by the debugger, so that the page's own policy stays as strict as it is.
  const found = await page.evaluate<AxeResults>(`${source}; window.axe.run(document)`);
  expect(found.passes.length).toBeGreaterThan(10);
  return found.violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
}

async function sidewaysPx(): Promise<number> {
  return page.evaluate<number>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
}

test(
  "an evening: label, question, verdict, a danger, the desk's acts, and the digest in the morning",
  async () => {
    await shoot("1-beginning");

    await homeownerWrites("1.5 hp 230V 3450 rpm single phase, pump is dead", "To go on I need");
    await seenWhole(notebook().getByAltText(/^Drawing of an invented motor label/));
    await shoot("2-question");
    await homeownerWrites("sf 1.1, frame 56J, 9.6 amps", "Before anyone opens it");
    await seenWhole(notebook().getByAltText(/^Bars of the running cost a year: your motor now about/));
    await shoot("2-verdict");
    await page.getByRole("button", { name: "Send a photo of a label" }).click();
    await notebook().getByAltText("Photo from Ada").waitFor();
    await notebook().getByText("put that with your case").waitFor();

    // An edited message is read again.
    await notebook()
      .getByRole("button", { name: /^Change “sf 1.1/ })
      .click();
    await page.getByLabel("Changed words").fill("sf 1.65, frame 56J");
    await page.getByRole("button", { name: "Save the change" }).click();
    await notebook().getByText("changed", { exact: true }).waitFor();

    await page.getByRole("button", { name: "Another homeowner" }).click();
    await page.getByText("Write to the shop as Ben").waitFor();
    await homeownerWrites("I get a tingle when I touch the pump", "STOP.");
    await page.getByRole("button", { name: /No\. 2.*Danger/s }).waitFor();

    await page.getByRole("button", { name: /No\. 1/ }).click();
    await card().getByText("Case 1 waits").waitFor();
    await seenWhole(card().getByAltText(/^The brief above as a card/));
    await seenWhole(card().getByAltText(/^Photo from/));
    await card().getByRole("button", { name: "Take", exact: true }).click();
    await page.locator("#desk-said").getByText("yours").waitFor();
    await page.getByRole("button", { name: /No\. 1.*In hand/s }).waitFor();
    await deskWrites("Two of them on the shelf.", /^Note/);
    await card().getByText("Kept as a NOTE").waitFor();
    await deskWrites("Hello Ada, I have two of them here.", /^To the customer/);
    await card().getByText("SENT TO THE CUSTOMER").waitFor();
    await shoot("3-desk");
    await page.getByLabel("Working as").selectOption("Lee");
    await deskWrites("/takeover", /^Note/);
    await card().getByText(/Lee/).first().waitFor();

    await page.getByLabel("Written by").selectOption("Ada");
    await notebook().getByText("I have two of them here").waitFor();
    expect(await notebook().getByText("on the shelf").count()).toBe(0);

    await page.getByLabel("Move on to").fill("08:00");
    await page.getByRole("button", { name: "Move the clock" }).click();
    await page.getByText("Wednesday, November 25, 8 am").waitFor();
    await page.getByRole("button", { name: /Notices/ }).click();
    await card().getByText("Good morning.").waitFor();
    await shoot("4-morning");
    expect(await barriers()).toEqual([]);
    expect(complaints).toEqual([]);
  },
  TEST_MS,
);

test(
  "on a phone: one side at a time, nothing to scroll sideways, news from the other side",
  async () => {
    await page.setViewportSize(narrow);
    const desk = page.getByRole("region", { name: "The desk’s cards" });
    expect([await notebook().isVisible(), await desk.isVisible()]).toEqual([true, false]);
    expect(await sidewaysPx()).toBe(0);
    expect(await barriers()).toEqual([]);
    await homeownerWrites("thanks a lot", "thanks a lot");
    await page.getByRole("button", { name: "Desk · new" }).waitFor();
    await shoot("5-phone-homeowner");

    await page.getByRole("button", { name: "Desk · new" }).click();
    expect([await notebook().isVisible(), await desk.isVisible()]).toEqual([false, true]);
    await page.getByRole("button", { name: /No\. 1/ }).click();
    await card().getByText("Case 1").first().waitFor();
    expect(await sidewaysPx()).toBe(0);
    expect(await barriers()).toEqual([]);
    await shoot("6-phone-desk");
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await barriers()).toEqual([]);
    await shoot("7-phone-desk-dark");
    await page.emulateMedia({ colorScheme: "light" });
  },
  TEST_MS,
);

test(
  "everything can be reached and pressed with the keyboard, in the order it is read",
  async () => {
    await page.setViewportSize(wide);
    // Whoever begins to press Tab does so at the top.
    await page.getByRole("heading", { level: 1 }).click();
    const reached: string[] = [];
    for (let presses = 0; presses < 60; presses++) {
      await page.keyboard.press("Tab");
      const id = await page.evaluate<string>(
        "document.activeElement.id || document.activeElement.parentElement?.closest('[id]')?.id || ''",
      );
      if (reached.at(-1) !== id) reached.push(id);
    }
    const stops = [
      "clock-to",
      "homeowner",
      "home-log",
      "home-text",
      "photo",
      "staff",
      "cards",
      "desk-log",
      "desk-text",
    ];
    const places = stops.map((stop) => reached.indexOf(stop));
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((a, b) => a - b));

    // The ring that shows where one is.
    await page.getByLabel(/^Write to the shop/).focus();
    const ring = await page.evaluate<string>("getComputedStyle(document.activeElement).outlineWidth");
    expect(ring).toBe("3px");
  },
  TEST_MS,
);

test(
  "beginning afresh empties both sides",
  async () => {
    await page.getByRole("button", { name: "Forget all and begin afresh" }).click();
    await page.getByText("Tuesday, November 24, 9:40 pm").waitFor();
    await expect.poll(() => page.locator("#cards li").count(), { timeout: PATIENCE_MS }).toBe(1);
    await homeownerWrites("what is SF?", "impeller needs");
  },
  TEST_MS,
);

test(
  "beginning afresh also when the new evening is seen before the answer to the button has come",
  async () => {
    await page.route("**/acts", async (route) => {
      const answer = await route.fetch();
      // Nothing comes after the greeting until somebody writes.
      await notebook().getByText("motor desk").waitFor();
      await expect.poll(() => notebook().locator("article").count(), { timeout: PATIENCE_MS }).toBe(2);
      await route.fulfill({ response: answer });
    });
    const answered = page.waitForResponse((response) => response.url().endsWith("/acts"));
    await page.getByRole("button", { name: "Forget all and begin afresh" }).click();
    await answered;
    await page.unroute("**/acts");
    await homeownerWrites("what is SF?", "impeller needs");
  },
  TEST_MS,
);

test.each(["Letter", "A4"])(
  "the label guide prints on both sides of one sheet (%s)",
  async (format) => {
    const guide = await browser.newPage();
    await guide.setContent(guidePage(loadContent("intents").wording));
    const pdf = await guide.pdf({ format });
    await guide.close();
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
  },
  TEST_MS,
);
