/** Runs a bundled suite in the desktop editor, through the launcher its makers publish. */
import { existsSync } from "node:fs";
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { runTests } from "@vscode/test-electron";

/**
 * Resolves with what the editor printed, also when tests failed: the results file tells that better.
 * `executable` is a path, or `download` to let the launcher find the one it fetched before, or fetch one.
 */
export async function runInDesktop(options: {
  readonly executable: string;
  readonly extension: string;
  readonly suiteScript: string;
  readonly folder: string;
  /** An empty or missing folder for the editor's data. */
  readonly profile: string;
  readonly settings: { readonly [key: string]: unknown };
}): Promise<string> {
  if (options.executable !== "download" && !existsSync(options.executable))
    throw new Error(
      `VSCODE_EXECUTABLE names ${options.executable}, which does not exist. Correct it, or unset it.`,
    );
  const userData = join(options.profile, "user-data");
  await mkdir(join(userData, "User"), { recursive: true });
  await writeFile(join(userData, "User", "settings.json"), JSON.stringify(options.settings));
  const printed = new PassThrough();
  const chunks: string[] = [];
  printed.on("data", (chunk: Buffer) => chunks.push(chunk.toString()));
  try {
    await runTests({
      ...(options.executable === "download" ? {} : { vscodeExecutablePath: options.executable }),
      extensionDevelopmentPath: options.extension,
      extensionTestsPath: options.suiteScript,
      launchArgs: [
        options.folder,
        `--user-data-dir=${userData}`,
        `--extensions-dir=${join(options.profile, "extensions")}`,
        "--disable-telemetry",
      ],
      stdout: printed,
      stderr: printed,
    });
  } catch (error) {
    chunks.push(String(error));
  }
  return chunks.join("").slice(-4000);
}
