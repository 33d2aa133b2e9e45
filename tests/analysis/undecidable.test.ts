/** Sentences about ability that so few shots cannot answer, each beside one that they can. */
import { expectCases } from "./plans.ts";

const REACH = "confidence-must-be-within-reach";
const MISS = "confidence-could-allow-a-miss";
const SELDOM = "shots-could-decide-more-often";
const BASELINE = "baseline-could-be-longer";
const INSTRUMENT = "tolerance-should-exceed-the-instrument";
const PLAYER = "shots-could-suit-the-player";
const USUAL = "usual-should-be-stated";
const FINDING = "finding-should-fit-the-baseline";

const session = (around: {
  plan: string;
  player?: string;
  instrument?: string;
  mark?: "player" | "instrument";
}) => {
  const { plan, player = "", instrument, mark } = around;
  const line = (keyword: "player" | "instrument", name: string) => {
    const text = `${keyword} "${name}"`;
    return `  ${mark === keyword ? `«${text}»` : text}\n`;
  };
  return `
plan "Gate" {
  for 7-iron
${plan}
}

player "P-07" {
  right-handed
${player}
}
${instrument === undefined ? "" : `\ninstrument "Bay unit" {\n${instrument.includes("coverage") ? "" : "  coverage factor 1\n"}${instrument}\n}\n`}
source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
${line("player", "P-07")}  data "first.csv" from "Bay"
${instrument === undefined ? "" : line("instrument", "Bay unit")}}
`;
};

