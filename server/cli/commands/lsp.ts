import { EXIT_CODES } from "../../../shared/exit-codes.ts";
import { defineCommand, UsageError } from "../command.ts";

export const lsp = defineCommand({
  summary: "Serve editors by the Language Server Protocol.",
  operands: { usage: "", least: 0, most: 0 },
  description: [
    "Started by an editor, which speaks to it over standard input and output until it says goodbye. Any editor with a client for the protocol will do: let it start `drillwright lsp --stdio` for files that end in .drill.",
  ],
  options: {
    stdio: { kind: "flag", meaning: "Speak over standard input and output." },
    clientProcessId: {
      kind: "text",
      placeholder: "PID",
      meaning: "The editor's process: the server ends with it.",
      isHidden: true,
    },
  },
  examples: [["lsp --stdio", "what an editor starts"]],
  async run({ options }) {
    if (!options.stdio) {
      throw new UsageError(
        "lsp speaks over standard input and output only: start it as `drillwright lsp --stdio`.",
      );
    }
    await import("../../lsp/launch.ts"); // starts the server, which keeps the process alive
    return EXIT_CODES.ok.code;
  },
});
