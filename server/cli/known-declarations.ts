/** What the `.drill` files of the working folder declare that a proposal can refer to. */
import { URI } from "langium";
import { isPlan, isPlayer } from "../../language/generated/tree/ast.ts";
import { handOf } from "../../language/lowering/session.ts";
import { usePath } from "../../language/names/use-target.ts";
import type { ProposalOptions } from "../import/propose/propose.ts";
import { findFiles } from "../node/find-files.ts";
import { loadProject } from "../node/load-project.ts";
import { PathError } from "../node/path-error.ts";
import { UsageError } from "./command.ts";
import { didYouMean, thereAre } from "./parse-arguments.ts";

type Known = Required<Pick<ProposalOptions, "plan" | "player" | "players" | "hand" | "uses">>;

const NOTHING: Known = { plan: null, player: null, players: [], hand: null, uses: [] };

/**
 * The plan and the player of these names with the files to use for them, seen from the file at `output`. Nothing is looked
 * for where no name is given. @throws UsageError where there is none of a name
 */
export async function knownDeclarations(
  names: { readonly plan: string | undefined; readonly player: string | undefined },
  output: string,
  cwd: string,
): Promise<Known> {
  if (names.plan === undefined && names.player === undefined) return NOTHING;
  const declared = await declarationsIn(cwd);
  const uses = new Set<string>();
  const find = <T extends { name: string; file: URI }>(
    name: string | undefined,
    among: readonly T[],
    what: string,
    advice: (name: string, names: readonly string[]) => string,
  ) => {
    if (name === undefined) return undefined;
    const found = among.find((each) => each.name === name);
    if (found === undefined) {
      throw new UsageError(
        `No file in the working folder declares a ${what} ${JSON.stringify(name)}.${advice(
          name,
          among.map((each) => each.name),
        )}`,
      );
    }
    uses.add(usePath(URI.file(output), found.file));
    return found;
  };
  const plan = find(names.plan, declared.plans, "plan", didYouMean);
  const player = find(names.player, declared.players, "player", (_, codes) => thereAre(codes));
  return {
    plan: plan?.name ?? null,
    player: player?.name ?? null,
    players: player === undefined ? [] : [player.name],
    hand: player?.hand ?? null,
    uses: [...uses],
  };
}

async function declarationsIn(cwd: string) {
  const documents = (await loadProject(filesIn(cwd), cwd)).files.map(({ document }) => document);
  const all = documents.flatMap(({ uri, parseResult }) =>
    parseResult.value.declarations.map((declaration) => ({ file: uri, declaration })),
  );
  return {
    plans: all.flatMap(({ file, declaration }) =>
      isPlan(declaration) ? [{ name: declaration.name, file }] : [],
    ),
    players: all.flatMap(({ file, declaration }) =>
      isPlayer(declaration) ? [{ name: declaration.name, file, hand: handOf(declaration) }] : [],
    ),
  };
}

function filesIn(cwd: string): string[] {
  try {
    return findFiles(["."], cwd);
  } catch (error) {
    if (error instanceof PathError) return []; // there are none
    throw error;
  }
}
