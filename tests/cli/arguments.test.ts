/** Words on the command line: commands, options, help, and what is said when they are wrong. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { COMMANDS } from "../../server/cli/command-table.ts";
import { EXIT_CODES } from "../../shared/exit-codes.ts";
import { drillwright } from "./command-line.ts";
import { PLAN } from "./practice.ts";

const FILES = { "a.drill": PLAN };

describe("wrong words answer 2 and say what would be right", () => {
  test.each([
    ["chekc", "There is no command chekc. Did you mean check?"],
    ["toString", "There is no command toString."],
    ["help scroe", "There is no command scroe. Did you mean score?"],
    ["check --fial-on error", "There is no option --fial-on. Did you mean --fail-on?"],
    ["check -x", "There is no option -x."],
    ["check --toString", "There is no option --toString."],
    ["check --format yaml", "--format takes text or json, not `yaml`."],
    ["check --format", "--format takes text or json, but nothing follows it."],
    ["check --fail-on=missed", "--fail-on takes error, warning or never, not `missed`."],
    ["check --help=yes", "--help takes no value, but found `yes`."],
    ["score --session --plan", "--session needs a value: --session=NAME."],
    ["score --session=", "--session needs a value: --session=NAME."],
    ["--format json check", "There is no option --format in front of the command."],
    ["compile", "compile needs FILE|-."],
    ["compile a.drill b.drill", "compile takes FILE|- and no more, but found `b.drill` as well."],
    ["lsp --stdio a.drill", "lsp takes options only, but found `a.drill`."],
    ["lsp", "start it as `drillwright lsp --stdio`"],
    ["schema plan-modle", "There is no schema plan-modle. Did you mean plan-model?"],
    ["check -", "`-` reads what is piped in, and nothing is."],
    [
      "check - --stdin-filename notes.txt",
      "notes.txt is no .drill file. Give --stdin-filename the path of one",
    ],
    ["format - a.drill", "`-` writes to standard output and files are rewritten"],
    ["card a.drill --plan Irons", 'a.drill declares no plan "Irons". There is "Start line".'],
    ["check b.drill", "There is no file or folder b.drill."],
    ["check a.drill/b.drill", "There is no file or folder a.drill/b.drill."],
    ["check data.csv", "There is no file or folder data.csv."],
    ["compile .", "compile takes one file, and . is a folder."],
  ])("%s", async (line, message) => {
    const { code, stdout, stderr } = await drillwright({ ...FILES, "c.drill": PLAN }, line.split(" "));
    expect(code).toBe(2);
    expect(stdout).toBe("");
    expect(stderr).toContain(`drillwright: ${message}`.replace("drillwright: start", "start"));
    expect(stderr).not.toMatch(/^\s+at /m);
  });

  test("a file that is no .drill file", async () => {
    const { code, stderr } = await drillwright({ "shots.csv": "a,b\n" }, ["score", "shots.csv"]);
    expect(code).toBe(2);
    expect(stderr).toContain("shots.csv is no .drill file. Give .drill files, or folders that hold some.");
  });

  test("a folder without .drill files", async () => {
    const { code, stderr } = await drillwright({ "plans/readme.txt": "" }, ["check", "plans"]);
    expect([code, stderr]).toEqual([2, "drillwright: There is no .drill file in plans.\n"]);
  });

  test("no words at all show what there is", async () => {
    const { code, stdout, stderr } = await drillwright(FILES, []);
    expect([code, stdout]).toEqual([2, ""]);
    for (const name of Object.keys(COMMANDS)) expect(stderr).toContain(`  ${name}`);
  });
});

describe("help", () => {
  test.each([["--help"], ["-h"], ["help"], ["--color never --help"]])(
    "%s shows commands and exit codes",
    async (line) => {
      const { code, stdout, stderr } = await drillwright(FILES, line.split(" "));
      expect([code, stderr]).toEqual([0, ""]);
      for (const [name, { summary }] of Object.entries(COMMANDS)) {
        expect(stdout).toMatch(new RegExp(`^  ${name} +${summary.slice(0, 20)}`, "m"));
      }
      for (const exit of Object.values(EXIT_CODES))
        expect(stdout).toMatch(new RegExp(`^ +${exit.code}  ${exit.meaning.slice(0, 20)}`, "m"));
    },
  );

  test.each(Object.keys(COMMANDS))(
    "of %s names its options and what they may be, and does nothing else",
    async (name) => {
      const spellings = [
        [name, "--help"],
        ["help", name],
        [name, "-h", "nothing.drill"],
      ];
      const [first, ...others] = await Promise.all(spellings.map((words) => drillwright(FILES, words)));
      expect(first).toMatchObject({ code: 0, stderr: "" });
      for (const other of others) expect(other).toEqual(first);
      const command = COMMANDS[name];
      for (const [option, { isHidden }] of Object.entries(command?.options ?? {})) {
        expect(first?.stdout.includes(`--${option}`)).toBe(isHidden !== true);
      }
      for (const [example] of command?.examples ?? [])
        expect(first?.stdout).toContain(`drillwright ${example}`);
    },
  );

  test("fits a terminal of 100 columns", async () => {
    for (const name of Object.keys(COMMANDS)) {
      const { stdout } = await drillwright(FILES, [name, "--help"]);
      for (const line of stdout.split("\n")) expect(line.length).toBeLessThanOrEqual(100);
    }
  });
});

test.each([["--version"], ["check --version"], ["--version check"]])(
  "%s shows the version of package.json",
  async (line) => {
    const manifest = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));
    const { code, stdout } = await drillwright(FILES, line.split(" "));
    expect([code, stdout]).toEqual([0, `drillwright ${manifest.version}\n`]);
  },
);

test("options may stand anywhere, and `--` ends them", async () => {
  const files = { "--format.drill": PLAN };
  const { code, stdout } = await drillwright(files, [
    "--color=never",
    "check",
    "--fail-on",
    "never",
    "--",
    "--format.drill",
  ]);
  expect([code, stdout]).toEqual([0, "1 file checked, nothing found.\n"]);
});

describe("colours, from the strongest say to the weakest", () => {
  const strong = "\u001b[1m";
  test.each([
    { words: "--color=always", env: { NO_COLOR: "1", TERM: "dumb" }, isTTY: false, colored: true },
    { words: "--color=never", env: { FORCE_COLOR: "1" }, isTTY: true, colored: false },
    { words: "", env: { FORCE_COLOR: "1", NO_COLOR: "1" }, isTTY: false, colored: true },
    { words: "", env: { FORCE_COLOR: "0" }, isTTY: true, colored: false },
    { words: "", env: { NO_COLOR: "1" }, isTTY: true, colored: false },
    { words: "", env: { NO_COLOR: "", FORCE_COLOR: "" }, isTTY: true, colored: true },
    { words: "", env: { TERM: "dumb" }, isTTY: true, colored: false },
    { words: "", env: { TERM: "xterm" }, isTTY: true, colored: true },
    { words: "--color=auto", env: {}, isTTY: false, colored: false },
  ])("$words $env on a terminal: $isTTY", async ({ words, env, isTTY, colored }) => {
    const { stdout } = await drillwright(FILES, ["check", ...words.split(" ").filter(Boolean)], {
      env: env as Record<string, string>,
      isTTY,
    });
    expect(stdout.includes(strong)).toBe(colored);
  });
});
