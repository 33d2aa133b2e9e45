/** Where the players of a curriculum stand, as the files of the workspace are now. */
import { URI } from "langium";
import { isCurriculum, isCurriculumStep, type Plan } from "../../language/generated/tree/ast.ts";
import type { Lowering } from "../../language/lowering/document.ts";
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import type { Names } from "../../language/names/names.ts";
import type { CurriculumPlayers, PlayerAtStep } from "../../shared/protocol/curriculum-players.ts";
import { type Declared, keyOf } from "../../shared/protocol/message.ts";
import type { DeclaredAt } from "../../shared/protocol/project.ts";
import type { Outcome, Practised } from "../scoring/curriculum-standing.ts";
import { byName, dateOf, declared, declaredAt, latestFirst, planOf, playerOf } from "./declared.ts";
import { type ScoredSession, unreadData } from "./scorer.ts";

/** Scores a session: a sentence where it cannot be scored, null where it is no longer there. */
export type Attempt = (session: Declared) => Promise<ScoredSession | string | null>;

const MISTAKES: CurriculumPlayers = {
  steps: [],
  problem: "Where players stand is known when the mistakes of the curriculum's file are mended.",
};

/**
 * @param today year-month-day.
 * @returns null where there is no such curriculum. Cost: that of scoring every session of its plans, one after the other.
 */
export async function curriculumPlayersOf(
  { file, name }: Declared,
  today: string,
  names: Names,
  lowering: Lowering,
  attempt: Attempt,
): Promise<CurriculumPlayers | null> {
  const document = names.fileAt(URI.parse(file));
  const declarations = document?.parseResult.value.declarations ?? [];
  const curriculum = declarations.filter(isCurriculum).find((each) => each.name === name);
  if (curriculum === undefined) return null;
  try {
    // Trees may be replaced while sessions are scored: all that is needed of them is taken before.
    const model = lowering.curriculum(curriculum);
    const plans = curriculum.statements.filter(isCurriculumStep).flatMap(({ plan }) => plan?.ref ?? []);
    const steps = plans.map(declaredAt);
    const taken = sessionsTaken(new Set(plans), names);

    const practised: Practised<string>[] = [];
    for (const { session, player, plan, date } of taken) {
      const outcome = outcomeOf(await attempt(session));
      if (outcome !== undefined) practised.push({ player: keyOf(player), plan: plan.name, date, outcome });
    }
    const { standingsIn } = await import("../scoring/curriculum-standing.ts");
    const standings = standingsIn(model, practised, today);

    const players = byName(new Map(taken.map(({ player }) => [keyOf(player), player])).values());
    return {
      steps: steps.map((plan, index) => ({
        plan,
        players: players.flatMap((player): PlayerAtStep[] => {
          const standing = standings[index]?.get(keyOf(player));
          const latest = taken.find(
            (each) => keyOf(each.player) === keyOf(player) && keyOf(each.plan) === keyOf(plan),
          );
          return standing === undefined ? [] : [{ player, standing, session: latest?.session ?? null }];
        }),
      })),
      problem: null,
    };
  } catch (error) {
    if (error instanceof IncompleteError) return MISTAKES;
    throw error;
  }
}

interface Taken {
  readonly session: DeclaredAt;
  readonly player: Declared;
  readonly plan: Declared;
  readonly date: string | null;
}

/** The sessions of these plans whose player is known, latest first. */
function sessionsTaken(plans: ReadonlySet<Plan>, names: Names): Taken[] {
  return latestFirst(names.sessions()).flatMap((session) => {
    const plan = planOf(session);
    const player = playerOf(session)?.ref;
    if (plan === undefined || player === undefined || !plans.has(plan)) return [];
    return [
      {
        session: declaredAt(session),
        player: declared(player),
        plan: declared(plan),
        date: dateOf(session) ?? null,
      },
    ];
  });
}

/** Undefined for a session that is no longer there, null for one that could not be scored. */
function outcomeOf(attempt: ScoredSession | string | null): Outcome | null | undefined {
  if (attempt === null) return undefined;
  if (typeof attempt === "string" || unreadData(attempt.report) !== undefined) return null;
  const { verdict, blocks } = attempt.report;
  return { verdict, blocks };
}