expectCases({
  "a share that all hits do not show": {
    wrong: `10 shots
      success «at least 80 % of shots with carry at least 150 yd at 90 % confidence»`,
    code: REACH,
    says: ["At 90 % confidence, no result of 10 shots can show this", "at least 11 shots", "85 % confidence"],
    right: `10 shots
      success at least 80 % of shots with carry at least 150 yd at 80 % confidence`,
  },
  "a few bad shots that no good ones rule out": {
    wrong: `20 shots
      success «at most 5 % of shots with carry below 120 yd at 90 % confidence»`,
    code: REACH,
    says: ["at least 45 shots"],
    right: `20 shots
      success at most 25 % of shots with carry below 120 yd at 90 % confidence`,
  },
  "all of them, for ever": {
    wrong: `20 shots
      success «at least 100 % of shots with carry at least 150 yd at 80 % confidence»`,
    code: REACH,
    says: ["no number of shots can", "a little less"],
    right: `20 shots
      success at least 100 % of shots with carry at least 150 yd`,
  },
  "a high percentile of ten shots": {
    wrong: `10 shots
      success «90th percentile of carry at most 165 yd at 80 % confidence»`,
    code: REACH,
    says: ["at least 16 shots"],
    right: `10 shots
      success 90th percentile of carry at most 165 yd`,
  },
  "a low percentile of ten shots": {
    wrong: `10 shots
      success «10th percentile of carry at least 140 yd at 90 % confidence»`,
    code: REACH,
    says: ["at least 22 shots"],
    right: `30 shots
      success 10th percentile of carry at least 140 yd at 80 % confidence`,
  },
  "a median of three shots": {
    wrong: `3 shots
      success «median carry at least 150 yd at 90 % confidence»`,
    code: REACH,
    says: ["at least 4 shots", "85 % confidence"],
    right: `8 shots
      success median carry at least 150 yd at 90 % confidence`,
  },
  "the middle of a dozen shots": {
    wrong: `12 shots
      success «middle 80 % of carry spans at most 14 yd at 80 % confidence»`,
    code: REACH,
    says: ["at least 22 shots"],
    right: `12 shots
      success middle 80 % of carry spans at most 14 yd`,
  },
  "a share in a group that shares the error of its goals": {
    wrong: `12 shots
      success any of {
        «at least 80 % of shots with carry at least 150 yd at 85 % confidence»
        average carry at least 155 yd at 85 % confidence
        median carry at least 152 yd at 85 % confidence
      }`,
    code: REACH,
    says: [
      "At 85 % confidence (judged at 95 %, since not all goals of its group are needed)",
      "at least 14 shots; 75 % confidence",
    ],
    right: `40 shots
      success any of {
        at least 80 % of shots with carry at least 150 yd at 75 % confidence
        average carry at least 155 yd at 75 % confidence
        median carry at least 152 yd at 75 % confidence
      }`,
  },
  "a spread in a range that its limits just fit into": {
    wrong: `28 shots
      success «spread of ball-speed between 2.6 mph and 3.7 mph at 90 % confidence»`,
    code: REACH,
    says: ["at least 29 shots", "85 % confidence"],
    right: `29 shots
      success spread of ball-speed between 2.6 mph and 3.7 mph at 90 % confidence`,
  },
  "an area in a range that its limits just fit into": {
    wrong: `10 shots
      success «area of the 80 % ellipse of offline and carry between 100 yd² and 178 yd² at 80 % confidence»`,
    code: REACH,
    says: ["at least 11 shots"],
    right: `11 shots
      success area of the 80 % ellipse of offline and carry between 100 yd² and 178 yd² at 80 % confidence`,
  },
  "an average of one shot": {
    wrong: `1 shot
      success «average carry at least 150 yd at 80 % confidence»`,
    code: REACH,
    says: ["at least 2 shots"],
    right: `6 shots
      success average carry at least 150 yd at 80 % confidence`,
  },
  "a spread of one shot": {
    wrong: `1 shot
      success «spread of carry at most 6 yd at 80 % confidence»`,
    code: REACH,
    says: ["at least 2 shots"],
    right: `10 shots
      success spread of carry at most 6 yd at 80 % confidence`,
  },
  "the area of two shots": {
    wrong: `2 shots
      success «area of the 80 % ellipse of offline and carry at most 250 yd² at 80 % confidence»`,
    code: REACH,
    says: ["at least 3 shots"],
    right: `12 shots
      success area of the 80 % ellipse of offline and carry at most 250 yd² at 80 % confidence`,
  },
  "a change against a single shot": {
    wrong: `
plan "Gate" {
  block "Before" baseline {
    1 shot
  }
  block "After" test {
    12 shots
    success «carry gains at least 5 yd against "Before" at 80 % confidence»
  }
}`,
    code: REACH,
    says: ["against 1 shot before", "needs more shots too"],
    right: `
plan "Gate" {
  block "Before" baseline {
    8 shots
  }
  block "After" test {
    12 shots
    success carry gains at least 5 yd against "Before" at 80 % confidence
  }
}`,
  },
  "a shift of medians of two and two": {
    wrong: `
plan "Gate" {
  block "Before" baseline {
    2 shots
  }
  block "After" test {
    2 shots
    success «median of carry gains at least 5 yd against "Before" at 90 % confidence»
  }
}`,
    code: REACH,
    says: ["against 2 shots before", "at least 3 shots", "80 % confidence"],
    right: `
plan "Gate" {
  block "Before" baseline {
    6 shots
  }
  block "After" test {
    6 shots
    success median of carry gains at least 5 yd against "Before" at 90 % confidence
  }
}`,
  },
  "a goal of a drill, with fewer shots in one block": {
    wrong: `
drill "Gate" (number: ratio = 12) {
  number shots
  target start-direction within ±2°
  success at least 80 % of shots on target at 80 % confidence
}

plan "Plan" {
  block "All" from "Gate"
  block "Few" from «"Gate" with number = 6» {
  }
}`,
    code: REACH,
    says: ["no result of 6 shots can show the goal in line 5", "at least 8 shots"],
    right: `
drill "Gate" (number: ratio = 12) {
  number shots
  target start-direction within ±2°
  success at least 80 % of shots on target at 80 % confidence
}

plan "Plan" {
  block "All" from "Gate"
  block "More" from "Gate" with number = 16 {
  }
}`,
  },
  "one of several goals, in a group": {
    wrong: `8 shots
      success any of {
        average carry at least 150 yd at 80 % confidence
        «at least 90 % of shots with carry at least 140 yd at 80 % confidence»
      }`,
    code: REACH,
    says: ["(judged at 90 %, since not all goals of its group are needed)", "at least 22 shots"],
    right: `8 shots
      success any of {
        average carry at least 150 yd at 80 % confidence
        at least 70 % of shots with carry at least 140 yd at 80 % confidence
      }`,
  },
  "a percentile that can only be met": {
    wrong: `12 shots
      success «90th percentile of carry at least 150 yd at 90 % confidence»`,
    code: MISS,
    says: ["can show that this is missed", "at least 22 shots"],
    right: `24 shots
      success 90th percentile of carry at least 150 yd at 90 % confidence`,
  },
  "a share that only the best days show": {
    wrong: `10 shots
      success «at least 70 % of shots with carry at least 150 yd at 90 % confidence»`,
    code: SELDOM,
    says: ["truly hits 85 %", "about 2 of 10", "About 37 shots", "estimate"],
    right: `10 shots
      success at least 70 % of shots with carry at least 150 yd at 80 % confidence`,
  },
  "a spread of five shots": {
    wrong: `5 shots
      success «spread of carry at most 6 yd at 95 % confidence»`,
    code: SELDOM,
    says: ["70 % of the limit", "About 28 shots"],
    right: `12 shots
      success spread of carry at most 6 yd at 80 % confidence`,
  },
  "an average in a range that the plan's own spread blurs": {
    wrong: `5 shots
      success {
        «average carry within 4 yd of 150 yd at 90 % confidence»
        spread of carry at most 8 yd
      }`,
    code: SELDOM,
    says: ["whose spread is 8 yd", "line 7", "estimate"],
    right: `5 shots
      success {
        average carry within 4 yd of 150 yd at 90 % confidence
        spread of carry at most 2 yd
      }`,
  },
  "a gain against three shots": {
    wrong: `
plan "Gate" {
  block "Before" baseline {
    3 shots
  }
  block "After" test {
    12 shots
    success {
      «carry gains at least 4 yd against "Before" at 90 % confidence»
      spread of carry at most 8 yd
    }
  }
}`,
    code: BASELINE,
    says: ["no number of shots now would do", "About 37 shots before"],
    right: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    12 shots
    success {
      carry gains at least 8 yd against "Before" at 90 % confidence
      spread of carry at most 8 yd
    }
  }
}`,
  },
  "a spread that would have to fall further than so few shots can show": {
    wrong: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success «spread of carry falls by at least 20 % against "Before" at 95 % confidence»
  }
}`,
    code: BASELINE,
    says: ["whose true spread is 64 % of what it was", "estimate"],
    right: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success spread of carry falls by at least 20 % against "Before" at 80 % confidence
  }
}`,
  },
  "a range that the instrument cannot tell": {
    wrong: session({
      plan: `  block "Start" test {
    10 shots
    target face-angle within ±0.5°
    success at least 6 of 10 shots on target
  }`,
      instrument: "  coverage factor 2\n  reads face-angle within 1° random",
      mark: "instrument",
    }),
    code: INSTRUMENT,
    says: [
      '"Bay unit" is too coarse for this range',
      "line 6",
      "off by 0.5°",
      "at least ±0.98° to be sure at 95 %",
    ],
    right: session({
      plan: `  block "Start" test {
    10 shots
    target face-angle within ±1°
    success at least 6 of 10 shots on target
  }`,
      instrument: "  coverage factor 2\n  reads face-angle within 1° random",
    }),
  },
  "a difference of two uncertain readings": {
    wrong: session({
      plan: `  decide at 80 %
  block "Start" test {
    10 shots
    success at least 6 of 10 shots with face-to-path within ±0.8°
  }`,
      instrument: "  reads face-angle within 0.5° random\n  reads club-path within 0.5° random",
      mark: "instrument",
    }),
    code: INSTRUMENT,
    says: ["at 80 %", "face-to-path may be off by 0.71°", "±0.91°"],
    right: session({
      plan: `  decide at 80 %
  block "Start" test {
    10 shots
    success at least 6 of 10 shots with face-to-path within ±1°
  }`,
      instrument: "  reads face-angle within 0.5° random\n  reads club-path within 0.5° random",
    }),
  },
  "an average that all readings of the day shift alike": {
    wrong: session({
      plan: `  block "Start" test {
    30 shots
    success average club-path within ±0.5° at 90 % confidence
  }`,
      instrument: "  reads club-path within 0.3° random and 0.5° systematic",
      mark: "instrument",
    }),
    code: INSTRUMENT,
    says: ["line 6", "club-path may be off by 0.5°", "±0.65°"],
    right: session({
      plan: `  block "Start" test {
    30 shots
    success average club-path within ±0.8° at 90 % confidence
  }`,
      instrument: "  reads club-path within 0.3° random and 0.5° systematic",
    }),
  },
  "what is stated for another club": {
    wrong: session({
      plan: `  block "Start" test {
    10 shots
    success at least 6 of 10 shots with carry within 3 yd of 150 yd
  }`,
      instrument: "  reads carry within 1 yd random\n  reads carry within 3 yd random for 7-iron",
      mark: "instrument",
    }),
    code: INSTRUMENT,
    says: ["off by 3 yd", "±5.9 yd"],
    right: session({
      plan: `  block "Start" test {
    10 shots
    success at least 6 of 10 shots with carry within 3 yd of 150 yd
  }`,
      instrument: "  reads carry within 1 yd random\n  reads carry within 3 yd random for driver",
    }),
  },
  "a player who scatters": {
    wrong: session({
      plan: `  block "Start" test {
    6 shots
    success average carry within 5 yd of 150 yd at 90 % confidence
  }`,
      player: "  usual carry 148 yd spread 9 yd with 7-iron",
      mark: "player",
    }),
    code: PLAYER,
    says: ["as is usual of P-07", "spread is 9 yd", "About 23 shots", "estimate"],
    right: session({
      plan: `  block "Start" test {
    6 shots
    success average carry within 5 yd of 150 yd at 90 % confidence
  }`,
      player: "  usual carry 148 yd spread 3 yd with 7-iron\n  usual carry 230 yd spread 15 yd with driver",
    }),
  },
  "a change from the usual of a player who scatters": {
    wrong: session({
      plan: `  block "Start" test {
    8 shots
    success carry gains at least 2 yd against usual at 95 % confidence
  }`,
      player: "  usual carry 148 yd spread 8 yd with 7-iron over 80 shots",
      mark: "player",
    }),
    code: PLAYER,
    says: [
      "truly changed by 4 yd and whose spread is 8 yd, as is usual of P-07",
      "not even 200 would do",
      "estimate",
    ],
    right: session({
      plan: `  block "Start" test {
    8 shots
    success carry gains at least 6 yd against usual at 80 % confidence
  }`,
      player: "  usual carry 148 yd spread 8 yd with 7-iron over 80 shots",
    }),
  },
  "a finding that takes more shots than the baseline has": {
    wrong: `use "./patterns"

