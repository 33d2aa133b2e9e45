/** Words that other people use. */
import { block, plan, type Slip } from "./slip.ts";

export const SLIPS: readonly Slip[] = [
  {
    name: "other words in a source, a session and between files",
    text: '«import» "./words"\n\nsource "Bay" {\n  «blank is» "-"\n}\n\nsession "First" {\n  «elevation» 300 m\n}\n',
    messages: [
      "`import` is `use` here.",
      "`blank is` is `no reading is` here.",
      "`elevation` is `altitude` here.",
    ],
    fixed:
      'use "./words"\n\nsource "Bay" {\n  no reading is "-"\n}\n\nsession "First" {\n  altitude 300 m\n}\n',
  },
  {
    name: "other words for a confidence and for what comes next",
    text: plan("decide «with» 90 %", "then {", '  «go back to» "Gate" otherwise', "}"),
    messages: ["`with` is `at` here.", "`go back to` is `step back to` here."],
    fixed: plan("decide at 90 %", "then {", '  step back to "Gate" otherwise', "}"),
  },
  {
    name: "other words for a comparison",
    text: block(
      "success {",
      "  carry gains 3 yd «vs» usual",
      "  carry gains 3 yd «compared to» usual",
      "  carry gains at least 3 yd «over» usual",
      "  carry «drops by» 3 yd against usual",
      "  carry «increases» 3 yd against usual",
      "  carry «gain» 3 yd against usual",
      "}",
    ),
    messages: [
      "`vs` is `against` here.",
      "`compared to` is `against` here.",
      "`over` is `against` here.",
      "`drops by` is `falls by` here.",
      "`increases` is `rises by` here.",
      "`gain` means nothing here. Did you mean `gains`?",
    ],
    fixed: block(
      "success {",
      "  carry gains 3 yd against usual",
      "  carry gains 3 yd against usual",
      "  carry gains at least 3 yd against usual",
      "  carry falls by 3 yd against usual",
      "  carry rises by 3 yd against usual",
      "  carry gains 3 yd against usual",
      "}",
    ),
  },
  {
    name: "other words for the best and the worst",
    text: block("success {", "  «longest» carry at least 140 yd", "  «shortest» carry at least 120 yd", "}"),
    messages: ["`longest` is `best` here.", "`shortest` is `worst` here."],
    fixed: block("success {", "  best carry at least 140 yd", "  worst carry at least 120 yd", "}"),
  },
  {
    name: "a word that can mean more or less",
    text: block("success {", "  carry «improves by» 3 yd against usual", "}"),
    messages: ["`improves by` can be `rises by` or `falls by`: say which."],
    fixed: block("success {", "  carry rises by 3 yd against usual", "}"),
  },
  {
    name: "other words for statistics",
    text: block(
      "success {",
      "  «mean» carry at least 150 yd",
      "  «std» of carry at most 5 yd",
      "  «90 percentile» of carry at least 150 yd",
      "  «22% percentile» of carry at least 150 yd",
      "}",
    ),
    messages: [
      "`mean` is `average` here.",
      "`std` is `spread` here.",
      "Percentiles are counted: `90th percentile`.",
      "Percentiles are counted: `22nd percentile`.",
    ],
    fixed: block(
      "success {",
      "  average carry at least 150 yd",
      "  spread of carry at most 5 yd",
      "  90th percentile of carry at least 150 yd",
      "  22nd percentile of carry at least 150 yd",
      "}",
    ),
  },
  {
    name: "other words for a confidence",
    text: plan(
      "decide at 90 % «confidence»",
      'block "Start" {',
      "  success average carry at least 150 yd «with 80% certainty»",
      "}",
    ),
    messages: [
      "It is a level of confidence as it is: take the word out.",
      "How sure it must be is written `at 80 % confidence`.",
    ],
    fixed: plan(
      "decide at 90 %",
      'block "Start" {',
      "  success average carry at least 150 yd at 80 % confidence",
      "}",
    ),
  },
  {
    name: "the kind of a thing before its name",
    text: plan(
      'block "Start" from «drill» "Gate"',
      'block "Again" {',
      '  success 3 in a row inside «window» "Path"',
      "}",
    ),
    messages: ["The name alone says it: take `drill` out.", "The name alone says it: take `window` out."],
    fixed: plan('block "Start" from "Gate"', 'block "Again" {', '  success 3 in a row inside "Path"', "}"),
  },
  {
    name: "the air in other words",
    text: 'session "First" {\n  temperature «-3» °C\n  wind 3 m/s «from the left»\n}\n\nsession "Second" {\n  temperature «−3» °C\n  wind 3 m/s «headwind»\n}\n\nsession "Third" {\n  wind «none»\n}\n',
    messages: [
      "Below zero is said in a word: `minus 3`.",
      "`from the left` is `left-to-right` here.",
      "Below zero is said in a word: `minus 3`.",
      "`headwind` is `head` here.",
      "`none` is `calm` here.",
    ],
    fixed:
      'session "First" {\n  temperature minus 3 °C\n  wind 3 m/s left-to-right\n}\n\nsession "Second" {\n  temperature minus 3 °C\n  wind 3 m/s head\n}\n\nsession "Third" {\n  wind calm\n}\n',
  },
  {
    name: "a plan in a curriculum",
    text: 'curriculum "Irons" {\n  «plan» "A"\n}\n',
    messages: ["`plan` is `step` here."],
    fixed: 'curriculum "Irons" {\n  step "A"\n}\n',
  },
  {
    name: "other words for the lines of a plan",
    text: plan(
      '«goal» "Better path"',
      "«clubs» 7-iron, driver",
      "«duration» 40 min",
      '«warning» "Stop on pain."',
    ),
    messages: [
      "`goal` is `intent` here.",
      "`clubs` is `for` here.",
      "`duration` is `time` here.",
      "`warning` is `caution` here.",
    ],
    fixed: plan('intent "Better path"', "for 7-iron, driver", "time 40 min", 'caution "Stop on pain."'),
  },
  {
    name: "a club named in a plan, in a word that begins a declaration elsewhere",
    text: plan("«club» 7-iron", 'block "Start" {', "  10 shots", "}"),
    messages: ["`club` is `for` here."],
    fixed: plan("for 7-iron", 'block "Start" {', "  10 shots", "}"),
  },
  {
    name: "other words for the lines of a block",
    text: block(
      "10 shots «using» 7-iron",
      '«focus» "Chest"',
      "«goal» at least 7 of 10 shots on target",
      "«must» attack-angle at least 2° down",
      "«ignore» carry below 50 yd",
    ),
    messages: [
      "`using` is `with` here.",
      "`focus` is `cue` here.",
      "`goal` is `success` here.",
      "`must` is `require` here.",
      "What does not count is said with `leave out shots where`.",
    ],
    fixed: block(
      "10 shots with 7-iron",
      'cue "Chest"',
      "success at least 7 of 10 shots on target",
      "require attack-angle at least 2° down",
      "leave out shots where carry below 50 yd",
    ),
  },
  {
    name: "other words for the lines of a player, a source and a session",
    text: `player "P-1" {
  «lefty»
  «max» 80 swings a session
  limit 300 «shots» a week
}

source "Hall" {
  «delimiter» semicolon
  column "Path" «=» club-path in °
  column "Club" «as» club
}

session "Lesson" {
  plan "Gate"
  «for» "P-1"
  «on» 2026-09-14
  «file» "a.csv" from "Hall"
  data "b.csv" «with» "Hall"
  block "Start" «starts at» row 3
}
`,
    messages: [
      "`lefty` is `left-handed` here.",
      "`max` is `limit` here.",
      "`shots` is `swings` here.",
      "`delimiter` is `separator` here.",
      "`=` is `is` here.",
      "`as` is `is` here.",
      "`for` is `player` here.",
      "`on` is `date` here.",
      "`file` is `data` here.",
      "`with` is `from` here.",
      "`starts at` is `from` here.",
    ],
    fixed: `player "P-1" {
  left-handed
  limit 80 swings a session
  limit 300 swings a week
}

source "Hall" {
  separator semicolon
  column "Path" is club-path in °
  column "Club" is club
}

session "Lesson" {
  plan "Gate"
  player "P-1"
  date 2026-09-14
  data "a.csv" from "Hall"
  data "b.csv" from "Hall"
  block "Start" from row 3
}
`,
  },
  {
    name: "other words in a curriculum and in a finding",
    text: 'curriculum "Irons" {\n  step "A"\n  step "B" «requires» "A"\n}\n\nfinding "F" {\n  when average carry at least 3 yd\n  «means» "The grip"\n}\n',
    messages: ["`requires` is `after` here.", "`means` is `suspect` here."],
    fixed:
      'curriculum "Irons" {\n  step "A"\n  step "B" after "A"\n}\n\nfinding "F" {\n  when average carry at least 3 yd\n  suspect "The grip"\n}\n',
  },
  {
    name: "a confidence in brackets, behind a comma, or half said",
    text: block(
      "10 shots",
      "success {",
      "  average carry at least 150 yd «(80 % confidence)»",
      "  average carry at least 150 yd«, 80 % confidence»",
      "  average carry at least 150 yd «at 80 %»",
      "  average carry at least 150 yd «at confidence 80 %»",
      "  average carry at least 150 yd «80 % confident»",
      "}",
    ),
    messages: Array.from({ length: 5 }, () => "How sure it must be is written `at 80 % confidence`."),
    fixed: block(
      "10 shots",
      "success {",
      ...Array.from({ length: 5 }, () => "  average carry at least 150 yd at 80 % confidence"),
      "}",
    ),
  },
];
