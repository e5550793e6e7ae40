/**
 * Walks several lists that are each in order as if they were one, without putting them together first.
 * `rankOf` gives the place of an item in the common order, smaller first.
 */
export function* mergeInOrder(
  lists: readonly (readonly number[])[],
  rankOf: (item: number) => number,
): Generator<number> {
  const heads = lists.filter((list) => list.length > 0).map((list) => ({ list, next: 0, rank: 0 }));
  for (const head of heads) head.rank = rankOf(head.list[0] ?? 0);
  for (let at = (heads.length >> 1) - 1; at >= 0; at--) sink(heads, at);
  for (let head = heads[0]; head; head = heads[0]) {
    const item = head.list[head.next];
    if (item === undefined) return;
    yield item;
    head.next += 1;
    const following = head.list[head.next];
    if (following === undefined) {
      const tail = heads.pop();
      if (tail && tail !== head) heads[0] = tail;
    } else {
      head.rank = rankOf(following);
    }
    sink(heads, 0);
  }
}

/** Restores the heap below `at`: each head stands before the two below it. */
function sink(heads: { rank: number }[], at: number): void {
  for (let parent = at; ; ) {
    const left = 2 * parent + 1;
    const a = heads[left];
    const b = heads[left + 1];
    const top = heads[parent];
    if (!a || !top) return;
    const child = b && b.rank < a.rank ? left + 1 : left;
    const below = heads[child];
    if (!below || below.rank >= top.rank) return;
    heads[parent] = below;
    heads[child] = top;
    parent = child;
  }
}
