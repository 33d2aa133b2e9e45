/** Slips of the pen: what is marked is what is shown, with what is said, and the text after the first fix of each. */
export interface Slip {
  readonly name: string;
  readonly text: string;
  /** One for each mark, in their order. */
  readonly messages: readonly string[];
  /** Undefined where there is no fix. */
  readonly fixed?: string;
}

const plan = (...lines: string[]) => `plan "Gate" {\n${lines.map((line) => `  ${line}\n`).join("")}}\n`;
const block = (...lines: string[]) => plan('block "Start" {', ...lines.map((line) => `  ${line}`), "}");

export const SLIPS: readonly Slip[] = [
  {
    name: "a keyword that is misspelt",
    text: block("10 shots", "«tagret» club-path within ±2°", "success at «laest» 7 of 10 shots on target"),
    messages: [
      "`tagret` means nothing here. Did you mean `target`?",
      "`laest` means nothing here. Did you mean `least`?",
    ],
    fixed: block("10 shots", "target club-path within ±2°", "success at least 7 of 10 shots on target"),
  },
  {
    name: "the kind of a block that is misspelt",
    text: plan('block "Start" «tset» {', "  10 shots", "}"),
    messages: ["`tset` means nothing here. Did you mean `test`?"],
    fixed: plan('block "Start" test {', "  10 shots", "}"),
  },
  {
    name: "an opening word that is misspelt",
    text: plan('«blokc» "Start" {', "  10 shots", "}", "«tiem» 40 min"),
    messages: [
      "`blokc` means nothing here. Did you mean `block`?",
      "`tiem` means nothing here. Did you mean `time`?",
    ],
    fixed: plan('block "Start" {', "  10 shots", "}", "time 40 min"),
  },
  {
    name: "two words run together",
    text: block("success {", "  «atleast» 7 of 10 shots on target", "  3 in «arow» on target", "}"),
    messages: [
      "`atleast` means nothing here. Did you mean `at least`?",
      "`arow` means nothing here. Did you mean `a row`?",
    ],
    fixed: block("success {", "  at least 7 of 10 shots on target", "  3 in a row on target", "}"),
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
    name: "no quotation marks",
    text: "plan «Gate» {\n  intent «Start on line.»\n}\n",
    messages: [
      'Texts and names like this one stand in quotation marks: "Gate".',
      'Texts and names like this one stand in quotation marks: "Start on line.".',
    ],
    fixed: 'plan "Gate" {\n  intent "Start on line."\n}\n',
  },
  {
    name: "quotation marks where none belong",
    text: plan('for «"7-iron"»'),
    messages: ["This is written without quotation marks: `7-iron`."],
    fixed: plan("for 7-iron"),
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
    name: "a statement that ends too early",
    text: block("10 shots", "«cue»", "success at least 7 of 10 shots «on»"),
    messages: [
      'Behind `cue` something is missing: a text in "…".',
      "Behind `on` something is missing: `target`.",
    ],
    fixed: block("10 shots", "cue", "success at least 7 of 10 shots on target"),
  },
  {
    name: "a statement that goes on too long",
    text: block("10 shots «today» and tomorrow"),
    messages: [
      "The statement is complete before `today`. Take the rest out, or start a new line for the next one.",
    ],
  },
  {
    name: "a statement in the wrong place",
    text: plan('«cue» "Brush the grass"'),
    messages: ["`cue` cannot stand directly in a `plan`; it belongs in a `block` or in a `drill`."],
  },
  {
    name: "a block that is not closed before the next",
    text: plan('block "One" «{»', "  10 shots", 'block "Two" {', "  10 shots", "}"),
    messages: ['This { is not closed. Put a } below the last line that belongs to block "One".'],
    fixed: plan('block "One" {', "  10 shots", "}", 'block "Two" {', "  10 shots", "}"),
  },
  {
    name: "a block whose brace the plan took",
    text: 'plan "Gate" {\n  block "One" «{»\n    10 shots\n}\n',
    messages: ['This { is not closed. Put a } below the last line that belongs to block "One".'],
  },
  {
    name: "a plan that is not closed at the end",
    text: 'plan "Gate" «{»\n  block "One" {\n    10 shots\n  }\n',
    messages: ['This { is not closed. Put a } below the last line that belongs to plan "Gate".'],
    fixed: 'plan "Gate" {\n  block "One" {\n    10 shots\n  }\n}\n',
  },
  {
    name: "a brace too many",
    text: plan('block "One" {', "  10 shots", "}", "}")
      .concat('«}»\n\nplayer "P-1" {\n}\n')
      .replace("  }\n}\n«}»", "}\n«}»"),
    messages: ["This } is one too many: nothing is open here. Take it out, or look for one too many above."],
    fixed: 'plan "Gate" {\n  block "One" {\n    10 shots\n  }\n}\n\n\nplayer "P-1" {\n}\n',
  },
  {
    name: "an opening brace that is missing",
    text: "«metric pace is speed»\n  shown in mph to 1\n  positive fast\n}\n",
    messages: ["The { of this `metric` is missing at the end of its line."],
    fixed: "metric pace is speed {\n  shown in mph to 1\n  positive fast\n}\n",
  },
  {
    name: "a keyword as a name",
    text: "metric «target» is angle\n",
    messages: [
      "`target` is a word of the language and cannot be a name. Choose another, such as `my-target`.",
    ],
  },
  {
    name: "a comment that is not closed",
    text: 'plan "Gate" {\n}\n\n«/*» what comes next\nplan "Later" {\n}\n',
    messages: ["This comment is not closed, so the rest of the file is part of it. Put */ at its end."],
  },
  {
    name: "the end of the file where something is missing",
    text: "«metric»",
    messages: ["Behind `metric` something is missing: a name."],
  },
  {
    name: "a word that is still being typed",
    text: plan('block "Start" {', "  10 shots", "  «targ»", "}", "«bl»"),
    messages: [
      "`targ` means nothing here. Did you mean `target`?",
      "`bl` means nothing here. Did you mean `block`?",
    ],
    fixed: plan('block "Start" {', "  10 shots", "  target", "}", "block"),
  },
  {
    name: "words that begin with a capital",
    text: '«Plan» "Gate" {\n}\n',
    messages: ["`Plan` means nothing here. Did you mean `plan`?"],
    fixed: 'plan "Gate" {\n}\n',
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
    name: "a number behind its word",
    text: plan("time «min 40»", 'block "Start" {', "  «shots 10»", "}"),
    messages: ["The number stands first: `40 min`.", "The number stands first: `10 shots`."],
    fixed: plan("time 40 min", 'block "Start" {', "  10 shots", "}"),
  },
  {
    name: "words that are swapped",
    text: block("success «7 at least» of 10 shots on target", "target «within» ±2° club-path"),
    messages: [
      "The number stands behind these words: `at least 7`.",
      "Found `within` where a name, `inside` or `outside` was expected.",
    ],
    fixed: block("success at least 7 of 10 shots on target", "target within ±2° club-path"),
  },
  {
    name: "a number that is neither the least nor the most",
    text: block("success {", "  «7» of 10 shots on target", "  «70» % of shots on target", "}"),
    messages: [
      "Say whether this is the least or the most, as in `at least 7`.",
      "Say whether this is the least or the most, as in `at least 70`.",
    ],
    fixed: block(
      "success {",
      "  at least 7 of 10 shots on target",
      "  at least 70 % of shots on target",
      "}",
    ),
  },
  {
    name: "shots out of others",
    text: block(
      "success {",
      "  at least «7/10» shots on target",
      "  at least «7 out of 10» shots on target",
      "}",
    ),
    messages: Array(2).fill("A part of the shots is written `7 of 10 shots`."),
    fixed: block(
      "success {",
      "  at least 7 of 10 shots on target",
      "  at least 7 of 10 shots on target",
      "}",
    ),
  },
  {
    name: "a range with a dash",
    text: block(
      "target carry between 150«–»160 yd",
      "target carry «150-160 yd»",
      "target club-path «1 – 2°»",
    ),
    messages: [
      "A range has a word between its ends: write `and`.",
      "A range is written `between 150 yd and 160 yd`.",
      "A range is written `between 1° and 2°`.",
    ],
    fixed: block(
      "target carry between 150 and 160 yd",
      "target carry between 150 yd and 160 yd",
      "target club-path between 1° and 2°",
    ),
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
    name: "a name in two words",
    text: plan("for «7 iron»", 'block "Start" {', "  target «club path» within ±2°", "}"),
    messages: [
      "The parts of a name are joined by hyphens: `7-iron`.",
      "The parts of a name are joined by hyphens: `club-path`.",
    ],
    fixed: plan("for 7-iron", 'block "Start" {', "  target club-path within ±2°", "}"),
  },
  {
    name: "marks of a list",
    text: block("«-» 10 shots", '«•» cue "Brush the grass"'),
    messages: [
      "A statement has no mark before it: take the - out.",
      "A statement has no mark before it: take the • out.",
    ],
    fixed: block("10 shots", 'cue "Brush the grass"'),
  },
  {
    name: "a block without a name",
    text: plan("«block» {", "  10 shots", "}"),
    messages: ['Behind `block` something is missing: a text in "…".'],
  },
  {
    name: "a block without its {",
    text: plan('«block "Start"»', "  10 shots", "}"),
    messages: ["The { of this `block` is missing at the end of its line."],
    fixed: plan('block "Start" {', "  10 shots", "}"),
  },
  {
    name: "a success without its {",
    text: block("10 shots", "«success»", "  3 in a row on target", "  average carry at least 150 yd", "}"),
    messages: ["The { of this `success` is missing: without it there is one criterion."],
    fixed: block("10 shots", "success {", "  3 in a row on target", "  average carry at least 150 yd", "}"),
  },
  {
    name: "statements half typed, in the middle and at the end",
    text: 'plan "Gate" {\n  block "Start" {\n    «10»\n    target carry at least 150 yd\n  }\n  «for»\n}\n\nsession "First" {\n  data «"shots.csv"»\n}\n',
    messages: [
      "Behind `10` something is missing: `shots` or `shot`.",
      "Behind `for` something is missing: a name.",
      'Behind `"shots.csv"` something is missing: `from`.',
    ],
    fixed:
      'plan "Gate" {\n  block "Start" {\n    10\n    target carry at least 150 yd\n  }\n  for\n}\n\nsession "First" {\n  data "shots.csv" from\n}\n',
  },
  {
    name: "the last line of a file half typed",
    text: 'plan "Gate" {\n  block "Start" {\n    10 shots\n    target carry «at»',
    messages: ["Behind `at` something is missing: `least` or `most`."],
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
    name: "a text too long to be repeated",
    text: plan(`intent «${"brush ".repeat(20)}the grass»`),
    messages: [
      `Texts and names like this one stand in quotation marks: "${"brush ".repeat(10).slice(0, 59)}….`,
    ],
    fixed: plan(`intent "${"brush ".repeat(20)}the grass"`),
  },
  {
    name: "something that is no plan",
    text: "«Dear» coach,\n",
    messages: [
      "Found `Dear` where a declaration was expected: `use`, `dimension`, `metric`, `club`, `window`, `drill`, `plan`, `finding`, `curriculum`, `player`, `instrument`, `source` or `session`.",
    ],
  },
  {
    name: "what comes next, without braces",
    text: plan("«then repeat when every goal is met»", "time 40 min"),
    messages: ["What comes next stands between braces: `then { … }`, one recommendation a line."],
    fixed: plan("then { repeat when every goal is met }", "time 40 min"),
  },
  {
    name: "a goal that does not say what of a metric",
    text: block("success {", "  «carry at» least 150 yd", "  «shape is» draw", "}"),
    messages: [
      "Say what of `carry`, as in `average carry at …`, or how many shots: `at least 70 % of shots with carry at …`.",
      "Say how many shots: `at least 70 % of shots with shape is …`.",
    ],
    fixed: block(
      "success {",
      "  average carry at least 150 yd",
      "  at least 70 % of shots with shape is draw",
      "}",
    ),
  },
  {
    name: "a count that does not say of what",
    text: block("success at least 7 of 10 «on» target"),
    messages: ["Say what is counted: `shots`."],
    fixed: block("success at least 7 of 10 shots on target"),
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
    name: "a word left out of a phrase",
    text: block("success 3 in «row» on target"),
    messages: ["Found `row` where `a` was expected."],
    fixed: block("success 3 in a row on target"),
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
    name: "parameters that do not say what they stand for",
    text: 'drill "A" («width=»3°) {\n}\n\ndrill "B" («width angle» = 3°) {\n}\n\ndrill "C" (far: «3» yd) {\n}\n\ndrill "D" (width: angle «3»°) {\n}\n',
    messages: [
      "A parameter says what it stands for before its default, as in `width: angle = …`.",
      "A colon stands behind the name of a parameter: `width: …`.",
      "A parameter says what it stands for before its default, as in `length = …`.",
      "A default stands behind `=`.",
    ],
    fixed:
      'drill "A" (width: angle =3°) {\n}\n\ndrill "B" (width: angle = 3°) {\n}\n\ndrill "C" (far: length = 3 yd) {\n}\n\ndrill "D" (width: angle = 3°) {\n}\n',
  },
  {
    name: "parameters in other brackets, and none",
    text: 'drill "A" «[»width: angle = 3°] {\n}\n\ndrill "B" «width: angle = 3°» {\n}\n\ndrill "C" (width: angle«;» hits: ratio) {\n}\n',
    messages: [
      "The parameters of a drill stand in round brackets: `(width: angle = 3°)`.",
      "The parameters of a drill stand in round brackets: `(width: angle = 3°)`.",
      "A comma stands between the members of a list: write `,` for `;`.",
    ],
    fixed:
      'drill "A" (width: angle = 3°) {\n}\n\ndrill "B" (width: angle = 3°) {\n}\n\ndrill "C" (width: angle, hits: ratio) {\n}\n',
  },
  {
    name: "arguments with other marks",
    text: plan(
      'block "A" from "Gate" «(»width = 3°)',
      'block "B" from "Gate" with «width:» 3°',
      'block "C" from "Gate" with width «3»°',
      'block "D" from "Gate"«,» width = 3°',
    ),
    messages: [
      "What the parameters of a drill stand for is written behind `with`.",
      "What a parameter stands for is written with `=`, as in `width = …`.",
      "What a parameter stands for is written with `=`, as in `width = …`.",
      "What the parameters of a drill stand for is written behind `with`.",
    ],
    fixed: plan(
      'block "A" from "Gate" with width = 3°',
      'block "B" from "Gate" with width = 3°',
      'block "C" from "Gate" with width = 3°',
      'block "D" from "Gate" with width = 3°',
    ),
  },
  {
    name: "words of the language in a list of names",
    text: 'metric miss is one of left, «back»\n\ndrill "A" («row»: ratio = 3) {\n}\n',
    messages: [
      "`back` is a word of the language and cannot be a name. Choose another, such as `my-back`.",
      "`row` is a word of the language and cannot be a name. Choose another, such as `my-row`.",
    ],
  },
  {
    name: "names that are said to be several in other words",
    text: "metric miss is «left», right\n\nmetric hit is one of left «or» right\n",
    messages: [
      "Say that it is one of several names: `is one of`.",
      "A comma stands between the members of a list: write `,` for `or`.",
    ],
    fixed: "metric miss is one of left, right\n\nmetric hit is one of left, right\n",
  },
  {
    name: "a window without its words",
    text: "window «Path»: is club-path within ±2°\n",
    messages: ['Texts and names like this one stand in quotation marks: "Path".'],
    fixed: 'window "Path" is club-path within ±2°\n',
  },
  {
    name: "a window that does not say is",
    text: 'window "A"«:» is club-path within ±2°\n\nwindow "B" «club-path» within ±2°\n\nwindow "C" {\n  «club-path» within ±2°\n  for driver «club-path» within ±3°\n}\n',
    messages: [
      "No : stands between the words of a statement: take it out.",
      "What a window asks for stands behind `is`: `is club-path within …`.",
      "What a window asks for stands behind `is`: `is club-path within …`.",
      "What a window asks for stands behind `is`: `is club-path within …`.",
    ],
    fixed:
      'window "A" is club-path within ±2°\n\nwindow "B" is club-path within ±2°\n\nwindow "C" {\n  is club-path within ±2°\n  for driver is club-path within ±3°\n}\n',
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
    name: "steps with arrows",
    text: 'curriculum "Irons" {\n  step "A" «->» "B"\n  step "C" «→» step "D"\n  step "E" after "A" «and» "B"\n}\n',
    messages: [
      'A step has a line of its own and says what comes before it: `step "B" after "A"`.',
      'A step has a line of its own and says what comes before it: `step "D" after "C"`.',
      "A comma stands between the members of a list: write `,` for `and`.",
    ],
    fixed:
      'curriculum "Irons" {\n  step "A"\n  step "B" after "A"\n  step "C"\n  step "D" after "C"\n  step "E" after "A", "B"\n}\n',
  },
  {
    name: "a plan in a curriculum",
    text: 'curriculum "Irons" {\n  «plan» "A"\n}\n',
    messages: ["`plan` is `step` here."],
    fixed: 'curriculum "Irons" {\n  step "A"\n}\n',
  },
  {
    name: "a finding that does not say when",
    text: 'finding "Cut" {\n  «average» carry at least 150 yd\n  «if» average carry at least 150 yd\n  «cause» "the grip"\n}\n',
    messages: [
      "What is seen when the pattern is there stands behind `when`.",
      "`if` is `when` here.",
      "`cause` is `suspect` here.",
    ],
    fixed:
      'finding "Cut" {\n  when average carry at least 150 yd\n  when average carry at least 150 yd\n  suspect "the grip"\n}\n',
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
    name: "a word that stands too far back",
    text: 'player "P-1" {\n  usual carry 150 yd with 7-iron «spread» 6 yd\n}\n',
    messages: [
      "The statement is complete before `spread`, which can stand further to the front of it. Put it there, or take the rest out.",
    ],
  },
];