plan "Gate" {
  look for «"Cut"», «"Wild"»
  block "Look" baseline {
    4 shots with 7-iron
    4 shots with driver
  }
}`,
    files: {
      "patterns.drill": `finding "Cut" {
  when at least 9 of 12 shots with shape is fade
  check "The path."
}
finding "Wild" {
  for driver
  when at least 50 % of shots with curve at least 10 yd fade at 95 % confidence
  check "The face."
}`,
    },
    code: FINDING,
    says: [
      /is never found in "Look": line (2|7) of patterns\.drill \(`at least .*`\) takes (9 shots, and there are 8|5 shots at 95 % confidence, and there are 4 with driver)\. Ask for more shots there/,
    ],
    right: `use "./patterns"

plan "Gate" {
  look for "Cut", "Wild"
  block "Look" baseline {
    4 shots with 7-iron
    5 shots with driver
  }
}`,
  },
  "a finding for shots that the baseline leaves out": {
    wrong: `finding "Thin" {
  when at least 2 of 4 shots with smash-factor below 1.1
  check "The low point."
}

plan "Gate" {
  look for «"Thin"»
  block "Look" baseline {
    8 shots
    leave out shots where smash-factor below 1.15
  }
}`,
    code: FINDING,
    says: [
      '"Thin" is never found in "Look"',
      "line 10 (`leave out shots where smash-factor below 1.15`) rules out",
    ],
    right: `finding "Thin" {
  when any of {
    at least 2 of 4 shots with smash-factor below 1.1
    at least 9 of 12 shots with strike-side at least 5 mm heel
    average strike-height at least 8 mm low
  }
  check "The low point."
}

