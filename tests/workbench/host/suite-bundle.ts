/** Bundles a suite to the one script that an extension host loads, and leads its stack traces back to the sources. */
import { readFile } from "node:fs/promises";
import { SourceMap, type SourceMapPayload } from "node:module";
import { dirname, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { SuiteFacts } from "./suite-results.ts";

export type SuiteBundle = {
  readonly script: string;
  /** Rewrites positions in the script as positions in the sources, relative to the working folder. */
  readonly sourcePositions: (stack: string) => string;
};

const here = dirname(fileURLToPath(import.meta.url));

export async function bundleSuite(options: {
  /** Absolute path of the suite's source. */
  readonly suite: string;
  readonly script: string;
  readonly facts: SuiteFacts;
  /** Where the suite writes its results, as the extension host addresses it. */
  readonly resultsUri: string;
}): Promise<SuiteBundle> {
  const inBrowser = options.facts.host === "browser";
  await build({
    stdin: {
      contents: `import ${JSON.stringify(options.suite)};\nexport { run } from "./suite-entry.ts";\n`,
      resolveDir: here,
      sourcefile: "suite-start.ts",
      loader: "ts",
    },
    outfile: options.script,
    bundle: true,
    format: "cjs",
    platform: inBrowser ? "browser" : "node",
    target: "es2022",
    external: ["vscode"],
    ...(inBrowser ? { alias: { "node:assert/strict": resolve(here, "browser-assert.ts") } } : {}),
    define: { SUITE_FACTS: JSON.stringify(options.facts), RESULTS_URI: JSON.stringify(options.resultsUri) },
    sourcemap: "external",
    logLevel: "silent",
  });
  const map = new SourceMap(JSON.parse(await readFile(`${options.script}.map`, "utf8")) as SourceMapPayload);
  // A web worker loads the script as a function body, which puts a head of two lines before it.
  const head = inBrowser ? 2 : 0;
  const position = /[^\s()]*\bsuite\.cjs(?:#[\w-]+)?:(\d+):(\d+)/g;
  return {
    script: options.script,
    sourcePositions: (stack) =>
      stack.replace(position, (written, line: string, column: string) => {
        const origin = map.findOrigin(Number(line) - head, Number(column));
        if (!("fileName" in origin) || !origin.fileName) return written;
        const source = relative(process.cwd(), resolve(dirname(options.script), origin.fileName));
        return `${source}:${origin.lineNumber}:${origin.columnNumber}`;
      }),
  };
}
