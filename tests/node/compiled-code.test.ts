/** What is kept of a script that ran, as the next process finds it. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, expect, test } from "vitest";

const COMPILED_CODE = fileURLToPath(new URL("../../server/node/compiled-code.ts", import.meta.url));

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "drillwright-compiled-"));
  writeFileSync(
    join(folder, "script.cjs"),
    `/*0123456789abcdef*/(function (exports, require, module, __filename, __dirname) {
     function called(name) { return name + ' of ' + require("node:path").basename(__dirname); }
     console.log(called("a script") === "a script of " + require("node:path").basename(__dirname), require.resolve("./beside.cjs") !== "");
     })`,
  );
  writeFileSync(join(folder, "beside.cjs"), "");
});
afterEach(() => rmSync(folder, { recursive: true }));

/** What a new process says that runs the script. */
function run(purpose = "check", env: Record<string, string> = {}): string {
  const start = `import { requireCompiled } from ${JSON.stringify(COMPILED_CODE)};
    requireCompiled(${JSON.stringify(join(folder, "script.cjs"))}, "${purpose}");`;
  const { stdout, stderr } = spawnSync(process.execPath, ["--input-type=module", "--eval", start], {
    encoding: "utf8",
    env: { ...process.env, NODE_COMPILE_CACHE: join(folder, "cache"), ...env },
  });
  return stdout + stderr;
}

/** The files that hold the script's code. */
function kept(): string[] {
  const names = readdirSync(join(folder, "cache"), { recursive: true, encoding: "utf8" });
  return names
    .filter((name) => /script(\.late)?\.cjs/.test(name))
    .sort()
    .map((name) => join(folder, "cache", name));
}

const SAID = "true true\n";

test("a script runs as `require` runs it, and its code is kept", () => {
  expect(run()).toBe(SAID);
  expect(kept()).toHaveLength(1);
});

test("code that was kept is used, and not written again", () => {
  run();
  const [file = ""] = kept();
  const { mtimeMs } = statSync(file);
  expect(run()).toBe(SAID);
  expect(kept()).toEqual([file]);
  expect(statSync(file).mtimeMs).toBe(mtimeMs);
});

test("what is loaded late is kept by itself", () => {
  const path = join(folder, "script.cjs");
  writeFileSync(
    join(folder, "script.late.cjs"),
    "/*aaaaaaaaaaaaaaaa*/(function (exports, require, module) { module.exports = () => console.log('late'); })",
  );
  writeFileSync(
    path,
    readFileSync(path, "utf8").replace("console.log(", 'require("./script.late.cjs")(); console.log('),
  );
  expect(run()).toBe(`late\n${SAID}`);
  expect(kept().map((file) => basename(file).split("-")[0])).toEqual(["script.cjs", "script.late.cjs"]);
  expect(run()).toBe(`late\n${SAID}`);
});

test("code is kept anew where a run used parts of the script that none before it did", () => {
  const path = join(folder, "script.cjs");
  writeFileSync(
    path,
    readFileSync(path, "utf8").replace(
      "console.log(",
      "exports.used = process.env.USED.split(' '); console.log(",
    ),
  );
  const isKeptAnew = (used: string) => {
    const before = kept().map((file) => statSync(file).mtimeMs);
    expect(run("check", { USED: used })).toBe(SAID);
    return kept().some((file, place) => statSync(file).mtimeMs !== before[place]);
  };
  run("check", { USED: "one two" });
  expect(isKeptAnew("two")).toBe(false);
  expect(isKeptAnew("two three")).toBe(true);
  expect(isKeptAnew("one three")).toBe(false);
});

test("each purpose keeps its own", () => {
  run("check");
  run("score");
  expect(kept()).toHaveLength(2);
});

test("code of another text of the script is not used", () => {
  run();
  const path = join(folder, "script.cjs");
  const text = readFileSync(path, "utf8");
  writeFileSync(
    path,
    text.replace("console.log(", "console.log(1,").replace("0123456789abcdef", "123456789abcdef0"),
  );
  expect(run()).toBe(`1 ${SAID}`);
  expect(kept()).toHaveLength(2);
});

test.each([
  ["cut off", (bytes: Buffer) => bytes.subarray(0, bytes.length / 2)],
  ["empty", () => Buffer.alloc(0)],
  ["cut off by a byte", (bytes: Buffer) => bytes.subarray(0, -1)],
  ["made of nothing", (bytes: Buffer) => bytes.fill(0)],
  ["without one of its sectors", (bytes: Buffer) => bytes.fill(0, 512, 1024)],
])("a file that is %s is not used, and written anew", (_, damage) => {
  run();
  const [file = ""] = kept();
  const damaged = damage(readFileSync(file));
  writeFileSync(file, damaged);
  expect(run()).toBe(SAID);
  expect(readFileSync(file).equals(damaged)).toBe(false);
});

test("nothing is kept where Node was told to keep nothing", () => {
  expect(run("check", { NODE_DISABLE_COMPILE_CACHE: "1" })).toBe(SAID);
  expect(readdirSync(folder)).not.toContain("cache");
});

test("a folder that cannot be written to does no harm", () => {
  writeFileSync(join(folder, "cache"), "a file");
  expect(run()).toBe(SAID);
});
