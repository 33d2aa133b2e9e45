/** The extension in a real editor. The parts run in this order, in one editor. */
import "./activation.ts";
import "./mistakes.ts";
import "./library.ts";
import "./project-status.ts";
import "./verdicts.ts";
import "./players.ts";
import "./curricula.ts";
import "./report.ts";
import "./goal-tests.ts";
import "./newcomer.ts";
import "./dialogues.ts";
