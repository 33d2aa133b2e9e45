/** Words that other people use for those of the language: `mean` for average, `vs` for against, `headwind`. */
import { brokenOff, type Misfit, type Recogniser, type Slip } from "../slip.ts";
import { keywordsWithin } from "../statement-loops.ts";
import { excerpt, nameOf, rangeOf, startsLine, type Token, touch } from "../tokens.ts";
import { goalAround, isText, nearby, rewrite, takeOut, wordsOf } from "./nearby.ts";

/** What is said, and what it is called here: the first that can stand in its place, or one of several that are meant. */
const OTHER_WORDS: readonly (readonly [said: string, ...meant: string[]])[] = [
  ["mean", "average"],
  ["avg", "average"],
  ["standard deviation of", "spread of"],
  ["standard deviation", "spread"],
  ["std", "spread"],
  ["sd", "spread"],
  ["stdev", "spread"],
  ["dispersion", "spread"],
  ["longest", "best"],
  ["furthest", "best"],
  ["farthest", "best"],
  ["shortest", "worst"],
  ["highest", "best", "worst"],
  ["largest", "best", "worst"],
  ["lowest", "worst", "best"],
  ["smallest", "worst", "best"],
  ["minimum", "worst", "best"],
  ["min", "worst", "best"],
  ["compared to", "against"],
  ["compared with", "against"],
  ["relative to", "against"],
  ["versus", "against"],
  ["vs", "against"],
  ["over", "against"],
  ["than", "against"],
  ["from", "against"],
  ["increases by", "rises by"],
  ["increases", "rises by"],
  ["grows by", "rises by"],
  ["decreases by", "falls by"],
  ["decreases", "falls by"],
  ["drops by", "falls by"],
  ["drops", "falls by"],
  ["shrinks by", "falls by"],
  ["improves by", "rises by", "falls by"],
  ["improves", "rises by", "falls by"],
  ["where", "with"],
  ["that have", "with"],
  ["if", "where", "when"],
  ["balls", "shots"],
  ["ball", "shot"],
  ["swings", "shots"],
  ["strikes", "shots"],
  ["hits", "shots"],
  ["reps", "shots"],
  ["putts", "shots"],
  ["chips", "shots"],
  ["pitches", "shots"],
  ["drives", "shots"],
  ["strokes", "shots"],
  ["headwind", "head"],
  ["into", "head"],
  ["against", "head"],
  ["tailwind", "tail"],
  ["behind", "tail"],
  ["helping", "tail"],
  ["from the left", "left-to-right"],
  ["from left", "left-to-right"],
  ["left to right", "left-to-right"],
  ["from the right", "right-to-left"],
  ["from right", "right-to-left"],
  ["right to left", "right-to-left"],
  ["none", "calm"],
  ["line", "row"],
  ["at", "from"],
  ["using", "from", "with"],
  ["uses", "from"],
  ["per", "a"],
  ["certainty", "confidence"],
  ["k =", "factor"],
  ["possible cause", "suspect"],
  ["likely cause", "suspect"],
  ["cause", "suspect"],
  ["because", "suspect"],
  ["reason", "suspect"],
  ["means", "suspect"],
  ["fix", "try"],
  ["accuracy of", "reads"],
  ["accuracy", "reads"],
  ["precision", "reads"],
  ["goal", "success", "intent"],
  ["goals", "success"],
  ["criterion", "success"],
  ["criteria", "success"],
  ["pass", "success"],
  ["succeed if", "success"],
  ["aim", "target", "intent"],
  ["objective", "intent"],
  ["purpose", "intent"],
  ["description", "intent"],
  ["focus", "cue", "intent"],
  ["thought", "cue"],
  ["hint", "cue"],
  ["tip", "cue"],
  ["note", "cue"],
  ["warning", "caution"],
  ["duration", "time"],
  ["length", "time"],
  ["lasts", "time"],
  ["takes", "time"],
  ["club", "for"],
  ["clubs", "for"],
  ["with", "for", "from", "at"],
  ["must have", "require"],
  ["must", "require"],
  ["keep", "require"],
  ["ensure", "require"],
  ["constraint", "require"],
  ["requires", "needs", "after"],
  ["needs", "after"],
  ["prerequisite", "needs"],
  ["max", "limit", "best", "worst"],
  ["maximum", "limit", "best", "worst"],
  ["swings/session", "swings a session"],
  ["swings/day", "swings a day"],
  ["swings/week", "swings a week"],
  ["shots", "swings"],
  ["shot", "swing"],
  ["hand : left", "left-handed"],
  ["hand : right", "right-handed"],
  ["handed left", "left-handed"],
  ["handed right", "right-handed"],
  ["hand left", "left-handed"],
  ["hand right", "right-handed"],
  ["left handed", "left-handed"],
  ["right handed", "right-handed"],
  ["lefty", "left-handed"],
  ["righty", "right-handed"],
  ["delimiter", "separator"],
  ["blank is", "no reading is"],
  ["empty is", "no reading is"],
  ["missing is", "no reading is"],
  ["blank", "no reading is"],
  ["empty", "no reading is"],
  ["missing", "no reading is"],
  ["elevation", "altitude"],
  ["import", "use"],
  ["include", "use"],
  ["go back to", "step back to"],
  ["back to", "step back to"],
  ["go on to", "advance to"],
  ["move on to", "advance to"],
  ["go to", "advance to"],
  ["move to", "advance to"],
  ["continue with", "advance to"],
  ["stay", "repeat"],
  ["again", "repeat"],
  ["else", "otherwise"],
  ["always", "otherwise"],
  ["every", "after"],
  ["in", "after"],
  ["=", "is"],
  ["→", "is"],
  ["- >", "is"],
  ["&", "and"],
  ["as", "is"],
  ["source", "from"],
  ["starts at", "from"],
  ["starts", "from"],
  ["begins at", "from"],
  ["for", "player"],
  ["on", "date"],
  ["file", "data"],
  ["table", "data"],
  ["exercise", "block"],
  ["station", "block"],
  ["part", "block"],
  ["section", "block"],
  ["warmup", "warm-up"],
  ["step", "step back"],
  ["next", "advance"],
  ["then", "after"],
  ["drill", "from", "try"],
  ["plan", "step"],
];

