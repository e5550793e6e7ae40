import { expect, test } from "vitest";
import {
  type Methods,
  methodNamed,
  type Result,
} from "../../../../src/channels/telegram/stand-in/protocol.ts";

// Source: Bot API, "Making requests": all methods are case-insensitive.
test.each([
  ["sendMessage", "sendMessage"],
  ["SENDMESSAGE", "sendMessage"],
  ["getme", "getMe"],
  ["sendMoney", undefined],
  ["constructor", undefined],
])("the method %s is %s", (name, expected) => {
  expect(methodNamed(name)).toBe(expected);
});

test("an answer of the wrong shape does not compile", () => {
  // @ts-expect-error a chat member without a user
  const chatMember: Result<"getChatMember"> = { status: "member" };
  // @ts-expect-error a text message needs its text, date and chat
  const send: Methods["sendMessage"] = () => ({ message_id: 1 });
  // @ts-expect-error the parameter is called `text`
  const read: Methods["sendMessage"] = ({ words }) => words;
  // The checks above are the compiler's; at run time there is only that the values exist.
  expect([chatMember, send, read]).not.toContain(undefined);
});
