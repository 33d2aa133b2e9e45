/** Which sessions practised a plan, and which of them is shown on it. */
import { URI } from "langium";
import {
  type Declaration,
  isPlan,
  isSession,
  type Plan,
  type Session,
} from "../../language/generated/tree/ast.ts";
import type { Names } from "../../language/names/names.ts";
import { type Declared, keyOf } from "../../shared/protocol/message.ts";
import type { PlanSessions, PracticedSession } from "../../shared/protocol/sessions.ts";
import { dateOf, declared, latestFirst, planOf, playerOf, rangeOf } from "./declared.ts";

/** The session that is shown on a plan, and whether somebody picked it. */
export interface Shown {
  readonly session: Session | undefined;
  readonly picked: boolean;
}

export class Practice {
  private readonly names: Names;
  /** Picked sessions by plan; the latest is shown where none is picked. */
  private readonly picked = new Map<string, Declared>();

  constructor(names: Names) {
    this.names = names;
  }

  /** The plans a file is about: those it declares, and those whose sessions it declares. */
  plansOf(uri: string): readonly Plan[] {
    const declarations = this.declarations(uri);
    const practised = declarations.filter(isSession).map(planOf);
    return [...new Set([...declarations.filter(isPlan), ...practised])].filter((plan) => plan !== undefined);
  }

  /** The sessions that a file declares. */
  sessionsIn(uri: string): readonly Session[] {
    return this.declarations(uri).filter(isSession);
  }

  sessionNamed({ file, name }: Declared): Session | undefined {
    return this.sessionsIn(file).find((session) => session.name === name);
  }

  /** The sessions of the plans a file is about. Linear in the sessions of the workspace, for each plan. */
  sessionsOf(uri: string): readonly PlanSessions[] {
    return this.plansOf(uri).map((plan) => {
      const { session, picked } = this.shown(plan);
      return {
        plan: declared(plan),
        range: rangeOf(plan),
        sessions: this.practised(plan).map(practisedSession),
        shown: session === undefined ? null : declared(session),
        picked,
      };
    });
  }

  /** Shows a plan with this session from now on, or with its latest again. */
  pick(plan: Declared, session: Declared | null): void {
    if (session === null) this.picked.delete(keyOf(plan));
    else this.picked.set(keyOf(plan), session);
  }

  shown(plan: Plan): Shown {
    const sessions = this.practised(plan);
    const choice = this.picked.get(keyOf(declared(plan)));
    const picked = sessions.find(
      (session) => choice !== undefined && keyOf(declared(session)) === keyOf(choice),
    );
    return { session: picked ?? sessions[0], picked: picked !== undefined };
  }

  /** Latest first. Linear in the sessions of the workspace. */
  private practised(plan: Plan): Session[] {
    return latestFirst(this.names.sessions().filter((session) => planOf(session) === plan));
  }

  private declarations(uri: string): readonly Declaration[] {
    return this.names.fileAt(URI.parse(uri))?.parseResult.value.declarations ?? [];
  }
}

function practisedSession(session: Session): PracticedSession {
  return {
    ...declared(session),
    range: rangeOf(session),
    date: dateOf(session) ?? null,
    player: playerOf(session)?.$refText ?? null,
  };
}
