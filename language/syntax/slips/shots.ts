/** Shots and how they are counted, in everyday words: `10–15 shots`, `3 on target in a row`, `no misses`. */
import { loopAround, type Misfit, type Recogniser } from "../slip.ts";
import { firstOfLine, rangeOf, type Token } from "../tokens.ts";
import { goalAround, isNumber, isWord, LIMITS, lastOf, nearby, rewrite, takeOut, wordsOf } from "./nearby.ts";

const ONE_NUMBER = "A block asks for one number of shots, so that it is known when it is over.";

/** `10-15 shots`: how many are asked for? */
export const rangeOfShots: Recogniser = (misfit) => {
  const { before: low, line } = nearby(misfit);
  const [dash, high, shots] = line;
  if (!isNumber(low) || dash === undefined || !isNumber(high) || !misfit.expected.includes("shots"))
    return undefined;
  if (!/^(?:[-\u2010-\u2015]|to|or)$/.test(dash.image) || !/^(?:shots?|balls?)$/.test(shots?.image ?? ""))
    return undefined;
  const range = rangeOf(low, high);
  return {
    message: ONE_NUMBER,
    range,
    fixes: [low, high].map(({ image }) => ({ title: `Write ${image}`, edits: [{ range, newText: image }] })),
  };
};

/** `about 10 shots`. */
export const roughlyShots: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [about, number] = line;
  if (misfit.slip.loop?.starters.has("leave") !== true || before !== undefined) return undefined;
  if (!/^(?:about|around|roughly|approximately|circa|ca|some)$/.test(about?.image ?? "")) return undefined;
  return about !== undefined && isNumber(number) ? takeOut(ONE_NUMBER, [about], number) : undefined;
};

/** `10 shots with 7-iron and driver`. */
export const clubsTogether: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [joint, club] = line;
  const { tokens, loop } = misfit.slip;
  if (loop?.starters.has("leave") !== true || tokens[misfit.index - 2]?.image !== "with") return undefined;
  if (!isWord(before) || !/^(?:and|or|,|\/)$/.test(joint?.image ?? "") || !isWord(club)) return undefined;
  return {
    message: `Each club has a line of its own, with its number of shots: \`… shots with ${club.image}\`.`,
    range: rangeOf(joint as Token, club),
  };
};

/** `10 shots with 7-iron and 5 shots with 5-iron`. */
export const shotsTogether: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [joint, number] = line;
  if (misfit.slip.loop?.starters.has("leave") !== true || before === undefined || joint === undefined)
    return undefined;
  if (!/^(?:and|then|,|;|\+)$/.test(joint.image) || !isNumber(number)) return undefined;
  return onLineOfItsOwn("Each number of shots stands on a line of its own.", misfit, before, joint, number);
};

/** `average carry at least 140 yd and spread of carry below 10 yd`. */
export const goalsTogether: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [joint, next] = line;
  if (misfit.slip.loop?.starters.has("average") !== true || joint === undefined) return undefined;
  if (before === undefined || next === undefined) return undefined;
  if (joint.image === "or") return { message: ONE_IS_ENOUGH, range: rangeOf(joint) };
  if (joint.image !== "and") return undefined;
  return onLineOfItsOwn(
    "Each goal stands on a line of its own; all of them count.",
    misfit,
    before,
    joint,
    next,
  );
};

const ONE_IS_ENOUGH = "Goals of which one is enough stand in `any of { … }`, one a line.";

/** `both average carry … and …`, `either 5 in a row … or …`. */
export const bothOrEither: Recogniser = (misfit) => {
  const [word, next] = goalAround(misfit);
  if (word === undefined || next === undefined) return undefined;
  if (word.image === "either") return { message: ONE_IS_ENOUGH, range: rangeOf(word) };
  if (word.image !== "both") return undefined;
  return takeOut("All goals of a block count: take `both` out.", [word], next);
};

/** What is said of shots that are on target, behind the word for shots. */
const ON_TARGET =
  /^(?:(?:that |which )?(?:are |were )?(?:in|within|inside|on|at|hit|hits|hitting)(?: the)? targets?|good)(?= |$)/;

/** `8 of 10 shots hit the target`, `8 of 10 shots within 2°`. */
export const shotsOnTarget: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [first] = line;
  if (first === undefined || !/^shots?$/.test(before?.image ?? "") || !misfit.expected.includes("on"))
    return undefined;
  const said = ON_TARGET.exec(wordsOf(line))?.[0];
  if (said !== undefined) {
    const last = lastOf(said, line);
    return rewrite("Shots that do what the targets ask are `on target`.", first, last, "on target");
  }
  if (!LIMITS.has(first.image)) return undefined;
  return { message: `Say of which metric: \`shots with … ${first.image} …\`.`, range: rangeOf(first) };
};

/** A number of shots one after the other; what they have in common comes before or behind. */
const IN_A_ROW =
  /^\d+(?: (?:good|clean))?(?: (?<first>consecutive|straight|successive))?(?: (?:shots?|balls?))?(?: on target)?(?<last> (?:in a row|running|consecutively))?(?: on target)?/;

/** `3 consecutive shots on target`, `5 good shots in a row`. */
export const runInOtherWords: Recogniser = (misfit) => {
  const goal = goalAround(misfit);
  const [number] = goal;
  if (!isNumber(number)) return undefined;
  const match = IN_A_ROW.exec(wordsOf(goal));
  if (match === null || (match.groups?.first ?? match.groups?.last) === undefined) return undefined;
  const last = goal[match[0].split(" ").length - 1];
  const isBefore = /^(?:with|inside|outside)$/.test(goal[match[0].split(" ").length]?.image ?? "");
  const text = `${number.image} in a row${isBefore ? "" : " on target"}`;
  if (last === undefined || match[0] === text) return undefined;
  return rewrite(`Shots one after the other are \`${text}\`.`, number, last, text);
};

/** `no shots with carry below 100 yd`. */
export const noShots: Recogniser = (misfit) => {
  const [no, shots] = goalAround(misfit);
  if (no?.image !== "no" || shots === undefined || !/^shots?$/.test(shots.image)) return undefined;
  const text = "at most 0 shots";
  return rewrite(`How many shots is said as a number: \`${text}\`.`, no, shots, text);
};

/** `no misses`, `at most 2 misses`, `at most 1 shot off target`. */
export const misses: Recogniser = ({ slip, index, token }) => {
  if (token === undefined || loopAround(slip)?.starters.has("average") !== true) return undefined;
  const first = firstOfLine(slip.tokens, index);
  const line = nearby({ slip, index: first, token: slip.tokens[first], expected: [] }).line;
  const miss = line.find(
    ({ image }, place) =>
      /^(?:miss|misses)$/.test(image) || (image === "off" && line[place + 1]?.image === "target"),
  );
  if (miss === undefined) return undefined;
  return {
    message:
      "A miss is a shot that is not on target: say how many must be, `at least … of … shots on target`.",
    range: rangeOf(miss),
  };
};

/** What follows a word that joins goes to a new line, as far in as the one it stands on. */
function onLineOfItsOwn(message: string, { slip, index }: Misfit, before: Token, joint: Token, next: Token) {
  const indentation = " ".repeat((slip.tokens[firstOfLine(slip.tokens, index)]?.startColumn ?? 1) - 1);
  const range = { start: rangeOf(before).end, end: rangeOf(next).start };
  return {
    message,
    range: rangeOf(joint),
    fixes: [{ title: "Begin a new line", edits: [{ range, newText: `\n${indentation}` }] }],
  };
}