/** What a word is called here first; the word itself where it is called so. */
export function wordFor(said: string): string {
  return OTHER_WORDS.find(([other]) => other === said)?.[1] ?? said;
}

export const otherWord: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  // A word that could be a name was read as one, and what comes behind it is what does not fit.
  const read = before ?? brokenOff(misfit);
  const isName = read !== undefined && misfit.slip.grammar.names.has(nameOf(read.tokenType));
  const asName = isName ? [[read, ...(before === undefined ? [] : line)]] : [];
  for (const tokens of [line, ...asName]) {
    for (const [said, ...meant] of OTHER_WORDS) {
      const words = said.split(" ");
      if (!words.every((word, place) => tokens[place]?.image.toLowerCase() === word)) continue;
      const fitting = meant.filter((text) => fits(misfit, text, tokens === line));
      const [first] = fitting;
      if (first === undefined || first === said) continue;
      const [start, last, next] = [
        tokens[0] as Token,
        tokens[words.length - 1] as Token,
        tokens[words.length],
      ];
      const range = rangeOf(start, last);
      // Signs need no space around them, and words do.
      const space = next !== undefined && touch(last, next) && /^[\p{L}\p{N}"]/u.test(next.image) ? " " : "";
      return {
        message:
          fitting.length === 1
            ? `\`${said}\` is \`${first}\` here.`
            : `\`${said}\` can be ${fitting.map((text) => `\`${text}\``).join(" or ")}: say which.`,
        range,
        fixes: fitting.map((text) => ({ title: `Write ${text}`, edits: [{ range, newText: text + space }] })),
      };
    }
  }
  return undefined;
};

/** Whether the words can stand there, or elsewhere in the statement that seems to be complete, or broken off. */
function fits(misfit: Misfit, text: string, isMisfit: boolean): boolean {
  const { slip, token, index, expected } = misfit;
  const [first = ""] = text.split(" ");
  if (expected.includes(first)) return true;
  const isInLine = token !== undefined && !startsLine(token, slip.tokens[index - 1]);
  const isGoal = !isMisfit && goalAround(misfit).length > 0;
  if (isGoal && goalStarters(misfit.slip).has(first)) return true;
  const isOpen = isMisfit ? slip.loop !== undefined && isInLine : brokenOff(misfit) !== undefined;
  return isOpen && wordsOfStatement(slip).includes(first);
}

/** With what a goal can begin. */
function goalStarters({ grammar }: Slip): ReadonlySet<string> {
  return (
    [...grammar.loops.values()].find(({ openers }) => openers.includes("success"))?.starters ?? new Set()
  );
}

/** The keywords of the statement that was being read. */
export function wordsOfStatement({ tokens, start, loop, rules, grammar }: Slip): readonly string[] {
  const first = tokens[start];
  const name = first === undefined ? "" : nameOf(first.tokenType);
  const around =
    loop ?? rules.map((rule) => grammar.loops.get(rule)).findLast((known) => known?.starters.has(name));
  const [form] = [...(around?.forms ?? [])].find(([, starters]) => starters.has(name)) ?? [];
  return form === undefined ? [] : keywordsWithin(grammar.rules, form);
}

/** `plan "Strike"` in a curriculum, where it would begin another declaration if it stood at the very left. */
export const otherWordInside: Recogniser = (misfit) => {
  const { slip, token, expected } = misfit;
  if (token === undefined || !expected.includes("}") || (token.startColumn ?? 1) === 1) return undefined;
  const loop = slip.rules
    .map((rule) => slip.grammar.loops.get(rule))
    .findLast((known) => known !== undefined);
  const explanation = loop && otherWord({ ...misfit, expected: [...loop.starters] });
  return explanation === undefined ? undefined : { ...explanation, follows: true };
};

/** What is said of how sure it must be, where the goal seems to be complete, or goes on with `at`. */
const CONFIDENCE =
  /^(?:[(,;] )?(?:(?:with|for|to|at) )?(?:an? )?(?:(?<before>confidence (?:of |level )?)?(?<level>\d+(?:\.\d+)?)(?: (?:%|percent))?)(?<behind> (?:confidence|confident|certainty|certain|probability|sure))?(?: \))?(?= |$)/;

/** `with 90 % confidence`, `(90 % confidence)`, `at 90 %`; one where it is that by itself: `decide at 90 % confidence`. */
export const confidence: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const { slip, expected } = misfit;
  const isBehindAt = before?.image === "at" && expected.includes("least");
  const said = isBehindAt ? [before, ...line] : line;
  const [word] = said;
  if (word === undefined || before === undefined) return undefined;
  if (slip.loop === undefined && !isBehindAt) return undefined;
  if (word.image === "confidence" && slip.tokens[slip.start]?.image === "decide") {
    const range = { start: rangeOf(before).end, end: rangeOf(word).end };
    return {
      message: "It is a level of confidence as it is: take the word out.",
      range: rangeOf(word),
      fixes: [{ title: "Take confidence out", edits: [{ range, newText: "" }] }],
    };
  }
  const match = CONFIDENCE.exec(wordsOf(said));
  const { before: named, level, behind } = match?.groups ?? {};
  if (match === null || level === undefined) return undefined;
  const length = match[0].split(" ").length;
  const isNamed = (named ?? behind) !== undefined;
  if (!isNamed && !(isBehindAt && said.length === length && said[2]?.image === "%")) return undefined;
  const text = `at ${level} % confidence`;
  const message = `How sure it must be is written \`${text}\`.`;
  const last = said[length - 1] as Token;
  return rewrite(message, word, last, touch(before, word) ? ` ${text}` : text);
};

/** `from drill "Gate"`, `inside window "Path"`: the name alone says it. */
export const kindBeforeName: Recogniser = (misfit) => {
  const [word, name] = nearby(misfit).line;
  if (word === undefined || !isText(name) || !misfit.expected.includes("STRING")) return undefined;
  if (!/^[a-z]+$/.test(word.image)) return undefined;
  return takeOut(`The name alone says it: take \`${excerpt(word.image)}\` out.`, [word], name);
};
