import { chatIdOf } from "./refs.ts";
import type { Station } from "./station.ts";

/** "Typing" for whoever waits longer than a moment, repeated because Telegram shows it for five seconds. */
export function showTyping({ api, clock, pace, staff }: Station, name: string): () => void {
  const chat = chatIdOf(name);
  if (chat === undefined || chat === staff?.id || chat < 0) return () => {};
  let takeBack = () => {};
  const show = () => {
    // Only a courtesy: nothing depends on its arriving.
    api.sendChatAction(chat, "typing").catch(() => {});
    takeBack = clock.after(4500, show);
  };
  takeBack = clock.after(pace.typingAfter, show);
  return () => takeBack();
}
