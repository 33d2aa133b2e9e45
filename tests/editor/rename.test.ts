/** A name is changed everywhere or not at all, and never to one that would not do. */
import { describe, expect, test } from "vitest";
import { openEditor, type TestEditor } from "../support/editor.ts";
import { SAMPLE } from "../support/sample.ts";

async function behind(path: string, piece: string, files = SAMPLE): Promise<TestEditor> {
  const text = files[path] as string;
  expect(text).toContain(piece);
  return (await openEditor(files)).at(path, text.indexOf(piece) + piece.length);
}

/** The files of the sample in which every one of these pieces is replaced. */
function replaced(paths: readonly string[], from: string, to: string): Record<string, string> {
  return Object.fromEntries(paths.map((path) => [path, (SAMPLE[path] as string).replaceAll(from, to)]));
}

async function mistakesAfter(changes: Record<string, string>): Promise<string[]> {
  const editor = await openEditor({ ...SAMPLE, ...changes });
  return Object.keys(SAMPLE)
    .filter((path) => path.endsWith(".drill"))
    .flatMap(
      (path) => editor.file(path).diagnostics?.map(({ message }) => `${path}: ${String(message)}`) ?? [],
    );
}

describe("renaming changes every place and leaves no mistake behind", () => {
  test.each([
    [
      "a metric",
      "plans/gate.drill",
      "needs club-path, carry, miss",
      "side-miss",
      ["library/words.drill", "plans/gate.drill"],
      "miss-share",
      "side-miss",
    ],
    [
      "a club",
      "library/words.drill",
      "club chip",
      "bump-iron",
      ["library/words.drill", "plans/gate.drill"],
      "chipper",
      "bump-iron",
    ],
    [
      "a player",
      "sessions/first.drill",
      'player "P',
      "P-08",
      ["library/range.drill", "sessions/first.drill"],
      '"P-07"',
      '"P-08"',
    ],
    [
      "a source",
      "sessions/first.drill",
      'from "F',
      "Field table",
      ["library/range.drill", "sessions/first.drill"],
      '"Field"',
      '"Field table"',
    ],
    [
      "a block",
      "sessions/first.drill",
      'block "G',
      "The gate",
      ["plans/gate.drill", "sessions/first.drill"],
      '"Gate"',
      '"The gate"',
    ],
    [
      "a plan",
      "plans/gate.drill",
      'plan "S',
      "Gate",
      ["plans/gate.drill", "sessions/first.drill"],
      '"Seven-iron: \\"gate\\""',
      '"Gate"',
    ],
    [
      "a direction word",
      "library/words.drill",
      "right-hander fa",
      "slice",
      ["library/words.drill"],
      "fade",
      "slice",
    ],
  ])("%s", async (_what, path, piece, newName, paths, from, to) => {
    const changes = await (await behind(path, piece)).rename(newName);
    expect(changes).toEqual(replaced(paths, from, to));
    expect(await mistakesAfter(changes)).toEqual([]);
  });

  test("a unit, under the spelling it is renamed by", async () => {
    const changes = await (await behind("library/words.drill", "unit ch")).rename("bit");
    expect(changes["library/words.drill"]).toContain("unit bit\n  unit half = 0.5 bit");
    expect(await mistakesAfter(changes)).toEqual([]);
  });
});

describe("texts", () => {
  test("are shown without their quotation marks", async () => {
    expect(await (await behind("sessions/first.drill", 'player "P')).renamed()).toBe("P-07");
    expect(await (await behind("plans/gate.drill", 'plan "S')).renamed()).toBe('Seven-iron: \\"gate\\"');
    expect(await (await behind("plans/gate.drill", "carry, mi")).renamed()).toBe("miss-share");
  });

  test("may be typed with quotation marks, and may hold some", async () => {
    const player = await behind("sessions/first.drill", 'player "P');
    expect((await player.rename('"P-08"'))["sessions/first.drill"]).toContain('player "P-08"');
    expect((await player.rename('the "new" one'))["sessions/first.drill"]).toContain(
      'player "the \\"new\\" one"',
    );
    expect((await player.rename('the \\"new\\" one'))["sessions/first.drill"]).toContain(
      'player "the \\"new\\" one"',
    );
    expect((await player.rename("a\\"))["sessions/first.drill"]).toContain('player "a\\\\"');
  });

  test.each([
    ["", "at least one character"],
    ['""', "at least one character"],
    ["a\nb", "one line"],
  ])("cannot be %j", async (newName, reason) => {
    const player = await behind("sessions/first.drill", 'player "P');
    await expect(player.rename(newName)).rejects.toThrow(reason);
  });
});

