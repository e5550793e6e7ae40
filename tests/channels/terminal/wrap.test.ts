import { describe, expect, test } from "vitest";
import { wrap } from "../../../src/channels/terminal/wrap.ts";

describe("wrapping a reply for the terminal", () => {
  test("breaks at spaces, never inside a word", () => {
    expect(wrap("power off and locked out at the breaker", 20)).toBe(
      "power off and locked\nout at the breaker",
    );
  });

  test("indents what follows a bullet", () => {
    expect(wrap("• the frame code, like 48Y", 14)).toBe("• the frame\n  code, like\n  48Y");
  });

  test("keeps the lines of the text and words longer than the line", () => {
    expect(wrap("a\n\nMARMALADE-HULLABALOO", 10)).toBe("a\n\nMARMALADE-HULLABALOO");
  });
});
