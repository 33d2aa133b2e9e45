import { EXIT_CODES } from "../../../shared/exit-codes.ts";
import { defineCommand, UsageError } from "../command.ts";

const KEY_FILE = "player-key.csv";

export const importTables = defineCommand({
  summary: "Propose a source and sessions for tables of shots.",
  operands: { usage: "FILE ...", least: 1, most: Infinity },
  description: [
    "Looks at tables (delimited text in any of its ways, JSON, packed with gzip or not) and writes a proposal: a source that says what each column is, and a session for each player and day in them. The tables are not changed.",
    "How sure each column is goes to standard error, with the reasons. What the table does not tell, above all which way a number is positive, is not guessed: the proposal asks, and the column is not read until the question is answered. Lines to settle are marked so.",
    "What the .drill files of the working folder declare is used: a source that reads all its columns in a table written the same way, the players that a table names, and the plan whose blocks it names.",
    "--code-players writes a copy of each table in which players have codes, and proposes for the copy. What is no reading in a column that nothing is known of is left out of it, since names may stand there. Which code is whose is kept in a key file in the working folder, and git is told to pass it over.",
    "Exits with 4 where a table cannot be read, or nothing can be proposed for it.",
  ],
  options: {
    output: {
      kind: "text",
      placeholder: "FILE",
      meaning: "Write the proposal to this .drill file instead of standard output.",
    },
    force: { kind: "flag", meaning: "Overwrite what is there already, but never a table." },
    plan: {
      kind: "text",
      placeholder: "NAME",
      meaning: "The plan that was practised: it is looked for in the working folder.",
    },
    player: { kind: "text", placeholder: "NAME", meaning: "Who practised, where the tables do not tell." },
    "code-players": {
      kind: "flag",
      meaning: "Put codes in place of players' names, in a copy of each table.",
    },
    key: {
      kind: "text",
      placeholder: "FILE",
      default: KEY_FILE,
      meaning: "Where the key to the codes is kept.",
    },
  },
  examples: [
    ["import data/monday.csv", "read the proposal first"],
    [
      "import data/monday.csv --plan Irons --player P-07 --output sessions/monday.drill",
      "a session to settle",
    ],
    ["import season.csv.gz --code-players --output sessions/season.drill", "a team's export, without names"],
  ],
  async run({ operands, options, errorPalette }, io) {
    if (options.force && options.output === undefined && !options["code-players"]) {
      throw new UsageError("--force is about files that are written: give --output, too.");
    }
    if (options.key !== KEY_FILE && !options["code-players"]) {
      throw new UsageError("--key is about codes for players: give --code-players, too.");
    }
    const { importInto } = await import("../import-tables.ts");
    const { proposal, notes } = await importInto(
      operands,
      { ...options, codePlayers: options["code-players"] },
      io,
    );
    const { proposalReport } = await import("../proposal-report.ts");
    io.stderr.write(proposalReport(proposal, notes, errorPalette));
    if (options.output === undefined) io.stdout.write(proposal.text);
    return proposal.failed.length > 0 ? EXIT_CODES.dataUnreadable.code : EXIT_CODES.ok.code;
  },
});
