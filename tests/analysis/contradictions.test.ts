/** What a block asks for that cannot be, each beside a look-alike that can. */
import { describe, test } from "vitest";
import { type Case, expectReported, expectSilence } from "./plans.ts";

const TARGETS = "targets-must-hold-together";
const LEAVE_OUT = "leave-out-must-spare-the-targets";
const GOAL = "goal-must-be-possible";
const GOALS = "goals-must-hold-together";
const IDLE = "goal-should-be-able-to-miss";
const NEEDLESS = "target-could-be-left-out";

const CASES: Readonly<Record<string, Case>> = {
  "face and path leave no square face to the path": {
    wrong: `12 shots
      target face-angle within ±1°
      require club-path between 4° in-to-out and 6° in-to-out
      «target face-to-path within ±2°»`,
    code: TARGETS,
    says: [
      "Line 5",
      "line 6",
      "face-to-path 3° to 7° closed",
      "face-to-path is face-angle − club-path",
      "within ±2°",
    ],
    right: `12 shots
      target face-angle within ±1°
      require club-path between 4° in-to-out and 6° in-to-out
      target face-to-path between 4° closed and 6° closed`,
  },
  "the chain is followed backwards": {
    wrong: `12 shots
      target face-to-path at least 4° open
      target club-path at least 1° in-to-out
      «require face-angle at most 3° open»`,
    code: TARGETS,
    says: ["face-angle at least 5° open", "at most 3° open"],
    right: `12 shots
      target face-to-path at least 4° open
      target club-path at least 1° out-to-in
      require face-angle at most 3° open`,
  },
  "no average is shorter than the worst shot": {
    wrong: `20 shots
      success {
        worst carry at least 150 yd
        «average carry at most 145 yd»
      }`,
    code: GOALS,
    says: ["line 6 (`worst carry at least 150 yd`) needs 20 with carry at least 150 yd", "line 7"],
    right: `20 shots
      success {
        worst carry at least 140 yd
        average carry at most 145 yd
      }`,
  },
  "no shot is longer than the best one": {
    wrong: `20 shots
      success {
        best carry at most 150 yd
        «at least 1 of 20 shots with carry at least 160 yd»
      }`,
    code: GOALS,
    says: ["needs 20 with carry at most 150 yd"],
    right: `20 shots
      success {
        best carry at least 150 yd
        at least 1 of 20 shots with carry at least 160 yd
      }`,
  },
  "the worst of readings with two sides is the farthest from zero": {
    wrong: `20 shots
      success {
        worst offline within ±10 yd
        «average offline at least 12 yd left»
      }`,
    code: GOALS,
    says: ["needs 20 with offline 10 yd left to 10 yd right"],
    right: `20 shots
      success {
        best offline within ±10 yd
        average offline at least 12 yd left
      }`,
  },
  "hits and bad shots, of which nothing else is said": {
    wrong: `10 shots
      target offline within ±8 yd
      success {
        at least 8 of 10 shots on target
        «at least 4 of 10 shots with offline at least 10 yd right»
      }`,
    code: GOALS,
    says: ["needs 8 on target", "needs 4 with offline at least 10 yd right"],
    right: `10 shots
      target offline within ±8 yd
      success {
        at least 6 of 10 shots on target
        at most 4 of 10 shots with offline at least 10 yd right
      }`,
  },
  "a spread that is wider than what is required": {
    wrong: `20 shots
      require carry between 145 yd and 150 yd
      require offline within ±15 yd
      success {
        «spread of carry at most 8 yd»
        «middle 80 % of offline spans at most 30 yd»
      }`,
    code: IDLE,
    says: [
      "cannot be missed",
      /leaves (carry 145 yd to 150 yd|offline 15 yd left to 15 yd right), and shots so close together never scatter more/,
    ],
    right: `20 shots
      require carry between 145 yd and 150 yd
      require offline within ±15 yd
      success {
        spread of carry at most 3 yd
        middle 80 % of offline spans at most 25 yd
        spread of curve at most 8 yd
      }`,
  },
  "a spread over clubs": {
    wrong: `window "Gap" {
  for 7-iron is carry between 148 yd and 152 yd
  for 9-iron is carry between 128 yd and 132 yd
}

plan "Gate" {
  block "One" {
    10 shots with 7-iron
    require inside "Gap"
    success «spread of carry at most 8 yd»
  }
}`,
    code: IDLE,
    says: ["leaves carry 148 yd to 152 yd"],
    right: `window "Gap" {
  for 7-iron is carry between 148 yd and 152 yd
  for 9-iron is carry between 128 yd and 132 yd
}

plan "Gate" {
  block "Both" {
    10 shots with 7-iron
    10 shots with 9-iron
    require inside "Gap"
    success spread of carry at most 8 yd
  }
}`,
  },
  "averages of a quotient": {
    wrong: `10 shots
      success {
        average ball-speed at least 130 mph
        «average club-speed at most 75 mph»
      }`,
    code: GOALS,
    says: ["line 6", "since smash-factor is ball-speed / club-speed, with smash-factor at most 1.6"],
    right: `10 shots
      success {
        average ball-speed at least 110 mph
        average club-speed at most 75 mph
      }`,
  },
  "averages of a quotient, as far as shots enter": {
    wrong: `10 shots
      require smash-factor at most 1.3
      success {
        average ball-speed at least 110 mph
        «average club-speed at most 80 mph»
      }`,
    code: GOALS,
    says: ["with smash-factor at most 1.3"],
    right: `10 shots
      require smash-factor at most 1.3
      success {
        average ball-speed at least 100 mph
        average club-speed at most 80 mph
      }`,
  },
  "shares of however many shots": {
    wrong: `at least 20 shots
      success {
        at least 60 % of shots with start-direction at least 1° left
        «at least 50 % of shots with start-direction at least 2° right»
      }`,
    code: GOALS,
    says: ["needs 60 % of shots with start-direction at least 1° left", "needs 50 % of shots with"],
    right: `at least 20 shots
      success {
        at least 50 % of shots with start-direction at least 1° left
        at least 50 % of shots with start-direction at least 2° right
      }`,
  },
  "speeds that no strike connects": {
    wrong: `10 shots
      require club-speed at most 80 mph
      «target ball-speed at least 135 mph»`,
    code: TARGETS,
    says: [
      "Line 5",
      "smash-factor is ball-speed / club-speed",
      "a plausible smash-factor is at most 1.6",
      "ball-speed at most 12",
    ],
    right: `10 shots
      require club-speed at most 80 mph
      target ball-speed at least 110 mph`,
  },
  "a strike that the speeds rule out": {
    wrong: `10 shots
      require ball-speed at least 110 mph and club-speed at most 80 mph
      «target smash-factor at most 1.3»`,
    code: TARGETS,
    says: ["smash-factor at least 1.375"],
    right: `10 shots
      require ball-speed at least 110 mph and club-speed at most 80 mph
      target smash-factor at most 1.4`,
  },
  "a total that is shorter than the carry": {
    wrong: `10 shots
      require carry at least 165 yd
      «target total at most 160 yd»`,
    code: TARGETS,
    says: ["total at least 165 yd", "a plausible roll is at least 0 yd"],
    right: `10 shots
      require carry at least 155 yd
      target total at most 160 yd`,
  },
  "more roll than total and carry leave": {
    wrong: `10 shots
      target total within 3 yd of 160 yd
      target carry within 3 yd of 155 yd
      «target roll at least 15 yd»`,
    code: TARGETS,
    says: ["roll at most 11 yd", "roll is total − carry", "at least 15 yd"],
    right: `10 shots
      target total within 3 yd of 160 yd
      target carry within 3 yd of 155 yd
      target roll at least 8 yd`,
  },
  "a metric of one's own follows from the carry": {
    wrong: `
metric past-sixty is length {
  shown in yd to 1
  positive long
  negative short
  plausible between 60 yd short and 240 yd long
  formula carry - 60 yd
}

plan "Wedges" {
  block "Sixty" {
    10 shots
    target past-sixty within ±5 yd
    «require carry at most 50 yd»
  }
}`,
    code: TARGETS,
    says: ["carry 55 yd to 65 yd", "past-sixty follows from carry"],
    right: `
metric past-sixty is length {
  shown in yd to 1
  positive long
  negative short
  plausible between 60 yd short and 240 yd long
  formula carry - 60 yd
}

plan "Wedges" {
  block "Sixty" {
    10 shots
    target past-sixty within ±5 yd
    require carry at most 58 yd
  }
}`,
  },
  "two formulas in a chain": {
    wrong: `
metric gap is angle {
  shown in ° to 0.1
  positive right
  negative left
  formula start-direction - face-angle
}
metric wide is angle {
  shown in ° to 0.1
  positive right
  negative left
  formula gap + gap
}

plan "Gate" {
  block "Start" {
    10 shots
    target start-direction within ±1°
    target face-angle at least 3° right
    «target wide at least 0° right»
  }
}`,
    code: TARGETS,
    says: ["wide 4° to 62° left", "gap is start-direction − face-angle", "wide is gap + gap"],
    right: `
metric gap is angle {
  shown in ° to 0.1
  positive right
  negative left
  formula start-direction - face-angle
}
metric wide is angle {
  shown in ° to 0.1
  positive right
  negative left
  formula gap + gap
}

plan "Gate" {
  block "Start" {
    10 shots
    target start-direction within ±1°
    target face-angle at least 1° right
    target wide at most 1° left
  }
}`,
  },
  "a length off the line that the carry does not reach": {
    wrong: `10 shots
      require carry at most 40 yd
      «target offline at least 45 yd right»`,
    code: TARGETS,
    says: ["no ball lands farther off a line than it carried", "offline 40 yd left to 40 yd right"],
    right: `10 shots
      require carry at most 40 yd
      target offline at least 5 yd right`,
  },
  "a start line and a curve that lead elsewhere": {
    wrong: `10 shots
      require carry between 140 yd and 170 yd
      target start-direction within ±1°
      target curve within ±4 yd
      «target offline at least 9 yd right»`,
    code: TARGETS,
    says: ["offline 6.967 yd left to 6.967 yd right", "where its start line leads"],
    right: `10 shots
      require carry between 140 yd and 170 yd
      target start-direction within ±3°
      target curve within ±4 yd
      target offline at least 10 yd right`,
  },
  "down on a ball behind its low point": {
    wrong: `10 shots
      require attack-angle at least 3° down
      «target low-point at least 2 in behind»`,
    code: TARGETS,
    says: ["the club moves down before its low point and up after it", "low-point at least 0 in ahead"],
    right: `10 shots
      require attack-angle at least 3° down
      target low-point at least 2 in ahead`,
  },
  "less spin loft than loft and attack make": {
    wrong: `10 shots
      require dynamic-loft at least 25°
      require attack-angle at least 4° down
      «target spin-loft at most 26°»`,
    code: TARGETS,
    says: ["spin-loft at least 29°", "spin-loft is at least dynamic-loft − attack-angle"],
    right: `10 shots
      require dynamic-loft at least 20°
      require attack-angle at least 4° down
      target spin-loft at most 26°`,
  },
  "two targets that were meant as alternatives": {
    wrong: `10 shots
      target carry within 5 yd of 60 yd
      «target carry within 5 yd of 45 yd»`,
    code: TARGETS,
    says: ["line 5", "rules out", "`or`"],
    right: `10 shots
      target carry within 5 yd of 60 yd or carry within 5 yd of 45 yd`,
  },
  "neither alternative is left": {
    wrong: `10 shots
      target carry within 5 yd of 60 yd or carry within 5 yd of 45 yd
      «require carry between 51 yd and 54 yd»`,
    code: TARGETS,
    says: ["line 5"],
    right: `10 shots
      target carry within 5 yd of 60 yd or carry within 5 yd of 45 yd
      require carry between 51 yd and 56 yd`,
  },
  "alternatives that both run into the path": {
    wrong: `10 shots
      target face-angle within ±1°
      target club-path between 4° in-to-out and 8° in-to-out or club-path between 4° out-to-in and 8° out-to-in
      «target face-to-path within ±2°»`,
    code: TARGETS,
    says: ["line 5", "line 6", "face-to-path is face-angle − club-path"],
    right: `10 shots
      target face-angle within ±1°
      target club-path between 2° in-to-out and 8° in-to-out or club-path between 4° out-to-in and 8° out-to-in
      target face-to-path within ±2°`,
  },
  "a limit that belongs to neither": {
    wrong: `10 shots
      target spin-rate below 3000 rpm
      «require spin-rate at least 3000 rpm»`,
    code: TARGETS,
    says: ["line 5"],
    right: `10 shots
      target spin-rate at most 3000 rpm
      require spin-rate at least 3000 rpm`,
  },
  "the same limits in other units": {
    wrong: `10 shots
      target carry at least 150 yd
      «require carry at most 130 m»`,
    code: TARGETS,
    says: ["line 5"],
    right: `10 shots
      target carry at least 150 yd
      require carry at most 140 m`,
  },
  "a line that contradicts itself": {
    wrong: `10 shots
      «target launch-angle at least 18° up and launch-angle at most 15° up»`,
    code: TARGETS,
    says: ["No shot can do what this line asks for"],
    right: `10 shots
      target launch-angle at least 15° up and launch-angle at most 18° up`,
  },
  "feet where yards were meant": {
    wrong: `10 shots
      «require carry at least 450 yd»`,
    code: TARGETS,
    says: ["a plausible carry is at most 382.8 yd", "unit"],
    right: `10 shots
      require carry at least 450 ft`,
  },
  "two shapes at once": {
    wrong: `10 shots
      target shape is draw or push-draw
      «require shape is fade or straight»`,
    code: TARGETS,
    says: ["line 5"],
    right: `10 shots
      target shape is draw or push-draw
      require shape is draw or straight`,
  },
  "a shape and a curve to the other side": {
    wrong: `10 shots
      target shape is fade or push-fade
      «require curve at least 2 yd draw»`,
    code: TARGETS,
    says: ["line 5"],
    right: `10 shots
      target shape is fade or push-fade
      require curve at least 2 yd fade`,
  },
  "a window has another variant for the second club": {
    wrong: `
window "Launch" {
  is launch-angle between 14° up and 20° up
  for driver is launch-angle between 10° up and 14° up
}

plan "Gate" {
  for 7-iron
  block "Start" {
    6 shots with 7-iron
    6 shots with driver
    target inside "Launch"
    «require launch-angle at least 16° up»
  }
}`,
    code: TARGETS,
    says: ["With driver", "line 12"],
    right: `
window "Launch" {
  is launch-angle between 14° up and 20° up
  for driver is launch-angle between 10° up and 14° up
}

plan "Gate" {
  for 7-iron
  block "Start" {
    6 shots with 7-iron
    6 shots with gap-wedge
    target inside "Launch"
    require launch-angle at least 16° up
  }
}`,
  },
  "outside a window leaves its sides": {
    wrong: `
window "Straight" is start-direction within ±2°

plan "Gate" {
  block "Start" {
    10 shots
    target outside "Straight"
    «require start-direction within ±1.5°»
  }
}`,
    code: TARGETS,
    says: ["line 7"],
    right: `
window "Straight" is start-direction within ±2°

plan "Gate" {
  block "Start" {
    10 shots
    target outside "Straight"
    require start-direction within ±2.5°
  }
}`,
  },
  "a level of which too much is asked": {
    wrong: `
window "Path" {
  is club-path within 3° of 1° in-to-out
  at level "first year" is club-path within 2° of 6° out-to-in
}

plan "Gate" {
  block "Start" {
    10 shots
    target inside "Path"
    «require club-path at least 1° in-to-out»
  }
}`,
    code: "targets-should-hold-for-everybody",
    says: ['level "first year"', "line 10"],
    right: `
window "Path" {
  is club-path within 3° of 1° in-to-out
  at level "first year" is club-path within 2° of 6° out-to-in
}

plan "Gate" {
  block "Start" {
    10 shots
    target inside "Path"
    require attack-angle at least 1° down
  }
}`,
  },
  "words that mirror with the hand beside words that do not": {
    wrong: `10 shots
      target start-side at least 2° push
      «require start-direction at least 1° left»`,
    code: "targets-should-hold-for-everybody",
    says: ["For a right-hander", "start-direction at least 2° right", "at least 1° left"],
    right: `10 shots
      target start-side at least 2° push
      require club-path at least 1° left`,
  },
  "an argument that a drill cannot bear": {
    wrong: `
drill "Flush" (gain: ratio = 1.35) blocked {
  12 shots
  target club-speed between 78 mph and 82 mph
  target ball-speed at most 112 mph
  require smash-factor at least gain
}

plan "Gate" {
  block "Start" from «"Flush" with gain = 1.5» {
  }
}`,
    code: TARGETS,
    says: ["smash-factor at most 1.436", "line 6", "at least 1.5"],
    right: `
drill "Flush" (gain: ratio = 1.35) blocked {
  12 shots
  target club-speed between 78 mph and 82 mph
  target ball-speed at most 112 mph
  require smash-factor at least gain
}

plan "Gate" {
  block "Start" from "Flush" with gain = 1.4 {
  }
}`,
  },
  "a block against its drill in another file": {
    wrong: `
use "./drills"

plan "Gate" {
  block "Start" from "Path gate" {
    target face-to-path within ±1°
    «target face-angle at least 2° open»
  }
}`,
    files: {
      "drills.drill": `drill "Path gate" blocked {
  12 shots
  target club-path between 2° out-to-in and 4° out-to-in
}
`,
    },
    code: TARGETS,
    says: ["Line 3 of drills.drill", "face-angle 1° to 5° closed", "at least 2° open"],
    right: `
use "./drills"

plan "Gate" {
  block "Start" from "Path gate" {
    target face-to-path within ±1°
    target face-angle at least 2° closed
  }
}`,
  },
  "a drill by itself": {
    wrong: `
drill "Gate" (width: angle = 2°) {
  10 shots
  target start-direction within ±width
  «require start-direction at least 3° right»
}

plan "Plan" {
  block "Start" from "Gate"
}`,
    code: TARGETS,
    says: ["line 4"],
    right: `
drill "Gate" (width: angle = 2°) {
  10 shots
  target start-direction within ±width
  require start-direction at least 1° right
}

plan "Plan" {
  block "Start" from "Gate"
}`,
  },
  "two conflicts of one block": {
    wrong: `10 shots
      target carry at least 150 yd
      «target carry at most 140 yd»
      target club-path at least 2° in-to-out
      «require club-path at least 2° out-to-in»`,
    code: TARGETS,
    says: ["rules out"],
    right: `10 shots
      target carry at least 130 yd
      target carry at most 140 yd
      target club-path at least 2° in-to-out
      require club-path at most 5° in-to-out`,
  },
  "the good shots are left out": {
    wrong: `10 shots
      «leave out shots where smash-factor at least 1.2»
      target smash-factor at least 1.35`,
    code: LEAVE_OUT,
    says: ["leaves out every shot", "line 6"],
    right: `10 shots
      leave out shots where smash-factor below 1.2
      target smash-factor at least 1.35`,
  },
  "every shot is left out one way or the other": {
    wrong: `10 shots
      «leave out shots where attack-angle at least 0° down or attack-angle at least 0° up»
      target carry at least 100 yd`,
    code: LEAVE_OUT,
    says: ["This line leaves out every shot"],
    right: `10 shots
      leave out shots where attack-angle at least 12° down or attack-angle at least 8° up
      target carry at least 100 yd`,
  },
  "a goal of shots that do not count": {
    wrong: `10 shots
      require carry at least 120 yd
      success «at least 5 of 10 shots with carry below 100 yd»`,
    code: GOAL,
    says: ["needs 5 shots with carry below 100 yd", "line 5"],
    right: `10 shots
      require carry at least 120 yd
      success at most 5 of 10 shots with carry below 120 yd`,
  },
  "a goal over more shots than there are with the only club that can": {
    wrong: `
window "Flight" {
  is launch-angle between 14° up and 20° up
  for driver is launch-angle between 8° up and 12° up
}

plan "Gate" {
  for 7-iron
  block "Start" test {
    4 shots with 7-iron
    8 shots with driver
    success {
      at least 6 of 12 shots inside "Flight"
      «at least 6 of 12 shots with launch-angle above 16° up and launch-angle below 10° up»
    }
  }
}`,
    code: GOAL,
    says: ["needs 6 shots", "there is none"],
    right: `
window "Flight" {
  is launch-angle between 14° up and 20° up
  for driver is launch-angle between 8° up and 12° up
}

plan "Gate" {
  for 7-iron
  block "Start" test {
    4 shots with 7-iron
    8 shots with driver
    require inside "Flight"
    success at least 4 of 12 shots with launch-angle above 16° up
  }
}`,
  },
  "an average that no shot lets come about": {
    wrong: `10 shots
      require total at most 160 yd
      success «average carry at least 165 yd»`,
    code: GOAL,
    says: ["needs a shot with carry at least 165 yd", "line 5", "a plausible roll"],
    right: `10 shots
      require total at most 160 yd
      success average carry at least 145 yd`,
  },
  "a percentile beyond the requirement": {
    wrong: `10 shots
      require start-direction within ±4°
      success «90th percentile of start-direction at least 6° right»`,
    code: GOAL,
    says: ["start-direction at least 6° right", "line 5"],
    right: `10 shots
      require start-direction within ±4°
      success 90th percentile of start-direction at most 3° right`,
  },
  "a worst shot that is left out": {
    wrong: `10 shots
      leave out shots where carry below 120 yd
      success «worst carry below 110 yd»`,
    code: GOAL,
    says: ["line 5"],
    right: `10 shots
      leave out shots where carry below 120 yd
      success worst carry above 125 yd`,
  },
  "goals for more shots than there are": {
    wrong: `12 shots
      success {
        at least 8 of 12 shots with start-direction at least 1° right
        «at least 5 of 12 shots with start-direction at least 1° left»
      }`,
    code: GOALS,
    says: ["needs 8", "needs 5", "only 12 count"],
    right: `12 shots
      success {
        at least 7 of 12 shots with start-direction at least 1° right
        at least 5 of 12 shots with start-direction at least 1° left
      }`,
  },
  "at least and at most of the same": {
    wrong: `12 shots
      target carry at least 150 yd
      success {
        at least 8 of 12 shots on target
        «at most 6 of 12 shots with carry at least 140 yd»
      }`,
    code: GOALS,
    says: ["needs 8 on target", "only 12 count"],
    right: `12 shots
      target carry at least 150 yd
      success {
        at least 8 of 12 shots on target
        at most 6 of 12 shots with carry below 140 yd
      }`,
  },
  "a run beside few hits": {
    wrong: `12 shots
      target carry at least 150 yd
      success {
        6 in a row on target
        «at most 40 % of shots with carry at least 150 yd»
      }`,
    code: GOALS,
    says: ["needs 6 on target", "needs 8"],
    right: `12 shots
      target carry at least 150 yd
      success {
        4 in a row on target
        at most 40 % of shots with carry at least 150 yd
      }`,
  },
  "runs that need more shots than are hit": {
    wrong: `10 shots
      success {
        6 in a row with start-direction at least 1° right
        «6 in a row with start-direction at least 1° left»
      }`,
    code: GOALS,
    says: ["only 10 count"],
    right: `at least 10 shots
      success {
        6 in a row with start-direction at least 1° right
        6 in a row with start-direction at least 1° left
      }`,
  },
  "three shapes in ten shots": {
    wrong: `10 shots
      success {
        at least 4 of 10 shots with shape is draw
        at least 4 of 10 shots with shape is fade
        «at least 4 of 10 shots with shape is straight»
      }`,
    code: GOALS,
    says: ["two of these"],
    right: `10 shots
      success {
        at least 4 of 10 shots with shape is draw
        at least 3 of 10 shots with shape is fade
        at least 3 of 10 shots with shape is straight
      }`,
  },
  "averages that do not add up": {
    wrong: `10 shots
      success {
        average face-angle within ±1°
        average club-path at least 4° in-to-out
        «average face-to-path at most 2° closed»
      }`,
    code: GOALS,
    says: ["line 6", "line 7", "face-to-path is face-angle − club-path"],
    right: `10 shots
      success {
        average face-angle within ±1°
        average club-path at least 4° in-to-out
        average face-to-path at most 5° closed
      }`,
  },
  "a median above the ninetieth percentile": {
    wrong: `10 shots
      success {
        median carry at least 150 yd
        «90th percentile of carry at most 140 yd»
      }`,
    code: GOALS,
    says: ["needs 5 with carry at least 150 yd", "needs 9 with carry at most 140 yd"],
    right: `10 shots
      success {
        median carry at least 150 yd
        90th percentile of carry at most 165 yd
      }`,
  },
  "a spread that is both": {
    wrong: `10 shots
      success {
        spread of carry at most 6 yd
        «spread of carry above 8 yd»
      }`,
    code: GOALS,
    says: ["line 6"],
    right: `10 shots
      success {
        spread of carry at most 6 yd
        spread of offline above 8 yd
      }`,
  },
  "a change and its opposite": {
    wrong: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      spread of offline falls by at least 20 % against "Before"
      «spread of offline stays within 10 % against "Before"»
    }
  }
}`,
    code: GOALS,
    says: ["line 9"],
    right: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      spread of offline falls by at least 20 % against "Before"
      carry stays within 10 % against "Before"
    }
  }
}`,
  },
  "a goal that the requirement has answered": {
    wrong: `10 shots
      require smash-factor at least 1.4
      success «average smash-factor at least 1.35»`,
    code: IDLE,
    says: ["cannot be missed", "line 5"],
    right: `10 shots
      require smash-factor at least 1.4
      success average smash-factor at least 1.42`,
  },
  "bad shots that were left out already": {
    wrong: `10 shots
      leave out shots where smash-factor below 1.3
      success «at most 1 of 10 shots with ball-speed below 90 mph and club-speed above 90 mph»`,
    code: IDLE,
    says: ["cannot be missed", "line 5", "smash-factor is ball-speed / club-speed"],
    right: `10 shots
      leave out shots where smash-factor below 1.3
      success at most 1 of 10 shots with ball-speed below 120 mph and club-speed above 90 mph`,
  },
  "a target inside another": {
    wrong: `10 shots
      target start-direction within ±2°
      «target start-direction at most 3° right»`,
    code: NEEDLESS,
    says: ["line 5", "meets this line too"],
    right: `10 shots
      target start-direction within ±2°
      target start-direction at most 1° right`,
  },
  "a target that a requirement brings with it": {
    wrong: `10 shots
      «target total at least 140 yd»
      target carry at most 170 yd
      require carry at least 145 yd`,
    code: NEEDLESS,
    says: ["line 7", "roll is total − carry"],
    right: `10 shots
      target total at least 150 yd
      require carry at least 145 yd`,
  },
};

describe.each(Object.entries(CASES))("%s", (_, plans) => {
  test("is reported at its line, with the chain", () => expectReported(plans));
  test("is not seen where there is none", () => expectSilence(plans));
});
