/** A coach's folder in small: vocabulary of their own, a player, a table, a plan, and a session that was hit. */
export const SAMPLE: Readonly<Record<string, string>> = {
  "library/words.drill": `// Words of our own.

/** Sideways miss as a share of the carry. */
metric miss-share is ratio {
  shown in % to 0.1
  positive right, for a right-hander fade
  negative left, for a right-hander draw
  plausible between 50 % left and 50 % right
  formula offline / carry
}

/** Half a yard, for chips. */
dimension chips {
  unit chip
  unit half = 0.5 chip
}

club chipper also "chip", "jigger"
`,
  "library/range.drill": `/** Right-handed, hits a cut. */
player "P-07" {
  right-handed
  note "At most 60 swings."
}

/** The field table. */
source "Field" {
  separator comma
  header row 2
  column "Block" is block
  column "Club" is club where "Jig" is 9-iron, "Seven" is 7-iron
  column "Path" is club-path in ° positive out-to-in
  column "Carry" is carry in yd
  column "Side" is offline in yd positive right
  column "Remark" excludes when "mishit", "practice swing"
  shots in order of "Shot"
}
`,
  "plans/gate.drill": `use "../library/words"

/** Second lesson. */
plan "Seven-iron: \\"gate\\"" {
  intent "Path first, then the start line."
  for 7-iron, chipper
  time 55 min
  needs club-path, carry, miss-share
  caution "Stop on pain."

  block "Wake up" warm-up {
    8 shots with gap-wedge at 50 % effort
    at least 4 shots at 70 % effort
  }

  // The gate itself.
  // It stays narrow.
  block "Gate" blocked {
    change motion "Chest over the ball"
    cue "Brush the grass"
    18 shots
    leave out shots where smash-factor below 1.15 or carry at most 100 yd
    target club-path within 2° of 1° in-to-out and miss-share within ±5 %
    require attack-angle between 2° down and 6° down
    success {
      at least 12 of 18 shots on target
      at most 20 % of shots with start-direction at least 5° left at 80 % confidence
      3 in a row on target
      spread of start-direction at most 2.5°
      average carry between 140 yd and 160 yd at 90 % confidence
    }
  }
}
`,
  "sessions/first.drill": `use "../library/range"
use "../plans/gate"

session "First try" {
  plan "Seven-iron: \\"gate\\""
  player "P-07"
  date 2026-10-12
  data "../data/first.csv" from "Field"
  block "Gate" from row 11
  note "Windy."
}
`,
  "data/first.csv": "Club,Path\n",
  "data/second.csv": "Club,Path\n",
  "data/old/zero.csv": "Club,Path\n",
};
