/**
 * After any edits the same is said as of the text that has come out, had it been there from the start; also of a file
 * beside others in which the same words stand, and mean something else.
 */
import fc from "fast-check";
import { type FileSystemProvider, type LangiumDocument, URI } from "langium";
import { expect, test } from "vitest";
import { createCoreServices } from "../../language/core-module.ts";
import { MAIN, withChecked } from "../checks/checked-files.ts";

const texts = new Map<string, string>();

const fileSystem: Pick<FileSystemProvider, "readFile" | "readDirectory"> = {
  readFile: async (uri) => texts.get(uri.toString()) ?? "",
  readDirectory: async () => [],
};

const { shared } = createCoreServices({ fileSystemProvider: () => fileSystem as FileSystemProvider });
await shared.workspace.WorkspaceManager.initializeWorkspace([]);

const uriOf = (name: string) => URI.parse(`file:///examples/${name}`);

type Files = Readonly<Record<string, string>>;

/** With all places that it names. */
const saidOf = (document: LangiumDocument | undefined) =>
  (document?.diagnostics ?? []).map(({ code, range, message, relatedInformation }) => {
    return { code, range, message, relatedInformation };
  });

type Said = ReturnType<typeof saidOf>;

/** What is found in each of the plans when the files have become these. */
async function foundAfter(files: Files): Promise<Said[]> {
  const changed = Object.entries(files).filter(([name, text]) => texts.get(uriOf(name).toString()) !== text);
  for (const [name, text] of changed) texts.set(uriOf(name).toString(), text);
  const uris = changed.map(([name]) => uriOf(name));
  for (const uri of uris) await shared.workspace.LangiumDocuments.getOrCreateDocument(uri);
  await shared.workspace.DocumentBuilder.update(uris, []);
  await shared.workspace.DocumentBuilder.build(
    [...shared.workspace.LangiumDocuments.all].filter(({ uri }) => uri.scheme === "file"),
    { validation: true },
  );
  return PLANS.map((name) => saidOf(shared.workspace.LangiumDocuments.getDocument(uriOf(name))));
}

/** The same, of files that nobody has looked at before. */
function foundIn({ [MAIN]: text = "", ...others }: Files): Promise<Said[]> {
  return withChecked(text, others, (main, byName) =>
    PLANS.map((name) => saidOf((name === MAIN ? main : byName.get(name))?.document)),
  );
}

/** Plans, each beside drills of its own. */
const PLANS = [MAIN, "other/example.drill"] as const;
const DRILLS = ["drills.drill", "other/drills.drill"] as const;

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
  `"Gate" {\n    success spread of carry at most 3 yd\n  }`,
  `"Length" {\n    success at least 80 % of shots on target at 90 % confidence\n  }`,
  `"Length" {\n    success average carry within 3 yd of 155 yd at 90 % confidence\n  }`,
  `"Gate" {\n    require club-path at least 2° out-to-in\n  }`,
  `"Length" {\n    target total at most 200 yd\n  }`,
  `"Gate" {\n    require club-path at most 2° out-to-in\n  }`,
  `"Gate" {\n    require club-path at least\n  }`,
  `"Gate" {\n    require clubpath at least 2° out-to-in\n  }`,
  `"Gate" {\n    success carry gains at least 4 yd against the baseline at 90 % confidence\n  }`,
  `"Gate" baseline {\n    9 shots\n  }`,
  `"Gate" baseline {\n    90 shots\n  }`,
);

interface State {
  readonly drills: string;
  readonly window: string;
  readonly comment: string;
  readonly clubs: string;
  readonly blocks: readonly string[];
}

const parts = {
  drills,
  window: fc.constantFrom("2° of 1° in-to-out", "4° of 1° in-to-out", "4° of 1° in-to-up"),
  comment: fc.constantFrom("", "// A line more.\n"),
  clubs: fc.constantFrom("", "  for 7-iron\n", "  for driver\n"),
};

const start = fc.record({ ...parts, blocks: fc.array(block, { minLength: 3, maxLength: 5 }) });

/** One thing becomes another. */
const edit: fc.Arbitrary<(before: State) => State> = fc.oneof(
  { weight: 3, arbitrary: parts.drills.map((drills) => (before: State) => ({ ...before, drills })) },
  { weight: 3, arbitrary: parts.window.map((window) => (before: State) => ({ ...before, window })) },
  { weight: 1, arbitrary: parts.comment.map((comment) => (before: State) => ({ ...before, comment })) },
  { weight: 1, arbitrary: parts.clubs.map((clubs) => (before: State) => ({ ...before, clubs })) },
  {
    weight: 3,
    arbitrary: fc.tuple(fc.nat(4), block).map(([at, one]) => (before: State) => ({
      ...before,
      blocks: before.blocks.map((old, index) => (index === at ? one : old)),
    })),
  },
);

const textOf = ({ window, comment, clubs, blocks }: State) => `use "./drills"

window "Path" {
  is club-path within ${window}
  for driver is club-path at least 5° in-to-out
}
${comment}
drill "Gate" {
  10 shots
  target inside "Path"
}

plan "Plan" {
${clubs}${blocks.map((from, index) => `  block "B${index}" from ${from}`).join("\n")}
}
`;

test("nothing that was found out before is taken for true when it is no longer", async () => {
  let findings = 0;
  const edits = fc.array(fc.tuple(fc.nat(1), edit), { minLength: 3, maxLength: 8 });
  await fc.assert(
    fc.asyncProperty(fc.tuple(start, start), edits, async (first, changes) => {
      const states: State[] = [...first];
      for (const [at, change] of [[0, (same: State) => same] as const, ...changes]) {
        states[at] = change(states[at] as State);
        const files = Object.fromEntries(
          states.flatMap((state, index) => [
            [DRILLS[index], state.drills],
            [PLANS[index], textOf(state)],
          ]),
        );
        const fresh = await foundIn(files);
        expect(await foundAfter(files)).toEqual(fresh);
        findings += fresh.flat().length;
      }
    }),
    { numRuns: 30, seed: 20261126 },
  );
  expect(findings).toBeGreaterThan(400);
});
