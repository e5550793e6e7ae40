import type { Log } from "../../ops/log.ts";

export type { Log } from "../../ops/log.ts";

export const silentLog: Log = { info: () => {}, warn: () => {}, error: () => {} };
