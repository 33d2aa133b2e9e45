/** A file with a statement of every kind: what cannot be read in one of them must not take others with it. */
export const EVERY_CONSTRUCT = `use "./words"

dimension weight {
  unit kg or kilogram
  unit lb = 0.45359237 kg
}

metric strike is one of toe, centre, heel {
  centre where strike-side within ±8 mm
  toe where strike-side at least 8 mm toe
  heel where strike-side at least 8 mm heel
}

metric lean is angle {
  shown in ° to 0.1
  positive forward
  negative backward
  plausible between 30° backward and 30° forward
  formula attack-angle * 1
}

club chipper also "chip", "run-up"

window "Path" {
  is club-path within 2° of 1° in-to-out
  for driver is club-path within 3° of 2° in-to-out
  for 7-iron, 8-iron at level "first year" is club-path within 5° of 1° in-to-out or face-to-path within ±1°
}

drill "Start line" (width: angle = 3°, hits: ratio = 12, iron: club = 7-iron) blocked {
  18 shots with iron at 80 % effort
  cue "Brush the grass"
  caution "Stop on any pain."
  time 10 min
  change grip "Weaker by a knuckle"
  target start-direction within ±width
  require attack-angle between 2° down and 6° down
  leave out shots where smash-factor below 1.15
  success {
    at least hits of 18 shots on target
    3 in a row on target
  }
}

finding "Cut from an open face" {
  for 7-iron
  when average face-to-path at least 2° open
  when at least 60 % of shots with shape is fade or push-fade
  suspect "the grip: a weak lead hand"
  check "Where the lead thumb sits"
  try "Start line" with width = 4°
  note "Seen in spring."
}

plan "Strike first" {
  intent "Ball first, then the grass."
  for 7-iron, chipper
  time 55 min
  needs club-path, face-angle
  limit 60 full-effort swings
  decide at 90 %
  look for "Cut from an open face"
  caution "Look around before every swing."
  block "Where we are" baseline {
    at least 12 shots
  }
  block "Gate" from "Start line" with width = 3°, hits = 11
  block "Prove it" test {
    12 shots
    success {
      at least 6 of 12 shots inside "Path"
      at least 70 % of shots with face-to-path within ±2° at 80 % confidence
      hits in a row with carry at least 140 yd
      average carry at least 140 yd
      90th percentile of carry at least 140 yd
      middle 80 % of carry spans at most 12 yd
      area of the 80 % ellipse of offline and carry at most 250 yd²
      carry loses no more than 4 yd against "Where we are"
      spread of offline falls by at least 20 % against the baseline
      club-path moves at least 2° in-to-out against usual
      at most 40 full-effort swings
      2 of {
        3 in a row with carry at least 140 yd
        median carry at least 140 yd
        offline stays within 5 yd against the last session
      }
    }
  }
  then {
    advance to "Windows" when every goal is met
    repeat when "Prove it" is undecided or not-measured
    step back to "Basics" otherwise
  }
}

curriculum "Irons" {
  intent "Strike, then start line."
  step "Basics"
  step "Strike first" after "Basics" {
    gate block "All" of "Basics" met in 2 sessions
    review after 7 d, 28 d
    note "Not before the strike holds."
  }
}

player "P-07" {
  right-handed
  level "first year"
  usual carry 150 yd spread 6 yd with 7-iron over 60 shots
  usual club-path 2° out-to-in
  limit 300 swings a week
  note "Plays on Tuesdays."
}

instrument "Bay unit" {
  coverage 95 %
  reads club-path within 0.8° random and 0.4° systematic
  reads carry within 2 yd random for 7-iron
}

source "Bay" {
  separator semicolon
  decimal comma
  thousands point
  header row 2
  no reading is "n/a", "--"
  column "Carry" is carry in m
  column "Miss" is offline in m sides in "Dir" where "li" is left
  column "Shape" is shape where "D" is draw, "F" is fade
  column "Club" is club where "7i" is 7-iron
  column "Day" is date as day-month-year
  column "Use" excludes when "N"
  shots in order of "Shot"
}

session "First" {
  plan "Strike first"
  player "P-07"
  date 2026-10-12
  data "a.csv" from "Bay"
  instrument "Bay unit"
  block "Gate" from 10:42
  block "Prove it" from row 40 of "a.csv"
  wind 3 m/s head and 1 m/s left-to-right
  temperature minus 3 °C
  pressure 965 hPa
  altitude 420 m
  humidity 60 %
  ball "range" carries 92 %
}
`;
