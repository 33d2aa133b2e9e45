/** What must work in a folder that nobody has vouched for. The parts run in this order, in one editor. */
import "./activation.ts";
import "./mistakes.ts";
import "./verdicts.ts";
import "./players.ts";
