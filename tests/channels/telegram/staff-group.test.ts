import type { Api } from "grammy";
import { expect, test } from "vitest";
import { later } from "../../../src/channels/telegram/clock.ts";
import { silentLog } from "../../../src/channels/telegram/log.ts";
import { usualPace } from "../../../src/channels/telegram/pace.ts";
import { StaffGroup } from "../../../src/channels/telegram/staff-group.ts";
import { openSqliteStore } from "../../../src/store/sqlite.ts";

test("who is of the staff is asked of Telegram, kept for a minute, and asked again when it may have changed", async () => {
  let now = "2026-11-24T16:00:00.000Z";
  let asked = 0;
  let status = "member";
  const api = {
    getChatMember: async () => {
      asked += 1;
      return { status };
    },
  } as unknown as Api;
  const store = openSqliteStore(":memory:");
  const clock = { now: () => now, after: () => () => {} };
  const staff = await StaffGroup.find({ api, store, clock, pace: usualPace, log: silentLog }, -100);
  expect([await staff.has(7), await staff.has(7), asked]).toEqual([true, true, 1]);

  // Thrown out; the news of it makes the difference, or else the minute does.
  status = "kicked";
  expect(await staff.has(7)).toBe(true);
  staff.changed(7);
  expect([await staff.has(7), asked]).toEqual([false, 2]);
  status = "member";
  now = later(now, usualPace.membershipKept);
  expect([await staff.has(7), asked]).toEqual([true, 3]);

  // A clock set back by a day must not make a membership last that much longer.
  status = "left";
  now = later(now, -24 * 3_600_000);
  expect([await staff.has(7), asked]).toEqual([false, 4]);
  await store.close();
});
