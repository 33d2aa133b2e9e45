/**
 * Which way the parser goes on at each place of the grammar where there are several, looked up in a table. The parser
 * library works it out from the grammar, which takes longer than reading a plan. The table was made by asking it, at each
 * place, for every token that may come next (`tests/generated/lookahead.test.ts`).
 */
import { DECISIONS, TOKENS } from "../generated/lookahead.ts";
import { type Decide, type Engine, ruleName } from "./engine.ts";

/** The number of an alternative, whether to take what is optional, or undefined where nothing fits. */
type Answer = ReturnType<Decide>;

/** A look at one token: what it says, or a look at the token behind it. */
interface Look {
  /** By the numbers that the library gives to tokens. */
  readonly steps: ReadonlyMap<number, Answer | Look>;
  /** For all other tokens. */
  readonly otherwise: Answer | Look;
}

/** A look in the table: the step for most tokens, then each other step with its tokens, by their places in `TOKENS`. */
export type StoredLook = readonly [otherwise: StoredStep, ...others: (readonly [StoredStep, ...number[]])[]];
/** Null where nothing fits. */
export type StoredStep = number | boolean | null | StoredLook;

/** For each rule the numbers that the library gives to its places, and what to look at there. */
export type StoredLooks = Readonly<Record<string, readonly (readonly [place: number, StoredLook])[]>>;

/** Has a parser go by the table, of which it reads the part of a rule when it enters the rule first. */
export function decideByTable(engine: Engine): void {
  const looks: StoredLooks = JSON.parse(DECISIONS);
  const numbers = TOKENS.map((name) => engine.tokensMap[name]?.tokenTypeIdx ?? Number.NaN);
  const entered = new Set<number>();
  const enter = engine.ruleInvocationStateUpdate.bind(engine);
  engine.ruleInvocationStateUpdate = (rule, name, occurrence) => {
    if (!entered.has(rule)) {
      entered.add(rule);
      for (const [place, look] of looks[ruleName(name)] ?? []) {
        engine.setLaFuncCache(rule, place, lookUp(revive(look, numbers)));
      }
    }
    enter(rule, name, occurrence);
  };
  engine.preComputeLookaheadFunctions = () => {};
  engine.lookaheadStrategy.initialize = () => {};
}

function lookUp(first: Look): Decide {
  return function () {
    let step: Answer | Look = first;
    for (let distance = 1; typeof step === "object"; distance++) {
      const { steps, otherwise }: Look = step;
      const token = this.LA(distance).tokenTypeIdx;
      step = steps.has(token) ? steps.get(token) : otherwise;
    }
    return step;
  };
}

function revive([otherwise, ...others]: StoredLook, numbers: readonly number[]): Look {
  const revived = (step: StoredStep): Answer | Look =>
    typeof step !== "object" ? step : step === null ? undefined : revive(step, numbers);
  const steps = new Map<number, Answer | Look>();
  for (const [stored, ...tokens] of others) {
    const step = revived(stored);
    for (const token of tokens) steps.set(numbers[token] as number, step);
  }
  return { steps, otherwise: revived(otherwise) };
}
