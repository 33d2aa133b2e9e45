/** Windows that say nothing for a club of the block. */
import type { Condition, Criterion, Location } from "../../../shared/plan-model.ts";
import { listed } from "../../criteria/wording.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { quoted, sentence } from "../words.ts";
import { everyGoal } from "./goals.ts";

type Line = Pick<Criterion, "location"> & { readonly condition: Condition };

/** One remark for each line and window. Linear in the tests of the block and its clubs. */
export function windowsWithoutVariant({ block, isOwn }: BlockInPlan): Remark[] {
  const clubs = [...new Set(block.shots.map(({ club }) => club))].filter((club) => club !== null);
  const goals = everyGoal(block.success).flatMap((goal): Line[] =>
    "subject" in goal && goal.subject.kind === "meeting" ? [{ ...goal, ...goal.subject }] : [],
  );
  const lines: Line[] = [...block.targets, ...block.requirements, ...block.leaveOut, ...goals];
  return lines.flatMap(({ condition, location }) => {
    const clubsLeft = Map.groupBy(
      clubs.flatMap((club) => silentFor(club, condition).map((window) => ({ club, window }))),
      ({ window }) => window,
    );
    return [...clubsLeft].map(([window, left]) =>
      remark(
        window,
        left.map(({ club }) => club),
        location,
        isOwn(location),
      ),
    );
  });
}

/** The windows that a condition asks about and that say nothing for a club, whatever the level of the player. */
function silentFor(club: string, { anyOf }: Condition): string[] {
  return anyOf.flatMap(({ allOf }) =>
    allOf.flatMap((test) => {
      if (test.kind !== "window") return [];
      const fitting = test.variants.filter(({ clubs }) => clubs.length === 0 || clubs.includes(club));
      if (fitting.length === 0) return [test.window];
      return fitting.flatMap(({ condition }) => silentFor(club, condition));
    }),
  );
}

function remark(window: string, clubs: readonly string[], location: Location, isHere: boolean): Remark {
  const where = isHere ? "" : "in a line of the drill, ";
  const text = `${where}the window ${quoted(window)} says nothing for ${listed(clubs)}, so that no shot with ${clubs.length === 1 ? "it" : "them"} can be judged. Give the window a variant without clubs, or one for ${clubs.length === 1 ? "this club" : "these"}.`;
  return { message: sentence(text), location, related: [] };
}