describe("words", () => {
  test.each(["side miss", "2nd", "miss-", "-miss", "miss.share", "", '"miss"', "miss share // x", "70"])(
    "cannot be %j",
    async (newName) => {
      const metric = await behind("plans/gate.drill", "carry, mi");
      await expect(metric.rename(newName)).rejects.toThrow("cannot be a name");
    },
  );

  test("cannot be words of the language, but for those the grammar allows", async () => {
    const metric = await behind("plans/gate.drill", "carry, mi");
    await expect(metric.rename("target")).rejects.toThrow("`target` is a word of the language");
    await expect(metric.rename("in")).rejects.toThrow("word of the language");
    const unit = await behind("library/words.drill", "unit ch");
    await expect(unit.rename("of")).rejects.toThrow("word of the language");
  });

  test.each(["Fehlweite", "miss-2", "écart", "9-wood", "m/s-off"])("can be %s", async (newName) => {
    const changes = await (await behind("plans/gate.drill", "carry, mi")).rename(newName);
    expect(await mistakesAfter(changes)).toEqual([]);
  });
});

describe("names that are taken", () => {
  test("by a declaration of the same file", async () => {
    const files = { "a.drill": 'player "A" {\n}\nplayer "B" {\n}\n' };
    const editor = await behind("a.drill", 'player "A', files);
    await expect(editor.rename("B")).rejects.toThrow("There is already a player named `B` in a.drill.");
  });

  test("by the library", async () => {
    const metric = await behind("plans/gate.drill", "carry, mi");
    await expect(metric.rename("carry")).rejects.toThrow("already a metric named `carry` in metrics.drill");
  });

  test("in a file that uses this one", async () => {
    const files = {
      "lib.drill": "metric mine is ratio\n",
      "plan.drill": 'use "./lib"\nmetric yours is ratio\nplan "P" {\n  needs mine, yours\n}\n',
    };
    const editor = await behind("lib.drill", "metric mi", files);
    await expect(editor.rename("yours")).rejects.toThrow("in plan.drill");
  });

  test("by another block of the plan, or another word of the metric", async () => {
    const block = await behind("sessions/first.drill", 'block "G');
    await expect(block.rename("Wake up")).rejects.toThrow("already a block named `Wake up`");
    const word = await behind("library/words.drill", "right-hander fa");
    await expect(word.rename("draw")).rejects.toThrow("already a direction word named `draw`");
  });

  test("by another parameter of the drill, or another name that the metric can be", async () => {
    const files = {
      "a.drill":
        'drill "Gate" (width: angle, hits: ratio) {\n  10 shots\n}\n\nmetric putt is one of holed, short\n',
    };
    const parameter = await behind("a.drill", "(wid", files);
    await expect(parameter.rename("hits")).rejects.toThrow("already a parameter named `hits`");
    const category = await behind("a.drill", "of hol", files);
    await expect(category.rename("short")).rejects.toThrow("named `short`");
  });

  test("elsewhere do not matter", async () => {
    const files = { "a.drill": 'player "A" {\n}\n', "b.drill": 'player "B" {\n}\n' };
    const editor = await behind("a.drill", 'player "A', files);
    expect(await editor.rename("B")).toEqual({ "a.drill": 'player "B" {\n}\n' });
  });

  test("by the thing itself are no change", async () => {
    const metric = await behind("plans/gate.drill", "carry, mi");
    const changes = await metric.rename("miss-share");
    expect(changes["plans/gate.drill"]).toBe(SAMPLE["plans/gate.drill"]);
  });
});

describe("what keeps its name", () => {
  test.each([
    ["a built-in metric", "needs club"],
    ["a built-in unit", "within 2°"],
    ["a built-in direction word", "1° in-to"],
    ["a built-in club", "for 7-ir"],
  ])("%s, with a reason", async (_what, piece) => {
    const editor = await behind("plans/gate.drill", piece);
    await expect(editor.renamed()).rejects.toThrow("belongs to the built-in library");
    await expect(editor.rename("mine")).rejects.toThrow("belongs to the built-in library");
  });

  test("words of the language, numbers and free texts", async () => {
    for (const piece of ["inte", "  1", 'cue "Bru']) {
      expect(await (await behind("plans/gate.drill", piece)).renamed()).toBeUndefined();
    }
  });
});
