/** Which sessions of a project are meant. */
import { isSession, isSessionPlan, type Session } from "../../language/generated/tree/ast.ts";
import type { Project, ProjectFile } from "../node/load-project.ts";
import { UsageError } from "./command.ts";
import { didYouMean, thereAre } from "./parse-arguments.ts";
import { errorsIn } from "./plan-errors.ts";

export interface ChosenSession {
  readonly session: Session;
  readonly file: ProjectFile;
}

export interface SessionChoice {
  /** Names as the files state them; undefined where all are meant. */
  readonly session: string | undefined;
  readonly plan: string | undefined;
}

/**
 * The sessions that the given files declare, from top to bottom, or those of them with these names. None where there are
 * none because a file has errors.
 * @throws UsageError where there are none for another reason.
 */
export function chooseSessions({ files }: Project, choice: SessionChoice): ChosenSession[] {
  const given = files.filter(({ isGiven }) => isGiven);
  const all = given.flatMap((file) =>
    file.document.parseResult.value.declarations.filter(isSession).map((session) => ({ session, file })),
  );
  const chosen = all.filter(
    ({ session }) =>
      (choice.session === undefined || session.name === choice.session) &&
      (choice.plan === undefined || planName(session) === choice.plan),
  );
  if (chosen.length === 0 && !given.some((file) => errorsIn(file).length > 0)) {
    throw new UsageError(whyNone(all, choice));
  }
  return chosen;
}

function whyNone(all: readonly ChosenSession[], choice: SessionChoice): string {
  if (all.length === 0) {
    return 'The files given declare no session. A session says what was practised and where the data is: session "Name" { plan "…"  player "…"  data "shots.csv" from "…" }.';
  }
  const sessions = all.map(({ session }) => session.name);
  if (choice.session !== undefined && !sessions.includes(choice.session)) {
    return `The files given declare no session "${choice.session}".${didYouMean(choice.session, sessions)}${thereAre(sessions)}`;
  }
  const plans = [
    ...new Set(all.map(({ session }) => planName(session)).filter((name) => name !== undefined)),
  ];
  if (choice.plan !== undefined && !plans.includes(choice.plan)) {
    return `No session of the files given practised a plan "${choice.plan}".${didYouMean(choice.plan, plans)}${thereAre(plans)}`;
  }
  return `No session has the name "${choice.session}" and practised the plan "${choice.plan}".`;
}

function planName(session: Session): string | undefined {
  return session.statements.find(isSessionPlan)?.plan?.$refText;
}
