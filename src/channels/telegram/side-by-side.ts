/** Works on many keys: each by one worker at a time, at most `limit` of them side by side, in the order woken. */
export class SideBySide {
  private readonly running = new Map<string, Promise<void>>();
  private readonly again = new Set<string>();
  private readonly queued = new Set<string>();
  private stopped = false;

  constructor(
    private readonly limit: number,
    /** Works until there is nothing left to do for the key; must not throw. */
    private readonly work: (key: string) => Promise<void>,
  ) {}

  /** There is something to do for this key. */
  wake(key: string): void {
    if (this.stopped) return;
    if (this.running.has(key)) this.again.add(key);
    else if (this.running.size < this.limit) this.start(key);
    else this.queued.add(key);
  }

  /** Begins nothing new; resolves when what is under way has ended. */
  async stop(): Promise<void> {
    this.stopped = true;
    this.queued.clear();
    await Promise.all(this.running.values());
  }

  private start(key: string): void {
    this.running.set(key, this.run(key));
  }

  private async run(key: string): Promise<void> {
    // Whoever wakes may still be in a transaction of their own.
    await Promise.resolve();
    do {
      this.again.delete(key);
      await this.work(key);
    } while (this.again.has(key) && !this.stopped);
    this.running.delete(key);
    const [next] = this.queued;
    if (next === undefined) return;
    this.queued.delete(next);
    this.start(next);
  }
}
