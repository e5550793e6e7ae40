/**
 * Hands out the turns of the event loop one by one, first come first served. Handling a message needs no line, so a long
 * queue of them would keep everything that does (replies, the next poll) from its turn until the last one is done.
 */
export function loopTurns(): () => Promise<void> {
  const waiting: (() => void)[] = [];
  const hand = () => {
    const next = waiting.shift();
    if (waiting.length > 0) setImmediate(hand);
    next?.();
  };
  return () =>
    new Promise((resolve) => {
      if (waiting.push(resolve) === 1) setImmediate(hand);
    });
}
