/** Limits and statistics in everyday words. */
import { block, type Slip } from "./slip.ts";

const goals = (...lines: string[]) =>
  block("10 shots", "success {", ...lines.map((line) => `  ${line}`), "}");

const shots = (text: string) => `How many shots is said with \`at least\` or \`at most\`: \`${text}\`.`;

export const SLIPS: readonly Slip[] = [
  {
    name: "how many shots, in words before the number",
    text: goals(
      "«no more than 2» shots with carry below 50 yd",
      "«not less than 7» of 10 shots on target",
      "«up to 3» shots with carry below 50 yd",
      "«minimum 7» of 10 shots on target",
    ),
    messages: [shots("at most 2"), shots("at least 7"), shots("at most 3"), shots("at least 7")],
    fixed: goals(
      "at most 2 shots with carry below 50 yd",
      "at least 7 of 10 shots on target",
      "at most 3 shots with carry below 50 yd",
      "at least 7 of 10 shots on target",
    ),
  },
  {
    name: "more and fewer shots than a number, which are one more and one fewer",
    text: goals(
      "«more than 7» shots on target",
      "«fewer than 3» shots with carry below 50 yd",
      "«over 70 %» of shots on target",
    ),
    messages: [shots("at least 8"), shots("at most 2"), shots("at least 70 %")],
    fixed: goals(
      "at least 8 shots on target",
      "at most 2 shots with carry below 50 yd",
      "at least 70 % of shots on target",
    ),
  },
  {
    name: "how many shots, in words behind the number",
    text: goals("«7 or more» of 10 shots on target", "«70 % or more» of shots on target"),
    messages: [shots("at least 7"), shots("at least 70 %")],
    fixed: goals("at least 7 of 10 shots on target", "at least 70 % of shots on target"),
  },
  {
    name: "a limit in a sentence",
    text: block(
      "10 shots",
      "target carry «is» at least 140 yd",
      "target club-path «should be» within 2° of 1° in-to-out",
      "leave out shots where carry «is» below 100 yd",
      "require carry «must be more than» 100 yd",
      "success {",
      "  average carry «is» between 130 yd and 150 yd",
      "  at least 7 of 10 shots with carry «has to be» above 120 yd",
      "}",
    ),
    messages: [
      "A limit stands right behind its metric: leave `is` out before `at least`.",
      "A limit stands right behind its metric: leave `should be` out before `within`.",
      "A limit stands right behind its metric: leave `is` out before `below`.",
      "`must be more than` is `above` here.",
      "A limit stands right behind its metric: leave `is` out before `between`.",
      "A limit stands right behind its metric: leave `has to be` out before `above`.",
    ],
    fixed: block(
      "10 shots",
      "target carry at least 140 yd",
      "target club-path within 2° of 1° in-to-out",
      "leave out shots where carry below 100 yd",
      "require carry above 100 yd",
      "success {",
      "  average carry between 130 yd and 150 yd",
      "  at least 7 of 10 shots with carry above 120 yd",
      "}",
    ),
  },
  {
    name: "a limit on both sides",
    text: block("10 shots", "target start-direction «within 2° left to 3.5° right»"),
    messages: ["A range is written `between 2° left and 3.5° right`."],
    fixed: block("10 shots", "target start-direction between 2° left and 3.5° right"),
  },
  {
    name: "plus or minus, in words",
    text: block(
      "10 shots",
      "target carry «145 yd plus or minus 5 yd»",
      "target carry «145 yd give or take 5»",
    ),
    messages: [
      "How close it must be to a value is written `within 5 yd of 145 yd`.",
      "How close it must be to a value is written `within 5 yd of 145 yd`.",
    ],
    fixed: block("10 shots", "target carry within 5 yd of 145 yd", "target carry within 5 yd of 145 yd"),
  },
  {
    name: "a name right behind a metric",
    text: block("10 shots", "target shape «draw»"),
    messages: ["Say how it must be: `shape is draw`, or a limit such as `shape within …`."],
    fixed: block("10 shots", "target shape is draw"),
  },
  {
    name: "a goal on the line of its word",
    text: block(
      "10 shots",
      "success «no more than 2» shots with carry below 50 yd",
      "success «standard deviation of» carry below 4 yd",
      "success «carry average» at least 140 yd",
    ),
    messages: [
      shots("at most 2"),
      "`standard deviation of` is `spread of` here.",
      "What is asked of a metric stands before it: `average carry`.",
    ],
    fixed: block(
      "10 shots",
      "success at most 2 shots with carry below 50 yd",
      "success spread of carry below 4 yd",
      "success average carry at least 140 yd",
    ),
  },
  {
    name: "all shots, in words",
    text: goals("«all shots» on target", "«every shot» on target", "«half of the shots» on target"),
    messages: [
      "How many shots is said as a number: `at least 100 % of shots`.",
      "How many shots is said as a number: `at least 100 % of shots`.",
      "How many shots is said as a number: `at least 50 % of shots`.",
    ],
    fixed: goals(
      "at least 100 % of shots on target",
      "at least 100 % of shots on target",
      "at least 50 % of shots on target",
    ),
  },
  {
    name: "the limit of a metric, in words before and behind",
    text: goals(
      "average carry «more than» 140 yd",
      "average carry «no less than» 140 yd",
      "average carry «140 yd or more»",
      "average carry «up to» 160 yd",
    ),
    messages: [
      "`more than` is `above` here.",
      "`no less than` is `at least` here.",
      "A limit stands before its number: `at least 140 yd`.",
      "`up to` is `at most` here.",
    ],
    fixed: goals(
      "average carry above 140 yd",
      "average carry at least 140 yd",
      "average carry at least 140 yd",
      "average carry at most 160 yd",
    ),
  },
  {
    name: "a value to be near",
    text: block(
      "10 shots",
      "target carry «is 60 yd +/- 5 yd»",
      "target carry «60 ± 5 yd»",
      "target carry «= 60yd + - 5»",
    ),
    messages: Array(3)
      .fill("How close it must be to a value is written `within 5 yd of 60 yd`.")
      .with(2, "How close it must be to a value is written `within 5yd of 60yd`."),
    fixed: block(
      "10 shots",
      "target carry within 5 yd of 60 yd",
      "target carry within 5 yd of 60 yd",
      "target carry within 5yd of 60yd",
    ),
  },
  {
    name: "a value without how near",
    text: block("10 shots", "target carry «about 60 yd»", "target start-direction «2°» left"),
    messages: [
      "Say how close it must be: `within … of 60 yd`.",
      "Say how close it must be: `within … of 2°`.",
    ],
  },
  {
    name: "a statistic behind its metric",
    text: goals(
      "«carry average» at least 140 yd",
      "«carry spread of» at most 5 yd",
      "«carry range» at most 12 yd",
    ),
    messages: [
      "What is asked of a metric stands before it: `average carry`.",
      "What is asked of a metric stands before it: `spread of carry`.",
      "How far apart shots lie is said with how many of them: `middle 100 % of carry spans`, or of fewer, such as 80 %.",
    ],
    fixed: goals(
      "average carry at least 140 yd",
      "spread of carry at most 5 yd",
      "middle 100 % of carry spans at most 12 yd",
    ),
  },
  {
    name: "the name of a metric in two words",
    text: goals("at least 7 of 10 shots with «face angle» within 2°", "average «spin rate» at most 6000 rpm"),
    messages: [
      "The parts of a name are joined by hyphens: `face-angle`.",
      "The parts of a name are joined by hyphens: `spin-rate`.",
    ],
    fixed: goals("at least 7 of 10 shots with face-angle within 2°", "average spin-rate at most 6000 rpm"),
  },
  {
    name: "balls and swings",
    text: block("10 «balls»", "8 «swings» with 7-iron"),
    messages: ["`balls` is `shots` here.", "`swings` is `shots` here."],
    fixed: block("10 shots", "8 shots with 7-iron"),
  },
  {
    name: "so many in a row, or more",
    text: goals("«at least» 3 in a row on target"),
    messages: ["More of them do no harm as it is: `3 in a row`."],
    fixed: goals("3 in a row on target"),
  },
  {
    name: "a limit that is denied",
    text: block("10 shots", "target carry «not below» 140 yd", "success average carry «not over» 160 yd"),
    messages: ["`not below` is `at least` here.", "`not over` is `at most` here."],
    fixed: block("10 shots", "target carry at least 140 yd", "success average carry at most 160 yd"),
  },
  {
    name: "how far apart shots lie, without its word",
    text: goals("middle 80 % of carry «within» 20 yd", "middle 80 % of carry «at» most 20 yd"),
    messages: [
      "How far apart shots lie is said with `spans`: `spans at most …`.",
      "How far apart shots lie is said with `spans`.",
    ],
    fixed: goals("middle 80 % of carry spans at most 20 yd", "middle 80 % of carry spans at most 20 yd"),
  },
  {
    name: "an ellipse of nobody knows how many shots, or nobody knows what of it",
    text: goals(
      "«area of the ellipse» of carry and offline at most 200 yd²",
      "«80 % ellipse» of carry and offline at most 200 yd²",
      "«minor axis of 90 % ellipse» of carry and offline at most 20 yd",
    ),
    messages: [
      "The ellipse of how many of the shots, and what of it: `area of the 80 % ellipse`.",
      "The ellipse of how many of the shots, and what of it: `area of the 80 % ellipse`.",
      "The ellipse of how many of the shots, and what of it: `minor axis of the 90 % ellipse`.",
    ],
    fixed: goals(
      "area of the 80 % ellipse of carry and offline at most 200 yd²",
      "area of the 80 % ellipse of carry and offline at most 200 yd²",
      "minor axis of the 90 % ellipse of carry and offline at most 20 yd",
    ),
  },
  {
    name: "the largest and the smallest, of which one is the best",
    text: goals("«max» carry at least 150 yd", "«lowest» carry at least 120 yd"),
    messages: ["`max` can be `best` or `worst`: say which.", "`lowest` can be `worst` or `best`: say which."],
    fixed: goals("best carry at least 150 yd", "worst carry at least 120 yd"),
  },
  {
    name: "a statistic that there is not, or is counted",
    text: goals(
      "«variance» of carry at most 5 yd",
      "«p90» of carry at least 150 yd",
      "«90. percentile» of carry at least 150 yd",
    ),
    messages: [
      "`variance` cannot be asked of a metric. What can be are `average`, `median`, `spread`, `best`, `worst`, and percentiles such as `90th percentile`.",
      "Percentiles are counted: `90th percentile`.",
      "Percentiles are counted: `90th percentile`.",
    ],
    fixed: goals(
      "variance of carry at most 5 yd",
      "90th percentile of carry at least 150 yd",
      "90th percentile of carry at least 150 yd",
    ),
  },
];
