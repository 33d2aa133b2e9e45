/** The bundled command line as a process: streams, signals and exit codes. */
import { type ChildProcessWithoutNullStreams, execFileSync, spawn } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { beforeAll, expect, test } from "vitest";
import { type Answer, folderWith } from "./command-line.ts";
import { PLAN, POOR, practice } from "./practice.ts";

const PROGRAM = fileURLToPath(new URL("../../dist/cli/drillwright.cjs", import.meta.url));

beforeAll(() => {
  if (!existsSync(PROGRAM))
    throw new Error("There is no dist/cli/drillwright.cjs. Build it first: npm run build");
});

function start(
  folder: string,
  words: readonly string[],
  env: Record<string, string> = {},
): ChildProcessWithoutNullStreams {
  return spawn(process.execPath, [PROGRAM, ...words], {
    cwd: folder,
    env: { ...process.env, NO_COLOR: "", FORCE_COLOR: "", ...env },
  });
}

async function answerOf(
  child: ChildProcessWithoutNullStreams,
  input?: string,
): Promise<Omit<Answer, "code"> & { code: number | null }> {
  let stdout = "";
  let stderr = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    stdout += text;
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    stderr += text;
  });
  child.stdin.end(input);
  const code = await new Promise<number | null>((resolve) => child.on("close", resolve));
  return { code, stdout, stderr };
}

const run = (files: Parameters<typeof folderWith>[0], words: readonly string[], input?: string) =>
  answerOf(start(folderWith(files), words), input);

test("results on standard output, with the exit code of the command", async () => {
  const wrong = PLAN.replace("3 of 5", "6 of 5");
  expect(await run({ "a.drill": PLAN }, ["check"])).toEqual({
    code: 0,
    stdout: "1 file checked, nothing found.\n",
    stderr: "",
  });
  expect(await run({ "a.drill": wrong }, ["check"])).toMatchObject({ code: 3, stderr: "" });
  expect(await run(practice(POOR), ["score"])).toMatchObject({ code: 1, stderr: "" });
  expect(await run(practice(""), ["score"])).toMatchObject({ code: 4, stderr: "" });
  expect(await run({}, ["chekc"])).toMatchObject({ code: 2, stdout: "" });
});

test("a plan is piped in", async () => {
  const { code, stdout } = await run({}, ["check", "-"], PLAN.replace("3 of 5", "6 of 5"));
  expect([code, stdout.split("\n")[0]]).toEqual([3, "stdin.drill:14:16 error hits-must-not-exceed-shots"]);
  const { stdout: model } = await run({}, ["compile", "-"], PLAN);
  expect(JSON.parse(model).plans[0].name).toBe("Start line");
});

test("colours are kept out of pipes, and forced where they are wanted", async () => {
  const folder = folderWith({ "a.drill": PLAN });
  expect((await answerOf(start(folder, ["check"]))).stdout).not.toContain("\u001b");
  expect((await answerOf(start(folder, ["check"], { FORCE_COLOR: "1" }))).stdout).toContain("\u001b[1m");
});

/** Findings that fill more than the buffer of a pipe. */
const MANY = Object.fromEntries(
  Array.from({ length: 200 }, (_, index) => [`plan-${index}.drill`, PLAN.replace("3 of 5", "6 of 5")]),
);

test.skipIf(process.platform === "win32")("a reader that goes away early is no fault", () => {
  const command = `"${process.execPath}" "${PROGRAM}" check --format json; echo "answered $?" >&2`;
  // What is said on standard error, in front of the pipe, comes out behind it.
  const output = execFileSync("bash", ["-c", `{ { ${command}; } | head -c 1; } 2>&1`], {
    cwd: folderWith(MANY),
    encoding: "utf8",
  });
  expect(output).toBe("{answered 3\n");
});

test.runIf(process.platform === "linux")("a full disk is no fault of the program", () => {
  const command = `"${process.execPath}" "${PROGRAM}" check >/dev/full; echo "answered $?" >&2`;
  const output = execFileSync("bash", ["-c", `{ ${command}; } 2>&1`], {
    cwd: folderWith(MANY),
    encoding: "utf8",
  });
  expect(output).toBe(
    "drillwright: Standard output cannot be written: no space is left on the disk.\nanswered 2\n",
  );
});

test.skipIf(process.platform === "win32")(
  "a disk without room for the new text takes no old one away",
  () => {
    const long = `plan "A"{${" time 5 min // as long as it takes\n".repeat(100)}}`;
    const folder = folderWith({ "a.drill": long, "players.csv": "Player,Carry (m)\nAnna Berg,120\n" });
    const said = execFileSync(
      "bash",
      ["-c", `ulimit -f 1; "${process.execPath}" "${PROGRAM}" format 2>&1; echo $?`],
      {
        cwd: folder,
        encoding: "utf8",
      },
    );
    expect(said).toBe("drillwright: a.drill cannot be written: it is too large.\n2\n");
    expect(readFileSync(join(folder, "a.drill"), "utf8")).toBe(long);
    expect(readdirSync(folder)).toEqual(["a.drill", "players.csv"]);
  },
);

test("an interruption answers 130 and says nothing", async () => {
  const child = start(folderWith({}), ["check", "-"]);
  // More than a pipe holds: once it is gone, the command is at work, waiting for the rest.
  await new Promise<void>((resolve) => child.stdin.write(" ".repeat(1_000_000), () => resolve()));
  child.kill("SIGINT");
  const said: string[] = [];
  child.stderr.on("data", (chunk) => said.push(String(chunk)));
  expect(await new Promise<number | null>((resolve) => child.on("close", resolve))).toBe(130);
  expect(said).toEqual([]);
});

test("standard output that is large arrives whole", async () => {
  const { code, stdout } = await run(MANY, ["check", "--format", "json"]);
  expect(code).toBe(3);
  expect(JSON.parse(stdout).findings).toHaveLength(200);
});

test("lsp speaks the protocol over its streams", async () => {
  const child = start(folderWith({}), ["lsp", "--stdio", `--clientProcessId=${process.pid}`]);
  const send = (message: object) => {
    const text = JSON.stringify({ jsonrpc: "2.0", ...message });
    child.stdin.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`);
  };
  const params = { processId: process.pid, rootUri: null, capabilities: {}, workspaceFolders: null };
  const answer = new Promise<string>((resolve) => {
    let output = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      output += text;
      if (output.includes('"id":1')) resolve(output);
    });
  });
  send({ id: 1, method: "initialize", params });
  expect(await answer).toContain('"capabilities":{');
  const closed = new Promise<number | null>((resolve) => child.on("close", resolve));
  send({ id: 2, method: "shutdown" });
  send({ method: "exit" });
  expect(await closed).toBe(0);
});

test("a Node that is too old is told so, in one line", async () => {
  // Pretends before the program starts.
  const folder = folderWith({
    "old.cjs":
      'Object.defineProperty(process, "versions", { value: { ...process.versions, node: "20.9.0" } });',
  });
  const { code, stdout, stderr } = await answerOf(
    start(folder, ["--version"], { NODE_OPTIONS: "--require ./old.cjs" }),
  );
  expect([code, stdout]).toEqual([2, ""]);
  expect(stderr).toMatch(/^drillwright needs Node 22 or newer, and this is Node v\S+\.\n$/);
});
