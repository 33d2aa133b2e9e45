/** Targets that every shot meets that counts, each beside a look-alike that asks for something. */
import { expectCases } from "../plans.ts";

const CODE = "target-could-be-left-out";

expectCases({
  "a target inside another": {
    wrong: `10 shots
      target start-direction within ±2°
      «target start-direction at most 3° right»`,
    code: CODE,
    says: ["line 5", "meets this line too"],
    right: `10 shots
      target start-direction within ±2°
      target start-direction at most 1° right`,
  },
  "of two targets that are one in other words the later one": {
    wrong: `10 shots
      target start-direction within ±2°
      «target start-direction between 2° left and 2° right»`,
    code: CODE,
    says: ["line 5", "meets this line too"],
    right: `10 shots
      target start-direction within ±2°
      target start-direction between 3° left and 1° right`,
  },
  "a target that a requirement brings with it": {
    wrong: `10 shots
      «target total at least 140 yd»
      target carry at most 170 yd
      require carry at least 145 yd`,
    code: CODE,
    says: ["line 7", "roll is total − carry"],
    right: `10 shots
      target total at least 150 yd
      require carry at least 145 yd`,
  },
});
