import type { Outgoing } from "../../outgoing.ts";
import type { OutboxItem } from "../../store/store.ts";
import type { Failure } from "./failures.ts";
import type { Station } from "./station.ts";

/** What staff are told of a message that was given up: in the case of its customer, or to all of them. */
export async function wordAbout(
  { store, wording }: Pick<Station, "store" | "wording">,
  { lane, content }: OutboxItem,
  count: number,
  failure: Failure,
): Promise<readonly Outgoing[]> {
  if (lane.kind === "desk" || lane.kind === "on-call") return [];
  const words = content.text.replace(/\s+/g, " ").trim().slice(0, 120);
  const why = wording.say(
    "telegram",
    failure.kind === "shut-out" ? "undelivered.shutOut" : "undelivered.refused",
  );
  if (lane.kind === "case") {
    return [
      {
        lane: { kind: "desk" },
        content: { text: wording.say("telegram", "undelivered.case", { id: lane.caseId, words }) },
      },
    ];
  }
  const row = await store.latestCase(lane.threadId);
  if (row === undefined || row.state === "closed") return [];
  return [
    {
      lane: { kind: "case", caseId: row.id },
      content: { text: wording.say("telegram", "undelivered.customer", { count, why, words }) },
    },
  ];
}
