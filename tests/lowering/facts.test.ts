/** What a session says of itself, for others that look for it. */
import { expect, test } from "vitest";
import { isSession } from "../../language/generated/tree/ast.ts";
import { Lowering } from "../../language/lowering/document.ts";
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import { services, withChecked } from "../checks/checked-files.ts";

const WORDS = `plan "Gate" {
  block "Gate" test {
    5 shots
  }
}

player "P-07" {
  right-handed
}
`;

/** The facts of the only session of a file, with what is wrong where there are none. */
function factsOf(...lines: readonly string[]) {
  const text = `use "./words"\n\nsession "First" {\n  ${lines.join("\n  ")}\n}\n`;
  return withChecked(text, { "words.drill": WORDS }, ({ document }) => {
    const [session] = document.parseResult.value.declarations.filter(isSession);
    if (session === undefined) throw new Error("The file has no session.");
    return new Lowering(services, ({ path }) => path).facts(session);
  });
}

test("its day, and where its plan and its player are declared", async () => {
  const stated = {
    file: "/examples/example.drill",
    name: "First",
    plan: { file: "/examples/words.drill", name: "Gate" },
    player: { file: "/examples/words.drill", name: "P-07" },
  };
  const [plan, player] = [`plan "Gate"`, `player "P-07"`] as const;
  expect(await factsOf(plan, player, "date 2026-10-12")).toEqual({ ...stated, date: "2026-10-12" });
  expect(await factsOf(plan, player)).toEqual({ ...stated, date: null });
});

test.each([
  [['player "P-07"'], 'The session "First" states no plan.'],
  [['plan "Gate"'], 'The session "First" states no player.'],
])("%s alone is too little", async (lines, message) => {
  await expect(factsOf(...lines)).rejects.toThrow(new IncompleteError(message));
});
