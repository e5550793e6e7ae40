import { readConfig } from "../config.ts";
import { urgencies } from "../conversation/thread.ts";
import { openSqliteStore } from "../store/sqlite.ts";
import { type CaseRecord, StoreError } from "../store/store.ts";

/** Lists the cases that are not closed, most urgent first, then longest waiting. */
export async function runCases(storeFile = readConfig().storeFile): Promise<void> {
  const open = (await readCases(storeFile)).filter(({ state }) => state !== "closed");
  if (open.length === 0) {
    process.stdout.write("Nothing waits on the desk.\n");
    return;
  }
  const rank = ({ urgency }: CaseRecord) => (urgencies as readonly string[]).indexOf(urgency);
  const sorted = open.toSorted((a, b) => rank(a) - rank(b) || a.openedAt.localeCompare(b.openedAt));
  for (const { id, urgency, state, reason, openedAt, threadId } of sorted) {
    const since = openedAt.slice(0, 16).replace("T", " ");
    process.stdout.write(`${id}  ${urgency}  ${state} since ${since}  ${reason}  (${threadId})\n`);
  }
}

/** Shows one case with its brief. Throws `StoreError` when there is no such case. */
export async function runCase(number: string, storeFile = readConfig().storeFile): Promise<void> {
  const found = (await readCases(storeFile)).find(({ id }) => String(id) === number);
  if (!found) throw new StoreError(`There is no case ${number}. The command "cases" lists those there are.`);
  process.stdout.write(`Case ${found.id}, ${found.state}, opened ${found.openedAt}\n${found.brief}\n`);
}

async function readCases(storeFile: string): Promise<readonly CaseRecord[]> {
  const store = openSqliteStore(storeFile);
  try {
    return await store.cases();
  } finally {
    await store.close();
  }
}
