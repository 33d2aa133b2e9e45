/** The table by which the parser decides, asked of the parser library. */
import { EmptyFileSystem } from "langium";
import { expect, test } from "vitest";
import { createCoreServices } from "../../language/core-module.ts";
import { type Decide, engineOf, type Place, type Strategy } from "../../language/syntax/engine.ts";
import { placeName, type StoredLook, type StoredStep } from "../../language/syntax/lookahead.ts";
import type { Token } from "../../language/syntax/tokens.ts";

/** Most tokens a place may need to decide. A grammar that needs more there is hard on readers, too. */
const DEEPEST = 8;

const engine = engineOf(createCoreServices(EmptyFileSystem).drillwright.parser.LangiumParser);
const tokens = Object.entries(engine.tokensMap).map(
  ([name, type]) => ({ image: name, tokenType: type, tokenTypeIdx: type.tokenTypeIdx }) as Token,
);

/** The library's own way to decide at each place. The parser at hand was given the table instead. */
function decisions(): Map<Place, Decide> {
  const Strategy = engine.lookaheadStrategy.constructor as new (options: object) => Strategy;
  const strategy = new Strategy({ logging: () => {} });
  const rules = Object.values(engine.getGAstProductions());
  strategy.initialize({ rules });
  const made = new Map<Place, Decide>();
  const note = (place: Place, decide: Decide) => {
    made.set(place, decide);
    return decide;
  };
  const noting: Strategy = {
    initialize: () => {},
    buildLookaheadForAlternation: (place) => note(place, strategy.buildLookaheadForAlternation(place)),
    buildLookaheadForOptional: (place) => note(place, strategy.buildLookaheadForOptional(place)),
  };
  Object.getPrototypeOf(engine).preComputeLookaheadFunctions.call(
    Object.create(engine, { lookaheadStrategy: { value: noting }, setLaFuncCache: { value: () => {} } }),
    rules,
  );
  return made;
}

const TOO_FEW = new Error("This place wants to see more tokens.");

/** What is decided where these tokens are next. @throws TOO_FEW where that depends on what follows them */
function ask(decide: Decide, ahead: readonly Token[]): ReturnType<Decide> {
  const LA = (distance: number) => {
    const token = ahead[distance - 1];
    if (token !== undefined) return token;
    const last = ahead.at(-1);
    if (last?.image !== "EOF") throw TOO_FEW;
    return last; // behind the end of the file is its end
  };
  return decide.call({ LA, LA_FAST: LA });
}

function lookBehind(ahead: readonly Token[], decide: Decide): StoredLook {
  expect(ahead.length, ahead.map(({ image }) => image).join(" ")).toBeLessThan(DEEPEST);
  const tokensOf = new Map<string, number[]>();
  for (const [index, token] of tokens.entries()) {
    const step = JSON.stringify(stepBehind([...ahead, token], decide));
    tokensOf.set(step, [...(tokensOf.get(step) ?? []), index]);
  }
  const [most, ...others] = [...tokensOf].sort(([, some], [, more]) => more.length - some.length);
  return [JSON.parse(most?.[0] ?? "null"), ...others.map(([step, of]) => [JSON.parse(step), ...of] as const)];
}

function stepBehind(ahead: readonly Token[], decide: Decide): StoredStep {
  try {
    return ask(decide, ahead) ?? null;
  } catch (error) {
    if (error !== TOO_FEW) throw error;
    return lookBehind(ahead, decide);
  }
}

test("the table of lookahead is what the parser library decides", async () => {
  const table = Object.fromEntries(
    [...decisions()].map(([place, decide]) => {
      expect(place.hasPredicates ?? false).toBe(false);
      return [placeName(place), lookBehind([], decide)];
    }),
  );
  const module = [
    "// Written by tests/generated/lookahead.test.ts. Do not edit.",
    "",
    `export const TOKENS: readonly string[] = ${JSON.stringify(tokens.map(({ image }) => image))};`,
    "",
    "/** JSON of a `StoredLook` for each place by its name. */",
    `export const DECISIONS =\n  ${JSON.stringify(JSON.stringify(table))};`,
    "",
  ].join("\n");
  await expect(module).toMatchFileSnapshot("../../language/generated/lookahead.ts");
});
