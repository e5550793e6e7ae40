import { customerCommands } from "./customer.ts";
import { describe } from "./failures.ts";
import { staffCommands } from "./staff.ts";
import type { Station } from "./station.ts";

/** The commands people see when they type a slash: customers theirs, staff theirs. */
export async function publishCommands({ api, staff, wording, log }: Station): Promise<void> {
  const listed = (names: readonly string[], key: string) =>
    names.map((command) => ({ command, description: wording.say("telegram", `${key}.${command}`) }));
  try {
    await api.setMyCommands(listed([...customerCommands, "help"], "command"), {
      scope: { type: "all_private_chats" },
    });
    if (staff === null) return;
    await api.setMyCommands(listed(staffCommands, "staffCommand"), {
      scope: { type: "chat", chat_id: staff.id },
    });
  } catch (error) {
    log.warn({ failure: describe(error) }, "the list of commands was not published");
  }
}
