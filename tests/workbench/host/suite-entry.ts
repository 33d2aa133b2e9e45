/** What the editor calls: `run` of the bundled suite. Results go to a file that the other side watches. */
import { Uri, workspace } from "vscode";
import { runTests } from "./suite-runner.ts";

declare const RESULTS_URI: string;

export async function run(): Promise<void> {
  const file = Uri.parse(RESULTS_URI);
  const tests = await runTests(async (results) => {
    await workspace.fs.writeFile(file, new TextEncoder().encode(JSON.stringify(results)));
  });
  const failed = tests.filter((each) => each.outcome === "failed").length;
  if (failed > 0) throw new Error(`${failed} of ${tests.length} tests failed`);
}
