/**
 * One open file among a thousand that are not, which share windows and drills through `use`: beside the same file
 * alone, beside a workspace in which a shared file is missing, and beside the other servers. It prints and decides nothing.
 */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { printFigure, printRatio } from "./figures.ts";
import { keystrokes, start } from "./language-server/client.ts";
import { type Contender, contendersIn } from "./language-server/contenders.ts";
import { DRILLS_FILES, drillsText, jsonText, linkedPlanText, WINDOWS_TEXT } from "./language-server/texts.ts";

const FILES = 1_000;
const STARTS = 3;
const OPENED = 500;

const folder = mkdtempSync(join(tmpdir(), "drillwright-bench-"));
const { ours, bare, json } = await contendersIn(folder);

interface Workspace {
  readonly name: string;
  readonly path: string;
  /** The file that is opened. */
  readonly file: string;
  readonly text: string;
  readonly files: number;
}

/** @param missing whether the file of windows, which every plan uses, is not there. */
function plans(name: string, count: number, missing = false): Workspace {
  const path = join(folder, name.replaceAll(/\W+/g, "-")); // editors and Node encode a comma differently
  const file = (number: number) => join(path, "plans", `plan-${number}.drill`);
  mkdirSync(join(path, "plans"), { recursive: true });
  mkdirSync(join(path, "shared"), { recursive: true });
  if (!missing) writeFileSync(join(path, "shared/windows.drill"), WINDOWS_TEXT);
  for (let number = 0; number < DRILLS_FILES; number++) {
    writeFileSync(join(path, `shared/drills-${number}.drill`), drillsText(number));
  }
  for (let number = OPENED; number < OPENED + count; number++) {
    writeFileSync(file(number), linkedPlanText(number));
  }
  const files = count + DRILLS_FILES + (missing ? 0 : 1);
  return { name, path, file: file(OPENED), text: linkedPlanText(OPENED), files };
}

function objects(count: number): Workspace {
  const path = join(folder, "json");
  mkdirSync(path);
  for (let number = 0; number < count; number++) {
    writeFileSync(join(path, `plan-${number}.json`), jsonText(60));
  }
  return { name: `${count} files`, path, file: join(path, "plan-0.json"), text: jsonText(60), files: count };
}

interface Figures {
  readonly first: number[];
  readonly all: number[];
  readonly keys: number[];
  readonly memory: number[];
}

async function measure(contender: Contender, workspace: Workspace): Promise<Figures> {
  const figures: Figures = { first: [], all: [], keys: [], memory: [] };
  for (let round = 0; round < STARTS; round++) {
    const session = await start(contender, workspace.file, workspace.text, workspace.path);
    figures.first.push(session.time);
    if (contender !== json) figures.all.push(await session.allPublished(workspace.files));
    if (round === 0) figures.keys.push(...(await keystrokes(session)));
    figures.memory.push(session.peakMemory());
    await session.stop();
  }
  const { name } = contender;
  printFigure(`opened file's first diagnostics, ${workspace.name}, ${name}`, figures.first);
  if (figures.all.length > 0) printFigure(`all diagnostics, ${workspace.name}, ${name}`, figures.all);
  printFigure(`keystroke, ${workspace.name}, ${name}`, figures.keys);
  printFigure(`peak memory, ${workspace.name}, ${name}`, figures.memory, "MB");
  return figures;
}

const alone = plans("one file", 1);
const many = plans("1,000 files", FILES);
const broken = plans("1,000 files, a shared one missing", FILES, true);

const oursAlone = await measure(ours, alone);
const oursMany = await measure(ours, many);
const oursBroken = await measure(ours, broken);
const bareMany = await measure(bare, many);
await measure(bare, broken);
const jsonMany = await measure(json, objects(FILES));

printRatio("keystroke beside 1,000 files, against alone", oursMany.keys, oursAlone.keys, 1.5);
printRatio("keystroke, broken workspace against sound", oursBroken.keys, oursMany.keys, 2);
printRatio("keystroke beside 1,000 files, against JSON server", oursMany.keys, jsonMany.keys);
printRatio("keystroke beside 1,000 files, against bare Langium", oursMany.keys, bareMany.keys);
printRatio("opened file's first, against bare Langium", oursMany.first, bareMany.first, 0.4);
printRatio("opened file's first, against JSON server", oursMany.first, jsonMany.first);
printRatio("whole workspace known, against bare Langium", oursMany.all, bareMany.all, 0.75);

rmSync(folder, { recursive: true, force: true });
process.exit(0); // the pipes of the servers that were stopped would keep the process alive
