/**
 * Tells whoever waits or watches that something in the world changed: a message, an update, a call that began
 * or ended. Carries no payload, so that listeners look at the world itself and never at a stale copy.
 */
export class Changes {
  private readonly listeners = new Set<() => void>();
  private count = 0;

  /** Number of changes so far; two equal readings mean that nothing happened in between. */
  get total(): number {
    return this.count;
  }

  /** Calls `listener` after every change until the returned function is called. */
  listen(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => void this.listeners.delete(listener);
  }

  tell(): void {
    this.count += 1;
    for (const listener of [...this.listeners]) listener();
  }
}
