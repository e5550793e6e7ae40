import { StoreError } from "../store/store.ts";
import { withStore } from "./with-store.ts";

export interface CustomerDataOptions {
  /** Instead of the thread: the number of one of the customer's cases. */
  readonly case?: string;
  readonly store?: string;
}

/** Prints everything kept of one customer as JSON. Throws `StoreError` when nothing is. */
export function runCustomerData(
  thread: string | undefined,
  { case: number, store: file }: CustomerDataOptions,
): Promise<void> {
  return withStore(file, async (store) => {
    if ((thread === undefined) === (number === undefined))
      throw new StoreError(
        "Say whose data: a thread like telegram:123, or --case with the number of a case.",
      );
    const row =
      number !== undefined && /^\d{1,9}$/.test(number) ? await store.findCase(Number(number)) : undefined;
    const threadId = thread ?? row?.threadId;
    const data = threadId === undefined ? undefined : await store.upkeep.customerData(threadId);
    if (data === undefined) {
      const whom = thread === undefined ? `the customer of case ${number}` : thread;
      throw new StoreError(`Nothing is kept of ${whom}. The command "cases" lists the open cases.`);
    }
    process.stdout.write(`${JSON.stringify({ threadId, ...data }, null, 2)}\n`);
  });
}
