import { request } from "node:http";
import type { TryAct } from "../../../src/channels/browser/acts.ts";
import type { TryPage } from "../../../src/channels/browser/server.ts";
import type { View } from "../../../src/channels/browser/view.ts";
import { readConfig } from "../../../src/config.ts";
import { startInBrowser } from "../../../src/in-browser.ts";

/** A Tuesday, 21:40 at the shop. */
export const EVENING = "2026-11-25T03:40:00.000Z";

/** The page on any free port, with the project's own texts and demo stock. */
export const openPage = (): Promise<TryPage> => startInBrowser({ ...readConfig({}), tryPort: 0 }, EVENING);

export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: string;
}

export interface Asked {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
}

/** One request with the headers exactly as given. */
export function ask({ address }: TryPage, path: string, asked: Asked = {}): Promise<Answer> {
  const { hostname, port, host } = new URL(address);
  const { method = "GET", headers = {}, body } = asked;
  return new Promise((resolve, reject) => {
    const sent = request(
      { hostname, port, path, method, headers: { host, ...headers }, setHost: false },
      (response) => {
        let text = "";
        response.setEncoding("utf8");
        response.on("data", (chunk: string) => {
          text += chunk;
        });
        response.on("end", () =>
          resolve({ status: response.statusCode ?? 0, headers: response.headers, body: text }),
        );
      },
    );
    sent.on("error", reject);
    sent.end(body);
  });
}

/** Posts an act as the page does. */
export const post = (page: TryPage, act: TryAct | object): Promise<Answer> =>
  ask(page, "/acts", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(act),
  });

/** The first view sent in which something holds. Throws after ten seconds. */
export async function seen(page: TryPage, holds: (view: View) => boolean): Promise<View> {
  const response = await fetch(new URL("/events", page.address), { signal: AbortSignal.timeout(10_000) });
  let waiting = "";
  for await (const chunk of response.body!.pipeThrough(new TextDecoderStream())) {
    waiting += chunk;
    const events = waiting.split("\n\n");
    waiting = events.pop() ?? "";
    for (const event of events) {
      const view = JSON.parse(event.slice("data: ".length)) as View;
      if (holds(view)) return view;
    }
  }
  throw new Error("The page was closed before that was seen.");
}
