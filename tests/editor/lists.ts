/** One of every list that the grammar has, for tests of what a line that is too wide becomes. */
export const LISTS: Readonly<Record<string, string>> = {
  "library/vocabulary.drill": `metric lie is one of tee, fairway, rough {
  tee where carry at least 200 yd
}

metric drift is length {
  shown in yd to 1
  positive right, for a right-hander fade
  negative left, for a right-hander draw
}

club chipper also "chip", "jigger"
`,
  "library/shared.drill": `use "./vocabulary"

window "Neutral path" {
  for driver, 3-wood, chipper at level "first year" is club-path within 3° of 2° in-to-out
  is club-path within 2° of 1° in-to-out
}

drill "Gate" (width: angle = 3°, hits: ratio = 7, iron: club = 7-iron) blocked {
  12 shots with iron
  target start-direction within ±width
  success at least hits of 12 shots on target
}

finding "Cut" {
  for 7-iron, 8-iron
  when average club-path at least 2° out-to-in
  try "Gate" with width = 4°, hits = 6, iron = 8-iron
}

finding "Helped up" {
  when average attack-angle at least 1° up
}

player "P-07" {
  right-handed
}

player "P-12" {
  left-handed
}

instrument "Unit" {
  reads club-path within 0.8° random and 0.4° systematic for 7-iron, 8-iron
}

source "Table" {
  no reading is "none", "lost"
  column "Club" is club where "Jig" is chipper, "Seven" is 7-iron
  column "Player" is player where "Left" is "P-12", "Right" is "P-07"
  column "Shape" is shape where "D" is draw, "F" is fade
  column "Side" is offline in yd where "L" is left, "R" is right
  column "Remark" excludes when "mishit", "practice swing"
}
`,
  "plans/all.drill": `use "../library/vocabulary"
use "../library/shared"

plan "First" {
  for 7-iron, 8-iron, chipper
  needs club-path, start-direction, drift
  look for "Cut", "Helped up"

  block "Wide" from "Gate" with width = 4°, hits = 6, iron = 8-iron test {
    cue "Slow"
    change set-up "Ball further back"
  }
}

plan "Second" {
  block "Wide" from "Gate" with width = 4°, hits = 6
}

plan "Third" {
  block "Wide" from "Gate"
}

curriculum "All" {
  step "First"

  step "Second"

  step "Third" after "First", "Second" {
    gate block "Wide" of "First" met
    review after 7 d, 28 d
  }
}
`,
};
