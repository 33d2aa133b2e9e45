/** What the command line answers to the program that started it. This is the only list. */

export const EXIT_CODES = {
  ok: { code: 0, meaning: "All is well: no findings at the chosen level, no goal missed." },
  missed: { code: 1, meaning: "Goals were missed, or there are findings at the level that --fail-on chose." },
  usage: {
    code: 2,
    meaning:
      "The command was given wrongly: an unknown option, a path that does not exist, a folder for a table.",
  },
  planErrors: { code: 3, meaning: "A plan or session file has errors, or cannot be read." },
  dataUnreadable: {
    code: 4,
    meaning: "The data of a session, or a table that was given, could not be read.",
  },
  fault: { code: 70, meaning: "The tool itself failed. That is our fault; please report it." },
  interrupted: { code: 130, meaning: "The command was interrupted." },
} as const satisfies Record<string, { readonly code: number; readonly meaning: string }>;

export type ExitCode = (typeof EXIT_CODES)[keyof typeof EXIT_CODES]["code"];
