/** Runs the tasks of one key one after the other, those of different keys side by side. */
export function oneByOne(): <T>(key: string, task: () => Promise<T>) => Promise<T> {
  const last = new Map<string, Promise<unknown>>();
  return (key, task) => {
    const before = last.get(key) ?? Promise.resolve();
    // What went wrong before is the earlier caller's to hear of.
    const run = before.then(task, task);
    last.set(key, run);
    const forget = () => {
      if (last.get(key) === run) last.delete(key);
    };
    run.then(forget, forget);
    return run;
  };
}
