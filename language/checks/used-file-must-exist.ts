import { UriUtils } from "langium";
import { nearest } from "../../shared/nearest.ts";
import { FILE_ENDING, usePath, useTarget } from "../names/use-target.ts";
import { defineCheck, type Fix } from "./check.ts";
import { cstOf, replace } from "./edits.ts";
import { quoted } from "./wording.ts";

/** How many files a message offers. */
const MOST_OFFERED = 3;

/** A `use` of a file that is not there. */
export const check = defineCheck({
  on: ["Use"],
  reason: "What a missing file would declare is not known here.",
  run(use, { document, names, report }) {
    const target = useTarget(use, document.uri);
    if (target === undefined) return;
    if (names.usedFiles(document).some((used) => used.use === use && used.document !== undefined)) return;
    const path = cstOf(use, "path");
    if (path === undefined) return;
    const files = [...names.files()].filter((file) => file !== document).map(({ uri }) => uri);
    const paths = files.map((uri) => usePath(document.uri, uri));
    const write = (text: string): Fix => ({
      title: `Use ${quoted(text)}`,
      edits: [replace(path.range, quoted(text))],
    });
    const stated = use.path.replace(new RegExp(`${FILE_ENDING}$`), "");
    const folder = `${stated.replace(/^(?!\.)/, "./").replace(/\/+$/, "")}/`;
    const inside = paths.filter((text) => text.startsWith(folder));
    if (inside.length > 0) {
      report({
        message: `${quoted(use.path)} is a folder. Name the file in it that is meant, such as ${quoted(inside[0] ?? "")}.`,
        node: use,
        property: "path",
        fixes: inside.slice(0, MOST_OFFERED).map(write),
      });
      return;
    }
    const name = `/${UriUtils.basename(target)}`;
    const sameName = files.filter((uri) => uri.path.endsWith(name));
    const meant = new Set([...sameName.map((uri) => usePath(document.uri, uri)), ...nearest(stated, paths)]);
    const [first] = meant;
    report({
      message: `There is no file ${quoted(`${stated}${FILE_ENDING}`)} among the plan files. ${first === undefined ? "Paths start from the folder of this file." : `Did you mean ${quoted(first)}?`}`,
      node: use,
      property: "path",
      fixes: [...meant].slice(0, MOST_OFFERED).map(write),
    });
  },
  files: {
    "library/standards.drill": `
metric pace is speed
`,
  },
  reporting: `
use «"./standards"»

source "Bay" {
  column "Carry" is carry in m
}`,
  fixed: `
use "./library/standards"

source "Bay" {
  column "Carry" is carry in m
}`,
  silent: `
use "./library/standards"

source "Bay" {
  column "Carry" is carry in m
  column "Pace" is pace in m/s
}`,
});
