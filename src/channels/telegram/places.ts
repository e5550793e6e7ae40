import type { DeskCase } from "../../desk/case.ts";
import { describe, failureOf } from "./failures.ts";
import { CHANNEL, messageRef, numberIn, topicRef } from "./refs.ts";
import type { StaffGroup } from "./staff-group.ts";
import type { Station } from "./station.ts";
import { fitText } from "./text.ts";

/** Bot API, createForumTopic: 1 to 128 characters; phones show far fewer. */
const TOPIC_CHARACTERS = 96;

/** Where in the staff group a case is. */
export interface CasePlace {
  readonly group: number;
  readonly topic: number | undefined;
  /** The message with the brief, once it is there. */
  readonly brief: number | undefined;
  /** The message with the brief as a card, and the key of the picture it shows. */
  readonly card: { readonly message: number; readonly shows: string } | undefined;
}

const CARD = "card/";
/** What a card's link says of it: that it is one, and which. */
export const cardKind = (shows: string): string => `${CARD}${shows}`;

/** Where a case is now, as far as something of it is there. */
export async function placeOf(
  { store }: Pick<Station, "store">,
  group: number,
  caseId: number,
): Promise<CasePlace> {
  const links = await store.links(CHANNEL, { kind: "case", caseId });
  const latest = (wanted: string) =>
    links
      .filter(({ kind }) => kind === wanted)
      .map(({ theirs }) => numberIn(theirs, group))
      .findLast((found) => found !== undefined);
  const cards = links.flatMap(({ theirs, kind }) => {
    const message = kind.startsWith(CARD) ? numberIn(theirs, group) : undefined;
    return message === undefined ? [] : [{ message, shows: kind.slice(CARD.length) }];
  });
  return { group, topic: latest("topic"), brief: latest("brief"), card: cards.at(-1) };
}

/** The case that a topic, or the message that is answered, belongs to. */
export async function caseAt(
  { store }: Pick<Station, "store">,
  group: number,
  at: { readonly topic: number | undefined; readonly answered: number | undefined },
): Promise<number | undefined> {
  const refs = [
    ...(at.topic === undefined ? [] : [topicRef(group, at.topic)]),
    ...(at.answered === undefined ? [] : [messageRef(group, at.answered)]),
  ];
  for (const ref of refs) {
    const lane = (await store.linkOf(CHANNEL, ref))?.lane;
    if (lane?.kind === "case") return lane.caseId;
  }
  return undefined;
}

/** Opens the case's topic if the group has topics and the case has none. */
export async function ensureTopic(
  station: Station,
  staff: StaffGroup,
  place: CasePlace,
  caseId: number,
): Promise<CasePlace> {
  if (place.topic !== undefined || !(await staff.hasTopics())) return place;
  const { api, store, log, wording, clock } = station;
  try {
    const title = await titleOf(station, caseId);
    // Erased meanwhile: what is left to say of it needs no topic.
    if (title === undefined) return place;
    const { message_thread_id: topic } = await api.createForumTopic(place.group, title.text);
    station.titles.set(caseId, title.mark);
    await store.link(CHANNEL, {
      theirs: topicRef(place.group, topic),
      lane: { kind: "case", caseId },
      kind: "topic",
    });
    // A brief elsewhere in the group is not the brief of this topic.
    return { ...place, topic, brief: undefined, card: undefined };
  } catch (error) {
    if (failureOf(error).kind !== "refused") throw error;
    log.error(
      { failure: describe(error) },
      "topics cannot be opened; make the bot an administrator with the right to manage topics. Cases are single messages meanwhile",
    );
    staff.withoutTopics();
    const at = clock.now();
    // Once a day is often enough to be told.
    await store.commit({
      at,
      notice: `telegram-no-topics:${place.group}:${at.slice(0, 10)}`,
      outgoing: [{ lane: { kind: "desk" }, content: { text: wording.say("telegram", "staff.topics") } }],
    });
    return place;
  }
}

/** Forgets where a case was: its topic, its brief or its card is gone. */
export async function forgetPlace({ store }: Pick<Station, "store">, place: CasePlace): Promise<void> {
  if (place.topic !== undefined) await store.unlink(CHANNEL, topicRef(place.group, place.topic));
  if (place.brief !== undefined) await store.unlink(CHANNEL, messageRef(place.group, place.brief));
  if (place.card !== undefined) await store.unlink(CHANNEL, messageRef(place.group, place.card.message));
}

/**
 * Names the topic anew when the case has changed hands: the list of topics shows at a glance who waits. Only a
 * courtesy, so what goes wrong with it is no reason to send anything again.
 */
export async function renameTopic(station: Station, place: CasePlace, caseId: number): Promise<void> {
  const { api, log, titles } = station;
  const title = await titleOf(station, caseId);
  if (place.topic === undefined || title === undefined || titles.get(caseId) === title.mark) return;
  titles.set(caseId, title.mark);
  try {
    await api.editForumTopic(place.group, place.topic, { name: title.text });
  } catch (error) {
    if (failureOf(error).kind === "token") throw error;
    log.info({ failure: describe(error) }, "a topic kept its name");
  }
}

async function titleOf(
  { store, wording }: Station,
  caseId: number,
): Promise<{ readonly text: string; readonly mark: string } | undefined> {
  const row = await store.findCase(caseId);
  if (row === undefined) return undefined;
  const { headline = "" } = JSON.parse(row.doc) as Partial<DeskCase>;
  const key = row.state === "waiting" && row.urgency === "danger" ? "danger" : row.state;
  const mark = wording.say("telegram", `mark.${key}`);
  const title = wording.say("telegram", "topic", { id: caseId, mark, headline });
  return { text: fitText(title.replace(/\s+/g, " ").trim(), TOPIC_CHARACTERS).replace("\n", ""), mark };
}
