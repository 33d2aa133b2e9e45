/** What comes next, in everyday words: `repeat unless "Prove it" is met`, `when all goals are missed`, `"Prove it" missed`. */
import { VERDICTS } from "../../../shared/verdict.ts";
import { isVerdictWord } from "../../generated/tree/ast.ts";
import type { Explanation, Recogniser } from "../slip.ts";
import type { Token } from "../tokens.ts";
import { insertBefore, isText, lastOf, nearby, rewrite, typeOf, wordsOf } from "./nearby.ts";

/** `when all goals are met`, `when everything is met`. */
const EVERY_GOAL =
  /^(?:(?:all|each|every)(?: (?:of )?the)?(?: goals?)?|everything)(?: (?:is|are|was|were))?(?= )/;

export const everyGoal: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [first] = line;
  if (first === undefined || !/^(?:when|and)$/.test(before?.image ?? "")) return undefined;
  const said = EVERY_GOAL.exec(wordsOf(line))?.[0];
  if (said === undefined || !misfit.slip.rules.includes("Next")) return undefined;
  const text = "every goal is";
  return rewrite(`What is asked of all goals is written \`${text}\`.`, first, lastOf(said, line), text);
};

/** `"Prove it" missed`, `every goal met`, `"Prove it" is not met`, `"Prove it" not met`. */
export const verdictOfGoal: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [first, second] = line;
  if (first === undefined || !misfit.slip.rules.includes("Next")) return undefined;
  const isNamed = typeOf(before) === "STRING" || before?.image === "goal";
  if (first.image === "not" && second !== undefined && (isNamed || before?.image === "is"))
    return notSo(first, second, isNamed ? "is " : "");
  if (!isNamed || !isVerdictWord(first.image) || !misfit.expected.includes("is")) return undefined;
  return insertBefore("A word stands between a goal and its verdict: `is`.", first, "is");
};

/** `repeat unless "Prove it" is met`. */
export const unless: Recogniser = (misfit) => {
  const { line } = nearby(misfit);
  const [token] = line;
  if (token?.image !== "unless" || misfit.slip.loop?.openers.includes("then") !== true) return undefined;
  const is = line.findIndex(({ image }) => image === "is");
  const verdict = line[is + 1];
  const rest = is < 0 ? undefined : othersThan(verdict);
  if (verdict === undefined || rest === undefined) return undefined;
  const text = `when ${wordsOf(line.slice(1, is))} is ${rest}`;
  return rewrite(`What must not be is said with what may be: \`${text}\`.`, token, verdict, text);
};

function notSo(not: Token, verdict: Token, is: string): Explanation | undefined {
  const rest = othersThan(verdict);
  return rest === undefined
    ? undefined
    : rewrite(`What must not be is said with what may be: \`is ${rest}\`.`, not, verdict, is + rest);
}

function othersThan(verdict: Token | undefined): string | undefined {
  if (verdict === undefined || !isVerdictWord(verdict.image)) return undefined;
  return VERDICTS.filter((other) => other !== verdict.image).join(" or ");
}

/** `advance "Two windows"`, `step back "Strike first"`. */
export const toMissing: Recogniser = (misfit) => {
  const [name] = nearby(misfit).line;
  if (!isText(name) || !misfit.expected.includes("to") || !misfit.slip.rules.includes("Next"))
    return undefined;
  return insertBefore("The plan that comes next stands behind `to`.", name, "to");
};
