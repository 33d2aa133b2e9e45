import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { shown, shownBesideIcons, withoutIcons } from "../../extension/shown-text.ts";

describe("a name is shown", () => {
  test("as it is", () => {
    expect(shown("P-07: start line, lesson two")).toBe("P-07: start line, lesson two");
    expect(shown("<b>Gate</b> **wide** [x](command:y)")).toBe("<b>Gate</b> **wide** [x](command:y)");
  });

  test("on one line, without what is not seen", () => {
    expect(shown("one\ntwo\u0007\u202egnp.exe")).toBe("one two gnp.exe");
  });

  test("cut where it is long, never within a character", () => {
    expect(shown("🏌".repeat(9), 4)).toBe("🏌🏌🏌…");
    expect(shown("four", 4)).toBe("four");
  });

  test("in its own direction, which turns nothing beside it", () => {
    expect(shown("شوط 9")).toBe("\u2068شوط 9\u2069");
  });

  test("without drawing an icon", () => {
    expect(shownBesideIcons("Gate $(sync~spin)")).toBe("Gate \\$(sync~spin)");
    // What draws none stays as it is: the backslash would be seen.
    expect(withoutIcons("costs $(5 + 3) $( $()")).toBe("costs $(5 + 3) $( $()");
  });
});

test("whatever a name holds, it is one line, not longer than asked, and keeps its directions to itself", () => {
  fc.assert(
    fc.property(
      fc.string({ unit: "binary", maxLength: 300 }),
      fc.integer({ min: 2, max: 90 }),
      (name, longest) => {
        const text = shown(name, longest);
        const isolated = /^\u2068(.*)\u2069$/s.exec(text)?.[1] ?? text;
        expect([...isolated].length).toBeLessThanOrEqual(longest);
        expect(isolated).not.toMatch(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/u);
      },
    ),
  );
});
