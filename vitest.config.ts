import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    benchmark: { include: ["tests/bench/**/*.bench.ts"] },
    globalSetup: "tests/programs.ts",
    testTimeout: 20_000,
    // Tests keep no state in modules: one load of the program serves all files of a worker.
    isolate: false,
    maxWorkers: "100%",
  },
});
