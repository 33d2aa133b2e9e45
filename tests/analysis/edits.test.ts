/** After any edits the same is said as of the text that has come out, had it been there from the start. */
import fc from "fast-check";
import { type FileSystemProvider, URI } from "langium";
import { expect, test } from "vitest";
import { createCoreServices } from "../../language/core-module.ts";
import { check } from "../checks/checked-files.ts";

const texts = new Map<string, string>();

const fileSystem: Pick<FileSystemProvider, "readFile" | "readDirectory"> = {
  readFile: async (uri) => texts.get(uri.toString()) ?? "",
  readDirectory: async () => [],
};

const { shared } = createCoreServices({ fileSystemProvider: () => fileSystem as FileSystemProvider });
await shared.workspace.WorkspaceManager.initializeWorkspace([]);

const uriOf = (name: string) => URI.parse(`file:///examples/${name}`);

async function foundAfter(files: Readonly<Record<string, string>>): Promise<unknown> {
  for (const [name, text] of Object.entries(files)) texts.set(uriOf(name).toString(), text);
  const changed = Object.keys(files).map(uriOf);
  for (const uri of changed) await shared.workspace.LangiumDocuments.getOrCreateDocument(uri);
  await shared.workspace.DocumentBuilder.update(changed, []);
  await shared.workspace.DocumentBuilder.build(
    [...shared.workspace.LangiumDocuments.all].filter(({ uri }) => uri.scheme === "file"),
    { validation: true },
  );
  const document = shared.workspace.LangiumDocuments.getDocument(uriOf("example.drill"));
  return document?.diagnostics?.map(({ code, range, message }) => ({ code, range, message }));
}

const drills = fc.constantFrom("130 yd", "150 yd").map(
  (least) => `drill "Length" (longest: length = 160 yd) {
  10 shots
  require carry at least ${least}
  target carry at most longest
}
`,
);

const block = fc.constantFrom(
  `"Length" with longest = 140 yd {\n  }`,
  `"Length" {\n    target total at most 145 yd\n  }`,
  `"Length" {\n    cue "Easy"\n    success spread of carry at most 9 yd\n  }`,
  `"Length" {\n    success at least 80 % of shots on target at 90 % confidence\n  }`,
  `"Length" {\n    success average carry within 3 yd of 155 yd at 90 % confidence\n  }`,
  `"Gate" {\n    require club-path at least 2° out-to-in\n  }`,
  `"Length" {\n    target total at most 200 yd\n  }`,
  `"Gate" {\n    require club-path at most 2° out-to-in\n  }`,
  `"Gate" {\n    require club-path at least\n  }`,
  `"Gate" {\n    require clubpath at least 2° out-to-in\n  }`,
);

interface State {
  readonly drills: string;
  readonly window: string;
  readonly comment: string;
  readonly blocks: readonly string[];
}

const parts = {
  drills,
  window: fc.constantFrom("2° of 1° in-to-out", "4° of 1° in-to-out", "4° of 1° in-to-up"),
  comment: fc.constantFrom("", "// A line more.\n"),
};

const start = fc.record({ ...parts, blocks: fc.array(block, { minLength: 3, maxLength: 5 }) });

/** One thing becomes another. */
const edit: fc.Arbitrary<(before: State) => State> = fc.oneof(
  { weight: 3, arbitrary: parts.drills.map((drills) => (before: State) => ({ ...before, drills })) },
  { weight: 3, arbitrary: parts.window.map((window) => (before: State) => ({ ...before, window })) },
  { weight: 1, arbitrary: parts.comment.map((comment) => (before: State) => ({ ...before, comment })) },
  {
    weight: 3,
    arbitrary: fc.tuple(fc.nat(4), block).map(([at, one]) => (before: State) => ({
      ...before,
      blocks: before.blocks.map((old, index) => (index === at ? one : old)),
    })),
  },
);

const textOf = ({ window, comment, blocks }: State) => `use "./drills"

window "Path" is club-path within ${window}
${comment}
drill "Gate" {
  10 shots
  target inside "Path"
}

plan "Plan" {
${blocks.map((from, index) => `  block "B${index}" from ${from}`).join("\n")}
}
`;

test("nothing that was found out before is taken for true when it is no longer", async () => {
  let findings = 0;
  await fc.assert(
    fc.asyncProperty(start, fc.array(edit, { minLength: 3, maxLength: 8 }), async (first, edits) => {
      let state: State = first;
      for (const change of [(same: State) => same, ...edits]) {
        state = change(state);
        const text = textOf(state);
        const incremental = await foundAfter({ "drills.drill": state.drills, "example.drill": text });
        const fresh = await check(text, { "drills.drill": state.drills });
        expect(incremental).toEqual(fresh.map(({ code, range, message }) => ({ code, range, message })));
        findings += fresh.length;
      }
    }),
    { numRuns: 60, seed: 20261126 },
  );
  expect(findings).toBeGreaterThan(200);
});
