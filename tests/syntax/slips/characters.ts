/** Characters and numbers as other places have them. */
import { block, plan, type Slip } from "./slip.ts";

export const SLIPS: readonly Slip[] = [
  {
    name: "a mark of a table by itself",
    text: 'source "Bay" {\n  separator «";"»\n  decimal «,»\n  thousands «.»\n}\n',
    messages: [
      "A mark is called by its name: `semicolon`.",
      "A mark is called by its name: `comma`.",
      "A mark is called by its name: `point`.",
    ],
    fixed: 'source "Bay" {\n  separator semicolon\n  decimal comma\n  thousands point\n}\n',
  },
  {
    name: "a decimal comma",
    text: block("target club-path within ±«2,5»°", "target carry between «150,5» yd and 160 yd"),
    messages: [
      "Numbers have a decimal point and nothing between thousands: write 2.5.",
      "Numbers have a decimal point and nothing between thousands: write 150.5.",
    ],
    fixed: block("target club-path within ±2.5°", "target carry between 150.5 yd and 160 yd"),
  },
  {
    name: "thousands set apart",
    text: block("target spin-rate at most «6,500» rpm"),
    messages: ["Numbers have a decimal point and nothing between thousands: write 6500 or 6.500."],
    fixed: block("target spin-rate at most 6500 rpm"),
  },
  {
    name: "typographic quotation marks",
    text: "plan «“Gate”» {\n  intent «„Start on line.“»\n  caution «‘Warm up.’»\n}\n",
    messages: [
      'Texts stand in straight double quotation marks: write "Gate".',
      'Texts stand in straight double quotation marks: write "Start on line.".',
      'Texts stand in straight double quotation marks: write "Warm up.".',
    ],
    fixed: 'plan "Gate" {\n  intent "Start on line."\n  caution "Warm up."\n}\n',
  },
  {
    name: "single quotation marks",
    text: plan("intent «'Start on line.'»"),
    messages: ['Texts stand in straight double quotation marks: write "Start on line.".'],
    fixed: plan('intent "Start on line."'),
  },
  {
    name: "a text that is not closed",
    text: 'plan «"Gate {»\n  intent «"Start on line.»\n}\n',
    messages: [
      'This text is not closed. Put a " at its end, on the same line.',
      'This text is not closed. Put a " at its end, on the same line.',
    ],
    fixed: 'plan "Gate" {\n  intent "Start on line."\n}\n',
  },
  {
    name: "signs that compare",
    text: block("target carry «>=» 150 yd", "target offline «<» 5 yd left", "target apex «≤» 80 ft"),
    messages: [
      "`>=` is said in words: write `at least`.",
      "`<` is said in words: write `below`.",
      "`≤` is said in words: write `at most`.",
    ],
    fixed: block(
      "target carry at least 150 yd",
      "target offline below 5 yd left",
      "target apex at most 80 ft",
    ),
  },
  {
    name: "a minus before an amount",
    text: block("target club-path at most «-2»°", "target club-path at most «−2»°"),
    messages: Array(2).fill(
      "Amounts have no sign. A word behind the unit says the direction, as in `2° left`: write the word instead of the minus.",
    ),
  },
  {
    name: "percent in words",
    text: block("success at least 70 «percent» of shots on target"),
    messages: ["A share of shots is written with the sign: `70 % of shots`."],
    fixed: block("success at least 70 % of shots on target"),
  },
  {
    name: "a date in another order",
    text: 'session "First" {\n  date «12.10.2026»\n}\n\nsession "Second" {\n  date «2026-1-5»\n}\n',
    messages: [
      "A date is written year-month-day: 2026-10-12.",
      "A date is written year-month-day: 2026-01-05.",
    ],
    fixed: 'session "First" {\n  date 2026-10-12\n}\n\nsession "Second" {\n  date 2026-01-05\n}\n',
  },
  {
    name: "a date between slashes, of which either part may be the month",
    text: 'session "First" {\n  date «11/26/2026»\n}\n\nsession "Second" {\n  date «3/4/2026»\n}\n',
    messages: [
      "A date is written year-month-day: 2026-11-26.",
      "A date is written year-month-day: 2026-04-03 or 2026-03-04.",
    ],
    fixed: 'session "First" {\n  date 2026-11-26\n}\n\nsession "Second" {\n  date 2026-04-03\n}\n',
  },
  {
    name: "marks of other notations",
    text: plan("time 40 min«;»", "needs«:» carry", "«# by heart»", "for 7-iron"),
    messages: [
      "A statement ends with its line: take the ; out.",
      "No : stands between the words of a statement: take it out.",
      "A comment starts with //.",
    ],
    fixed: plan("time 40 min", "needs carry", "// by heart", "for 7-iron"),
  },
  {
    name: "a comment that is not closed",
    text: 'plan "Gate" {\n}\n\n«/*» what comes next\nplan "Later" {\n}\n',
    messages: ["This comment is not closed, so the rest of the file is part of it. Put */ at its end."],
  },
  {
    name: "a text that is not opened",
    text: 'plan «Gate test»" {\n}\n',
    messages: ['This text has no " at its beginning.'],
    fixed: 'plan "Gate test" {\n}\n',
  },
  {
    name: "quotation marks that begin curly and are not closed",
    text: "plan «“Gate »{\n}\n",
    messages: ['Texts stand in straight double quotation marks: write "Gate".'],
    fixed: 'plan "Gate"{\n}\n',
  },
  {
    name: "plus and minus",
    text: block("target club-path within «+-»2°", "target club-path within «+2»°"),
    messages: [
      "Plus or minus is written `±` or `+/-`.",
      "Amounts have no sign. A word behind the unit says the direction, as in `2° left`: take the plus out.",
    ],
    fixed: block("target club-path within ±2°", "target club-path within 2°"),
  },
  {
    name: "characters that cannot be seen",
    text: plan("time 40«\u200B» min", "«\u0000»for 7-iron"),
    messages: [
      "An invisible character (U+200B) stands here: take it out.",
      "An invisible character (U+0000) stands here: take it out.",
    ],
    fixed: plan("time 40 min", "for 7-iron"),
  },
  {
    name: "how much it varies, as a sign",
    text: 'player "P-1" {\n  usual carry 150 yd «±» 6 yd\n}\n\ninstrument "Bay" {\n  reads carry «±» 2 m random\n  reads offline within «±»2 m random\n}\n',
    messages: [
      "How much it varies is said in a word: `spread`.",
      "How far readings may be off is said in a word: `within`.",
      "Readings may be off either way as it is: take the sign out.",
    ],
    fixed:
      'player "P-1" {\n  usual carry 150 yd spread 6 yd\n}\n\ninstrument "Bay" {\n  reads carry within 2 m random\n  reads offline within 2 m random\n}\n',
  },
  {
    name: "a sign that touches what it compares",
    text: block("10 shots", "target carry«>»140 yd"),
    messages: ["`>` is said in words: write `above`."],
    fixed: block("10 shots", "target carry above 140 yd"),
  },
  {
    name: "marks around a word",
    text: block("10 shots", "«**target**» carry at least 140 yd", "target «`carry`» at most 160 yd"),
    messages: [
      "Words stand without marks around them: take the ** out.",
      "Words stand without marks around them: take the ` out.",
    ],
    fixed: block("10 shots", "target carry at least 140 yd", "target carry at most 160 yd"),
  },
  {
    name: "an area with a power, and an `and` as a sign",
    text: block(
      "10 shots",
      "success {",
      "  area of the 80 % ellipse of carry and offline at most 200 «yd^2»",
      "  area of the 80 % ellipse of carry «&» offline at most 200 yd²",
      "}",
    ),
    messages: ["A power is part of its unit: `yd²`.", "`&` is `and` here."],
    fixed: block(
      "10 shots",
      "success {",
      "  area of the 80 % ellipse of carry and offline at most 200 yd²",
      "  area of the 80 % ellipse of carry and offline at most 200 yd²",
      "}",
    ),
  },
];
