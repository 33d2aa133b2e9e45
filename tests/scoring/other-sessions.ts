/** Other sessions of the project, for tests. */
import type { KnownSession } from "../../server/scoring/earlier/other-sessions.ts";
import type { Shot } from "../../shared/session-data.ts";
import { somewhere } from "../criteria/words.ts";
import { type BlockWords, data, input, plan, type Stated, table } from "./practice.ts";

export interface More {
  /** Whose session it was. */
  readonly player?: string;
  /** The plan that was practised, by name. */
  readonly plan?: string;
  /** Where that plan and that player are declared, by path: where those of the session are, unless stated otherwise. */
  readonly planFile?: string;
  readonly playerFile?: string;
  readonly blocks?: readonly BlockWords[];
  readonly shots?: readonly Shot[];
  readonly stated?: Stated;
}

/** A session of that name and day that was read: so many carries of 150 yd, unless stated otherwise. */
export function otherSession(
  name: string,
  date: string | null,
  swings: number,
  more: More = {},
): KnownSession {
  const shots = more.shots ?? table(`carry\n${"150\n".repeat(swings)}`).slice(0, swings);
  const practised = { ...plan(...(more.blocks ?? [{ shots: swings }])), name: more.plan ?? "Start line" };
  const player = more.player ?? "P-07";
  return {
    session: {
      name,
      date,
      file: somewhere.file,
      plan: { file: more.planFile ?? somewhere.file, name: practised.name },
      player: { file: more.playerFile ?? somewhere.file, name: player },
      read: async () => "is read already",
    },
    read: { input: input(practised, more.stated), data: data(shots) },
  };
}
