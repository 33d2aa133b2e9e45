/** Shots that are aimed at and left out, each beside a look-alike in which some stay. */
import { expectCases } from "../plans.ts";

const CODE = "leave-out-must-spare-the-targets";

expectCases({
  "the good shots are left out": {
    wrong: `10 shots
      «leave out shots where smash-factor at least 1.2»
      target smash-factor at least 1.35`,
    code: CODE,
    says: ["leaves out every shot", "line 6"],
    right: `10 shots
      leave out shots where smash-factor below 1.2
      target smash-factor at least 1.35`,
  },
  "every shot is left out one way or the other": {
    wrong: `10 shots
      «leave out shots where attack-angle at least 0° down or attack-angle at least 0° up»
      target carry at least 100 yd`,
    code: CODE,
    says: ["This line leaves out every shot"],
    right: `10 shots
      leave out shots where attack-angle at least 12° down or attack-angle at least 8° up
      target carry at least 100 yd`,
  },
});
