import type { Polling } from "../polling.ts";
import type { Methods } from "../protocol.ts";
import type { Webhook } from "../webhook.ts";
import type { World } from "../world.ts";
import { chatMethods } from "./chats.ts";
import { copyingMethods } from "./copying.ts";
import { editingMethods } from "./editing.ts";
import { sendingMethods } from "./sending.ts";
import { fileMethods } from "./sending-files.ts";
import { topicMethods } from "./topics.ts";

/** Every method the stand-in answers. */
export const allMethods = (world: World, polling: Polling, webhook: Webhook): Methods => ({
  ...chatMethods(world),
  ...sendingMethods(world),
  ...fileMethods(world),
  ...editingMethods(world),
  ...copyingMethods(world),
  ...topicMethods(world),

  getUpdates: (params, { gone }) => polling.poll(params, gone),

  setWebhook(params) {
    webhook.set(params);
    polling.interrupt("terminated by setWebhook request");
    return true;
  },

  deleteWebhook({ drop_pending_updates }) {
    webhook.set({ url: "", drop_pending_updates });
    return true;
  },

  getWebhookInfo: () => webhook.info(),
});
