/** Targets and requirements that no shot meets together, each beside look-alikes that some shots meet. */
import { expectCases } from "../plans.ts";

const CODE = "targets-must-hold-together";

expectCases({
  "face and path leave no square face to the path": {
    wrong: `12 shots
      target face-angle within ±1°
      require club-path between 4° in-to-out and 6° in-to-out
      «target face-to-path within ±2°»`,
    code: CODE,
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
    code: CODE,
    says: ["face-angle at least 5° open", "at most 3° open"],
    right: `12 shots
      target face-to-path at least 4° open
      target club-path at least 1° out-to-in
      require face-angle at most 3° open`,
  },
  "speeds that no strike connects": {
    wrong: `10 shots
      require club-speed at most 80 mph
      «target ball-speed at least 135 mph»`,
    code: CODE,
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
    code: CODE,
    says: ["smash-factor at least 1.375"],
    right: `10 shots
      require ball-speed at least 110 mph and club-speed at most 80 mph
      target smash-factor at most 1.4`,
  },
  "a total that is shorter than the carry": {
    wrong: `10 shots
      require carry at least 165 yd
      «target total at most 160 yd»`,
    code: CODE,
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
    code: CODE,
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
    code: CODE,
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
    code: CODE,
    says: ["wide at least 4° left", "gap is start-direction − face-angle", "wide is gap + gap"],
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
    code: CODE,
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
    code: CODE,
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
    code: CODE,
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
    code: CODE,
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
    code: CODE,
    says: ["line 5", "rules out", "`or`"],
    right: `10 shots
      target carry within 5 yd of 60 yd or carry within 5 yd of 45 yd`,
  },
  "neither alternative is left": {
    wrong: `10 shots
      target carry within 5 yd of 60 yd or carry within 5 yd of 45 yd
      «require carry between 51 yd and 54 yd»`,
    code: CODE,
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
    code: CODE,
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
    code: CODE,
    says: ["line 5"],
    right: `10 shots
      target spin-rate at most 3000 rpm
      require spin-rate at least 3000 rpm`,
  },
  "the same limits in other units": {
    wrong: `10 shots
      target carry at least 150 yd
      «require carry at most 130 m»`,
    code: CODE,
    says: ["line 5"],
    right: `10 shots
      target carry at least 150 yd
      require carry at most 140 m`,
  },
  "a line that contradicts itself": {
    wrong: `10 shots
      «target launch-angle at least 18° up and launch-angle at most 15° up»`,
    code: CODE,
    says: ["No shot can do what this line asks for"],
    right: `10 shots
      target launch-angle at least 15° up and launch-angle at most 18° up`,
  },
  "feet where yards were meant": {
    wrong: `10 shots
      «require carry at least 450 yd»`,
    code: CODE,
    says: ["a plausible carry is at most 382.8 yd", "unit"],
    right: `10 shots
      require carry at least 450 ft`,
  },
  "two shapes at once": {
    wrong: `10 shots
      target shape is draw or push-draw
      «require shape is fade or straight»`,
    code: CODE,
    says: ["line 5"],
    right: `10 shots
      target shape is draw or push-draw
      require shape is draw or straight`,
  },
  "a shape and a curve to the other side": {
    wrong: `10 shots
      target shape is fade or push-fade
      «require curve at least 2 yd draw»`,
    code: CODE,
    says: ["Line 5 (", "leaves curve 3 yd to 15 yd fade, by the rules for shape", "at least 2 yd draw"],
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
    code: CODE,
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
    code: CODE,
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
    code: CODE,
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
    code: CODE,
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
    code: CODE,
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
    code: CODE,
    says: ["rules out"],
    right: `10 shots
      target carry at least 130 yd
      target carry at most 140 yd
      target club-path at least 2° in-to-out
      require club-path at most 5° in-to-out`,
  },
  "a line that no shot meets, of easy swings": {
    wrong: `10 shots at 50 % effort
      «target carry at least 900 yd»`,
    code: "targets-must-hold-together",
    says: ["Check the numbers and their units"],
    right: `10 shots at 50 % effort
      target carry at least 90 yd`,
  },
  "an effort that none of the shots is hit at": {
    wrong: `5 shots at 50 % effort
      5 shots at 70 % effort
      «leave out shots where effort below 80 %»`,
    code: "effort-should-fit-the-shots",
    says: ["50 % and 70 % effort", "leaves all of them out"],
    right: `5 shots at 50 % effort
      5 shots
      leave out shots where effort below 80 %`,
  },
  "an effort that a warm-up is not hit at": {
    wrong: `5 shots at 50 % effort
      «require effort at least 80 %»`,
    code: "effort-should-fit-the-shots",
    says: ["50 % effort", "asks for another effort"],
    right: `5 shots at 50 % effort
      5 shots
      require effort at least 80 %`,
  },
  "a window that says nothing for one of the clubs": {
    wrong: `
window "Long" {
  for 7-iron is carry at least 140 yd
}

plan "Gate" {
  block "Start" {
    5 shots with 7-iron
    5 shots with driver
    «target inside "Long"»
  }
}`,
    code: "window-should-fit-the-clubs",
    says: ["nothing for driver, so that no shot with it can be judged", "or one for this club"],
    right: `
window "Long" {
  for 7-iron, driver is carry at least 140 yd
}

plan "Gate" {
  block "Start" {
    5 shots with 7-iron
    5 shots with driver
    target inside "Long"
  }
}`,
  },
  "a window that says nothing for several of the clubs": {
    wrong: `
window "Long" {
  for 7-iron is carry at least 140 yd
}

plan "Gate" {
  block "Start" {
    5 shots with 8-iron
    5 shots with driver
    «target inside "Long"»
  }
}`,
    code: "window-should-fit-the-clubs",
    says: [/so that no shot with them can be judged/, "or one for these"],
    right: `
window "Long" {
  is carry at least 120 yd
  for 7-iron is carry at least 140 yd
}

plan "Gate" {
  block "Start" {
    5 shots with 8-iron
    5 shots with driver
    target inside "Long"
  }
}`,
  },
  "that no shot is inside a window says nothing of other lines than the window": {
    wrong: `
window "Never" {
  is «carry at least 150 yd and carry at most 140 yd»
}

plan "Gate" {
  block "Start" {
    12 shots
    require inside "Never"
    target start-direction within ±2°
    target face-to-path within ±2°
    success {
      average club-path within ±2°
    }
  }
}`,
    code: "window-must-leave-shots",
    says: ["No shot can be inside this window"],
    right: `
window "Rarely" {
  is carry at least 150 yd and carry at most 150 yd
}

plan "Gate" {
  block "Start" {
    12 shots
    require inside "Rarely"
    target start-direction within ±2°
    target face-to-path within ±2°
    success {
      average club-path within ±2°
    }
  }
}`,
  },
  "what a window at one level asks for is said in numbers": {
    wrong: `
window "Junior" {
  is ball-speed at least 100 mph
  at level "junior" is ball-speed at most 80 mph and spin-rate at most 6000 rpm
}

plan "Gate" {
  block "Start" {
    10 shots
    require smash-factor at least 1.4
    require club-speed at least 60 mph
    «target inside "Junior"»
  }
}`,
    code: "targets-should-hold-for-everybody",
    says: [
      'For a player of level "junior", line 10',
      "leave ball-speed at least 84 mph",
      "this line asks for at most 80 mph",
    ],
    right: `
window "Junior" {
  is ball-speed at least 100 mph
  at level "junior" is ball-speed at most 90 mph and spin-rate at most 6000 rpm
}

plan "Gate" {
  block "Start" {
    10 shots
    require smash-factor at least 1.4
    require club-speed at least 60 mph
    target inside "Junior"
  }
}`,
  },
  "a name that a shot does not get, since an earlier one takes it": {
    wrong: `12 shots
      require curve at least 20 yd draw
      «target shape is draw»`,
    code: CODE,
    says: ["line 5 (`require curve at least 20 yd draw`), by the rules for shape"],
    right: `12 shots
      require curve at least 10 yd draw
      target shape is draw`,
  },
  "what a name leaves, by its own rule and those before it": {
    wrong: `12 shots
      target shape is draw
      «require curve at least 16 yd draw»`,
    code: CODE,
    says: ["leaves curve 3 yd to 15 yd draw, by the rules for shape; this line asks for at least 16 yd draw"],
    right: `12 shots
      target shape is draw or hook
      require curve at least 16 yd draw`,
  },
});
