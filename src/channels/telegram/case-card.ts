import type { InputFile } from "grammy";
import type { Pictured } from "../../conversation/pictured.ts";
import { picturesOf } from "../../pictures/picture-for.ts";
import { contentKey } from "../../pictures/render.ts";
import { unlessRefused } from "./drawn.ts";
import { failureOf } from "./failures.ts";
import { type CasePlace, cardKind } from "./places.ts";
import { CHANNEL, messageRef } from "./refs.ts";
import type { Station } from "./station.ts";
import { asFile } from "./uploaded.ts";

/**
 * Shows the brief as a card in the case's topic: below the brief when that is first there, and from then on exchanged in
 * place, silently, whenever it would show something else. It is a help beside the text and never keeps that back. Where
 * there are no topics there is no card: among the messages of all cases it would be in the way.
 */
export async function showCard(
  station: Station,
  place: CasePlace,
  caseId: number,
  card: Pictured,
): Promise<void> {
  const { store, wording } = station;
  const { group, topic, card: shown } = place;
  if (topic === undefined) return;
  const [picture] = picturesOf(card, wording);
  if (picture === undefined) return;
  const key = contentKey(picture);
  if (shown?.shows === key) return;
  const caption = wording.say("pictures", "brief.caption");
  const message = await unlessRefused(station, async () => {
    const file = asFile(picture);
    if (shown !== undefined && (await exchange(station, { group, message: shown.message }, file, caption)))
      return shown.message;
    const where = { message_thread_id: topic, disable_notification: true };
    return (await station.api.sendPhoto(group, file, { caption, ...where })).message_id;
  });
  if (message === undefined) return;
  if (shown !== undefined && shown.message !== message)
    await store.unlink(CHANNEL, messageRef(group, shown.message));
  await store.link(CHANNEL, {
    theirs: messageRef(group, message),
    lane: { kind: "case", caseId },
    kind: cardKind(key),
  });
}

/** False when the message cannot be edited any more. */
async function exchange(
  { api }: Station,
  { group, message }: { readonly group: number; readonly message: number },
  media: InputFile,
  caption: string,
): Promise<boolean> {
  try {
    await api.editMessageMedia(group, message, { type: "photo", media, caption });
    return true;
  } catch (error) {
    const failure = failureOf(error);
    if (failure.kind !== "refused") throw error;
    return /not modified/i.test(failure.description);
  }
}