plan "Gate" {
  look for "Thin"
  block "Look" baseline {
    8 shots
    leave out shots where smash-factor below 1.15
  }
}`,
  },
  "a finding about a club, in two baselines": {
    wrong: `finding "Tee shots" {
  for driver
  when average launch-angle at most 8° up
  check "The height of the tee."
}

plan "Gate" {
  look for «"Tee shots"»
  block "Look" baseline {
    8 shots with 7-iron
  }
  block "Look again" baseline {
    8 shots with 9-iron
  }
}`,
    code: FINDING,
    says: ['about shots with driver, and "Look" has none'],
    right: `finding "Tee shots" {
  for driver
  when average launch-angle at most 8° up
  check "The height of the tee."
}

plan "Gate" {
  look for "Tee shots"
  block "Look" baseline {
    8 shots with 7-iron
  }
  block "Look again" baseline {
    8 shots with driver
  }
}`,
  },
  "a change against what nobody has stated": {
    wrong: session({
      plan: `  block "Start" test {
    12 shots
    success carry gains at least 4 yd against usual
  }`,
      player: "  usual carry 210 yd with driver",
      mark: "player",
    }),
    code: USUAL,
    says: [
      "`carry gains at least 4 yd against usual` (line 6)",
      "the usual carry of P-07 with 7-iron is not stated, so this cannot be measured",
      "Write `usual carry … with 7-iron` there",
    ],
    right: session({
      plan: `  block "Start" test {
    12 shots
    success carry gains at least 4 yd against usual
  }`,
      player: "  usual carry 150 yd",
    }),
  },
  "a change of a spread that nobody has stated": {
    wrong: session({
      plan: `  block "Start" test {
    12 shots
    success spread of carry falls by at least 2 yd against usual
  }`,
      player: "  usual carry 150 yd with 7-iron",
      mark: "player",
    }),
    code: USUAL,
    says: [
      "the usual spread of carry of P-07 is not stated",
      "Write `spread …` behind the number in line 12",
    ],
    right: session({
      plan: `  block "Start" test {
    12 shots
    success spread of carry falls by at least 2 yd against usual
  }`,
      player: "  usual carry 150 yd spread 6 yd with 7-iron",
    }),
  },
  "a change that leaves what is plausible on this player's side": {
    wrong: session({
      plan: `  block "Start" test {
    12 shots
    success club-path moves at least 3° in-to-out against usual
  }`,
      player: "  usual club-path 24° in-to-out with 7-iron",
      mark: "player",
    }).replace("right-handed", "left-handed"),
    code: USUAL,
    says: ["the usual average club-path of P-07 is 24° left", "which cannot change by so much"],
    right: session({
      plan: `  block "Start" test {
    12 shots
    success club-path moves at least 3° out-to-in against usual
  }`,
      player: "  usual club-path 24° in-to-out with 7-iron",
    }).replace("right-handed", "left-handed"),
  },
  "a spread that is to fall by more than it usually is": {
    wrong: session({
      plan: `  block "Start" test {
    12 shots
    success spread of carry falls by at least 8 yd against usual
  }`,
      player: "  usual carry 150 yd spread 6 yd with 7-iron",
      mark: "player",
    }),
    code: USUAL,
    says: [
      "the usual spread of carry of P-07 is 6 yd (line 12), which cannot change by so much. Ask for less",
    ],
    right: session({
      plan: `  block "Start" test {
    12 shots
    success spread of carry falls by at least 8 yd against usual
  }`,
      player: "  usual carry 150 yd spread 9 yd with 7-iron",
    }),
  },
  "no bad shots at all, for ever": {
    wrong: `20 shots
      success «at most 0 % of shots with shape is hook at 90 % confidence»`,
    code: REACH,
    says: ["no number of shots can. Allow a little more."],
    right: `20 shots
      success at most 20 % of shots with shape is hook at 80 % confidence`,
  },
});
