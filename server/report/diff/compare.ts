/** Compares two lists of plans by what they mean. */
import type { Block, Plan } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import { shotsInWords } from "../words.ts";
import { partOf } from "./effect.ts";
import { type Part, type PartDifference, pairParts } from "./pair.ts";
import type { Difference } from "./plan-diff.ts";

/** In the order of the new file, what is gone last. Plans and blocks are told apart by their names. */
export function differencesBetween(old: readonly Plan[], now: readonly Plan[]): Difference[] {
  const [was, is] = [old, now].map((plans) => new Map(plans.map((plan) => [plan.name, plan])));
  return [
    ...now.flatMap((plan) => {
      const before = was?.get(plan.name);
      return before === undefined ? [whole("added", plan)] : planDifferences(before, plan);
    }),
    ...old.filter(({ name }) => !is?.has(name)).map((plan) => whole("removed", plan)),
  ];
}

function whole(change: "added" | "removed", { name, location }: Plan): Difference {
  const text = `"${name}"`;
  return {
    change,
    plan: null,
    block: null,
    what: "plan",
    old: change === "removed" ? text : null,
    new: change === "added" ? text : null,
    effect: null,
    location,
  };
}

function planDifferences(old: Plan, now: Plan): Difference[] {
  const inPlan = (part: PartDifference): Difference => ({
    ...part,
    plan: now.name,
    block: null,
    location: part.location ?? (part.change === "removed" ? old : now).location,
  });
  const [was, is] = [old, now].map(({ blocks }) => new Map(blocks.map((block) => [block.name, block])));
  const kept = (plan: Plan, other: ReadonlyMap<string, Block> | undefined) =>
    plan.blocks.filter(({ name }) => other?.has(name)).map(({ name }) => name);
  const [orderBefore, orderNow] = [kept(old, is), kept(now, was)].map((names) => names.join(", "));
  return [
    ...PLAN_PARTS.flatMap(([what, partsOf]) => pairParts(what, partsOf(old), partsOf(now))).map(inPlan),
    ...(orderBefore === orderNow
      ? []
      : [inPlan(changed("order of blocks", orderBefore ?? "", orderNow ?? ""))]),
    ...now.blocks.flatMap((block) => {
      const before = was?.get(block.name);
      if (before === undefined) return [inPlan(alone("added", block))];
      return blockDifferences(before, block).map((part) => {
        const location = part.location ?? (part.change === "removed" ? before : block).location;
        return { ...inPlan({ ...part, location }), block: block.name };
      });
    }),
    ...old.blocks.filter(({ name }) => !is?.has(name)).map((block) => inPlan(alone("removed", block))),
  ];
}

function blockDifferences(old: Block, now: Block): PartDifference[] {
  return BLOCK_PARTS.flatMap(([what, partsOf]) => pairParts(what, partsOf(old), partsOf(now)));
}

function changed(what: string, old: string, now: string): PartDifference {
  return { change: "changed", what, old, new: now, effect: null, location: null };
}

function alone(change: "added" | "removed", block: Block): PartDifference {
  const text = blockInWords(block);
  const isNew = change === "added";
  return {
    change,
    what: "block",
    old: isNew ? null : text,
    new: isNew ? text : null,
    effect: null,
    location: block.location,
  };
}

type PartsOf<Whole> = readonly [what: string, partsOf: (whole: Whole) => Part[]];

/** A part that is its text and nothing else. */
const plain = (text: string, about: string): Part => ({
  text,
  location: null,
  meaning: text,
  about,
  effectFrom: () => null,
});

/** There is one of it, so that another text is a change of it. */
const single = (text: string | null): Part[] => (text === null ? [] : [plain(text, "")]);

/** There may be several, told apart by their words alone. */
const texts = (list: readonly string[]): Part[] => list.map((text) => plain(text, text));

const PLAN_PARTS: readonly PartsOf<Plan>[] = [
  ["intent", ({ intent }) => single(intent)],
  ["clubs", ({ clubs }) => single(clubs.length === 0 ? null : clubs.join(", "))],
  ["time", ({ time }) => single(time === null ? null : `${time / 60} min`)],
  ["need", ({ needs }) => texts(needs)],
  ["caution", ({ cautions }) => texts(cautions)],
  ["certainty of readings", ({ decisionLevel }) => single(`${Number((100 * decisionLevel).toFixed(6))} %`)],
  [
    "limit",
    ({ limits }) =>
      limits.map(({ count, fullEffort, location }) => {
        const text = `${plural(count, "swing")}${fullEffort ? " at full effort" : ""}`;
        return { ...plain(text, String(fullEffort)), location };
      }),
  ],
  ["pattern looked for", ({ findings }) => texts(findings.map(({ name }) => name))],
  ["next step", ({ next }) => texts(next.map(({ text }) => text))],
];

/** The part without the word that its name says already. */
const without = (keyword: string) => (part: Part) =>
  part.text.startsWith(keyword) ? { ...part, text: part.text.slice(keyword.length) } : part;

const BLOCK_PARTS: readonly PartsOf<Block>[] = [
  ["kind", ({ kind }) => single(kind)],
  ["shots", ({ shots }) => single(shots.length === 0 ? null : shots.map(shotsInWords).join(", "))],
  ["time", ({ time }) => single(time === null ? null : `${time / 60} min`)],
  ["change", ({ changes }) => texts(changes.map(({ kind, text }) => `${kind}: ${text}`))],
  ["cue", ({ cues }) => texts(cues)],
  ["caution", ({ cautions }) => texts(cautions)],
  ["target", ({ targets }) => targets.map(partOf).map(without("target "))],
  ["requirement", ({ requirements }) => requirements.map(partOf).map(without("require "))],
  ["shots left out", ({ leaveOut }) => leaveOut.map(partOf).map(without("leave out shots where "))],
  ["goal", ({ success }) => success.map(partOf)],
];

function blockInWords({ name, kind, shots }: Block): string {
  return `"${name}" (${[kind, ...shots.map(shotsInWords)].join(", ")})`;
}
