import { deskInTerminal } from "../channels/terminal/desk.ts";
import { openDesk } from "../compose.ts";
import { readConfig } from "../config.ts";
import { openLog } from "../ops/log.ts";

export interface DeskCommandOptions {
  readonly as: string;
  readonly store?: string;
  /** Another channel delivers the desk's messages. */
  readonly beside?: boolean;
}

/** The staff's side in this terminal. */
export async function runDesk({ as, store, beside = false }: DeskCommandOptions): Promise<void> {
  const now = () => new Date().toISOString();
  const config = readConfig();
  const desk = await openDesk(config, {
    log: await openLog(config, "nowhere"),
    storeFile: store,
    today: now().slice(0, 10),
    onTrouble: ({ id }, error) => process.stderr.write(`${id} could not be handled: ${String(error)}\n`),
  });
  try {
    await deskInTerminal({
      engine: desk.engine,
      store: desk.store,
      wording: desk.content.wording,
      input: process.stdin,
      output: process.stdout,
      interactive: process.stdin.isTTY === true,
      columns: process.stdout.columns ?? 80,
      now,
      by: { id: `terminal:${as}`, name: as },
      delivers: !beside,
    });
  } finally {
    await desk.close();
  }
}
