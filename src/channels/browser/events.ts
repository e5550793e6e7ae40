import type { ServerResponse } from "node:http";
import type { Outcome } from "./acts.ts";
import type { Place } from "./place.ts";

/** Changes come in flocks; one view shows them all. */
const GATHER_MS = 25;
/** The clock on the page goes on when nothing else does. */
const CLOCK_MS = 10_000;
/** Pages open at the same time. */
const MOST_PAGES = 24;

/** The place that is tried, and the pages that watch it. */
export class Events {
  private readonly pages = new Set<ServerResponse>();
  private opened: Promise<Place> | undefined;
  private gathering: NodeJS.Timeout | undefined;
  private readonly ticking: NodeJS.Timeout;
  private deaf = () => {};

  constructor(private readonly open: () => Promise<Place>) {
    this.ticking = setInterval(() => this.tell(), CLOCK_MS);
    this.ticking.unref();
  }

  /** Opened at the first call. What hinders it is told each time, and tried again. */
  place(): Promise<Place> {
    this.opened ??= this.open().then(
      (place) => {
        this.deaf = place.onChange(() => this.tell());
        return place;
      },
      (error: unknown) => {
        this.opened = undefined;
        throw error;
      },
    );
    return this.opened;
  }

  /** Sends the view now and after each change, until the page is closed. */
  async listen(response: ServerResponse): Promise<void> {
    if (this.pages.size >= MOST_PAGES) {
      response.writeHead(503).end();
      return;
    }
    this.pages.add(response);
    response.on("close", () => this.pages.delete(response));
    const place = await this.place();
    if (response.destroyed) return;
    response.writeHead(200, { "content-type": "text/event-stream" });
    response.write(asEvent(place));
  }

  async afresh(): Promise<Outcome> {
    const before = this.opened;
    this.opened = undefined;
    this.deaf();
    await (await before)?.close();
    await this.place();
    this.tell();
    return { kind: "done" };
  }

  async close(): Promise<void> {
    clearInterval(this.ticking);
    clearTimeout(this.gathering);
    this.deaf();
    for (const page of this.pages) page.end();
    await (await this.opened?.catch(() => undefined))?.close();
  }

  /** Sends the view to every page, soon. */
  tell(): void {
    if (this.pages.size === 0) return;
    this.gathering ??= setTimeout(() => {
      this.gathering = undefined;
      void this.opened?.then(
        (place) => {
          const event = asEvent(place);
          for (const page of this.pages) if (page.headersSent) page.write(event);
        },
        () => {},
      );
    }, GATHER_MS);
  }
}

const asEvent = (place: Place): string => `data: ${JSON.stringify(place.view())}\n\n`;
