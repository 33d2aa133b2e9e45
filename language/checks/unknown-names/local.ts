/** What is said of a name that belongs to a drill or to a metric, and is not one of theirs. */
import { AstUtils } from "langium";
import { nearest } from "../../../shared/nearest.ts";
import {
  Club,
  isArgument,
  isCount,
  isDrill,
  isDrillUse,
  isGroupCriterion,
  isWithin,
  UnitName,
} from "../../generated/tree/ast.ts";
import { metricAt } from "../../types/directions.ts";
import { parametersAt } from "../../types/parameters.ts";
import type { Fix } from "../check.ts";
import { rangeOf, removeWords } from "../edits.ts";
import { amount, code, listed, quoted } from "../wording.ts";
import { unknownDirection } from "./amount.ts";
import { unknownDeclaration } from "./declaration.ts";
import { type Explanation, type UnknownName, whatElse, write } from "./unknown-name.ts";

/** How many names a message offers. */
const MOST_OFFERED = 3;

const NUMBER_WORDS = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/** `none of { … }`, which was read as a group of so many. */
function noneOf({ container, name }: UnknownName): Explanation {
  if (name !== "none" || !isGroupCriterion(container.$container)) return undefined;
  return {
    message: `A group has no ${code("none of")}. Write ${code("all of")}, and on each line what must hold instead.`,
  };
}

/** `within 2° of square`: what has sides is straight in its middle. */
function aroundStraight({ container, name, cst }: UnknownName): Explanation {
  const within = container.$container;
  if (!STRAIGHT.test(name) || !isWithin(within) || within.centre !== container) return undefined;
  const tolerance = within.tolerance.$cstNode;
  if (tolerance === undefined) return undefined;
  const { start, end } = tolerance.range;
  return {
    message: `What is straight is said with ${code("±")}: ${code(`within ±${tolerance.text}`)}.`,
    fixes: [
      {
        title: `Write within ±${tolerance.text}`,
        edits: [
          ...(within.symmetric ? [] : [{ range: { start, end: start }, newText: "±" }]),
          { range: { start: end, end: cst.range.end }, newText: "" },
        ],
      },
    ],
  };
}

const STRAIGHT = /^(?:square|straight|zero|neutral|centre|center)$/;

/** An argument that the drill has no parameter for, or a word where a number or an amount belongs. */
export function unknownParameter(unknown: UnknownName): Explanation {
  const { container, name, names, document } = unknown;
  if (isArgument(container)) return unknownArgument(unknown);
  const own = parametersAt(container).map((parameter) => parameter.name);
  const meant = nearest(name, own).slice(0, MOST_OFFERED);
  const number = NUMBER_WORDS.indexOf(name.toLowerCase());
  const fixes = meant.map((text) => write(unknown, text));
  if (number > 0)
    return {
      message: `Numbers are written in digits: ${number}.`,
      fixes: [write(unknown, String(number)), ...fixes],
    };
  const around = isCount(container) ? noneOf(unknown) : aroundStraight(unknown);
  if (around !== undefined) return around;
  const what = isCount(container) ? "number" : "amount";
  const isUnit = names.find(document, UnitName.$type, name).length > 0;
  if (isUnit)
    return { message: `A number is missing before ${code(name)}, as in ${code(amount(10, name))}.`, fixes };
  const drill = AstUtils.getContainerOfType(container, isDrill);
  const advice =
    meant[0] !== undefined
      ? `Did you mean ${code(meant[0])}?`
      : drill !== undefined
        ? `Write one, or declare a parameter behind the name of the drill: ${code(`(${name}: ratio)`)}.`
        : isCount(container)
          ? "Write one in digits."
          : `Write one with its unit, as in ${code("2°")}.`;
  return { message: `${code(name)} is no ${what}.${whatElse(unknown, UnitName.$type)} ${advice}`, fixes };
}

function unknownArgument(unknown: UnknownName): Explanation {
  const { container, name, document } = unknown;
  const use = AstUtils.getContainerOfType(container, isDrillUse);
  const drill = use?.drill?.ref;
  if (use === undefined || drill === undefined) return undefined;
  const parameters = drill.parameters.map((parameter) => parameter.name);
  const meant = nearest(name, parameters).slice(0, MOST_OFFERED);
  const advice =
    meant[0] !== undefined
      ? `Did you mean ${code(meant[0])}?`
      : parameters.length > 0
        ? `It has ${listed(parameters.map(code), "and")}.`
        : "It has none: take it out.";
  const { drill: reference } = use;
  const last = use.arguments.at(-1);
  const takeOut: Fix[] =
    parameters.length > 0 ||
    use.arguments.length > 1 ||
    reference.$refNode === undefined ||
    last === undefined
      ? []
      : [
          {
            title: "Take the argument out",
            edits: [removeWords(document, { start: reference.$refNode.range.end, end: rangeOf(last).end })],
          },
        ];
  return {
    message: `The drill ${quoted(drill.name)} has no parameter ${code(name)}. ${advice}`,
    fixes: [...meant.map((text) => write(unknown, text)), ...takeOut],
  };
}

/** A name that a metric cannot be. */
export function unknownCategory(unknown: UnknownName): Explanation {
  const metric = metricAt(unknown.container);
  if (metric === undefined || metric.categories.length === 0) return undefined; // that is said of the metric
  const known = metric.categories.map((category) => category.name);
  const meant = nearest(unknown.name, known).slice(0, MOST_OFFERED);
  const advice =
    meant[0] === undefined
      ? `It is one of ${listed(known.map(code), "or")}.`
      : `Did you mean ${code(meant[0])}?`;
  return {
    message: `${code(metric.name)} is never ${code(unknown.name)}. ${advice}`,
    fixes: meant.map((text) => write(unknown, text)),
  };
}

/** What a text in a column stands for: a side of the metric, or one of its names. */
export function unknownMeaning(unknown: UnknownName): Explanation {
  const metric = metricAt(unknown.container);
  return metric !== undefined && metric.categories.length > 0
    ? unknownCategory(unknown)
    : unknownDirection(unknown);
}

/** A club in a line of shots, which in a drill can be a parameter. */
export function unknownClubOrParameter(unknown: UnknownName): Explanation {
  const { container, name } = unknown;
  const parameters = parametersAt(container);
  if (parameters.some((parameter) => parameter.name === name)) {
    return {
      message: `${code(name)} is an amount in this drill, and shots are hit with a club. Declare it as ${code(`${name}: club`)}, or name a club.`,
    };
  }
  const clubs = parameters.filter(({ isClub }) => isClub).map((parameter) => parameter.name);
  const meant = nearest(name, clubs).slice(0, MOST_OFFERED);
  const [first] = meant;
  if (first === undefined) return unknownDeclaration(unknown, Club.$type, "club", "plain");
  return {
    message: `${code(name)} is no club that is known here. Did you mean ${code(first)}?`,
    fixes: meant.map((text) => write(unknown, text)),
  };
}
