/** Every shot that did not enter the scoring, by reason. */
import { plural } from "../../../shared/plural.ts";
import type { ScoreReport, SetAside } from "../../../shared/score-report.ts";
import { placeIn, rowsText } from "../places.ts";
import { type Entry, remark, type Section } from "../section.ts";

/** Null where every shot counted. */
export function setAsideSection({ setAside, plan }: ScoreReport, mostRows: number): Section | null {
  if (setAside.length === 0) return null;
  const groups = Map.groupBy(setAside, ({ block, reason }) => `${block ?? ""}\n${reason}`);
  return {
    title: `${plural(setAside.length, "shot")} set aside`,
    remark: null,
    mark: null,
    entries: [...groups.values()].flatMap((group) => {
      const [first] = group;
      return first === undefined ? [] : [groupEntry(first, group, plan.location.file, mostRows)];
    }),
  };
}

function groupEntry(
  { block, reason, location }: SetAside,
  group: readonly SetAside[],
  planFile: string,
  mostRows: number,
): Entry {
  const where = block === null ? "" : `${block}: `;
  const rows = group.map(({ row }) => row);
  return remark(`${where}${reason}`, location && placeIn(planFile, location), [
    { label: "rows", text: rowsText(rows, mostRows) },
  ]);
}
