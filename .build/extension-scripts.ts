/** Bundles the scripts of the extension. */
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { type BuildOptions, build, type Plugin } from "esbuild";
import { thirdPartyNotices } from "./third-party-notices.ts";

/** The script that an editor loads first must be small: the client is another, loaded when it is needed. */
const clientApart: Plugin = {
  name: "client-apart",
  setup({ onResolve }) {
    onResolve({ filter: /language-client\/node\.ts$/ }, ({ kind }) =>
      kind === "dynamic-import" ? { path: "./client.cjs", external: true } : undefined,
    );
  },
};

const options = {
  bundle: true,
  minify: true,
  format: "cjs",
  // Editors hand their interface to what is required, not to what is imported.
  supported: { "dynamic-import": false },
  external: ["vscode"],
  metafile: true,
  legalComments: "none", // the notices say it in full
  logLevel: "warning",
} as const satisfies BuildOptions;

/** What the oldest editor runs that the manifest admits. */
const node = { ...options, platform: "node", target: "node22" } as const satisfies BuildOptions;

/** Editors in a browser load one script only. What it imports later is run later. */
const browser = { ...options, platform: "browser", target: "es2024" } as const satisfies BuildOptions;

/** Writes the scripts, and the licences of what went into them, to `stage`. */
export async function bundleScripts(root: string, stage: string): Promise<void> {
  const script = (options: BuildOptions, source: string, file: string) =>
    build({ ...options, absWorkingDir: root, entryPoints: [source], outfile: join(stage, file) });
  const bundles = await Promise.all([
    script({ ...node, plugins: [clientApart] }, "extension/extension.ts", "extension.cjs"),
    script(node, "extension/language-client/node.ts", "client.cjs"),
    script(browser, "extension/browser.ts", "extension.browser.js"),
  ]);
  const inputs = Object.assign({}, ...bundles.map(({ metafile }) => metafile?.inputs));
  await writeFile(join(stage, "third-party-notices.txt"), await thirdPartyNotices({ inputs }, root));
}
