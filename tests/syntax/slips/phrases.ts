/** What is said in another order or form than the language has it. */
import { block, plan, type Slip } from "./slip.ts";

export const SLIPS: readonly Slip[] = [
  {
    name: "a block that has only a kind",
    text: plan("«warmup» {", "  10 shots", "}"),
    messages: ['A block has a name, and its kind stands behind it: `block "Warm up" warm-up`.'],
    fixed: plan('block "Warm up" warm-up {', "  10 shots", "}"),
  },
  {
    name: "wind that begins with its side",
    text: 'session "First" {\n  «headwind 5 mph»\n}\n',
    messages: ["Wind is written `wind 5 mph head`."],
    fixed: 'session "First" {\n  wind 5 mph head\n}\n',
  },
  {
    name: "a name in three words, and one with a word of the language in it",
    text: block("10 shots", "target «face to path» within ±2°", "target «smash factor» at least 1.3"),
    messages: [
      "The parts of a name are joined by hyphens: `face-to-path`.",
      "The parts of a name are joined by hyphens: `smash-factor`.",
    ],
    fixed: block("10 shots", "target face-to-path within ±2°", "target smash-factor at least 1.3"),
  },
  {
    name: "an article",
    text: block(
      "10 shots",
      "target shape is «a» draw",
      "success {",
      "  at least 8 of 10 shots on «the» target",
      "}",
    ),
    messages: ["No article stands here: take `a` out.", "No article stands here: take `the` out."],
    fixed: block("10 shots", "target shape is draw", "success {", "  at least 8 of 10 shots on target", "}"),
  },
  {
    name: "shots that do not count, in other words",
    text: block(
      "10 shots",
      "«exclude shots with» carry below 50 yd",
      "«ignore» carry below 50 yd",
      "«drop the shots that have» carry below 50 yd",
      "«leave out shots with» smash-factor below 1.1",
      "«leave out» smash-factor below 1.1",
    ),
    messages: Array(5).fill("What does not count is said with `leave out shots where`."),
    fixed: block(
      "10 shots",
      "leave out shots where carry below 50 yd",
      "leave out shots where carry below 50 yd",
      "leave out shots where carry below 50 yd",
      "leave out shots where smash-factor below 1.1",
      "leave out shots where smash-factor below 1.1",
    ),
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
    name: "a word left out of a phrase",
    text: block("success 3 in «row» on target"),
    messages: ["Found `row` where `a` was expected."],
    fixed: block("success 3 in a row on target"),
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
    name: "a range in other words",
    text: block(
      "target club-path «from 1° to 3°» in-to-out",
      "target carry «150 yd - 160 yd»",
      "target club-path within 2° «in to out»",
    ),
    messages: [
      "A range is written `between 1° and 3°`.",
      "A range is written `between 150 yd and 160 yd`.",
      "The parts of a name are joined by hyphens: `in-to-out`.",
    ],
    fixed: block(
      "target club-path between 1° and 3° in-to-out",
      "target carry between 150 yd and 160 yd",
      "target club-path within 2° in-to-out",
    ),
  },
  {
    name: "around zero, without its word",
    text: block("target club-path «±2°»", "target club-path «= ±2°»"),
    messages: Array(2).fill("How close it must be is written `within ±2°`."),
    fixed: block("target club-path within ±2°", "target club-path within ±2°"),
  },
  {
    name: "sets of shots, and a club behind its number",
    text: block("«3 x 10 shots»", "«2 sets of 8 shots»", "«10 x 7-iron»", "10 shots «7-iron»"),
    messages: [
      "Shots are counted as a whole: `30 shots`.",
      "Shots are counted as a whole: `16 shots`.",
      "How many shots with which club is written `10 shots with 7-iron`.",
      "The club stands behind `with`.",
    ],
    fixed: block("30 shots", "16 shots", "10 shots with 7-iron", "10 shots with 7-iron"),
  },
  {
    name: "the kind of a block in place of its word",
    text: plan('«warmup "Wake up"» {', "  10 shots", "}", '«test "Prove it"» {', "  10 shots", "}"),
    messages: [
      'The kind of a block stands behind its name: `block "Wake up" warm-up`.',
      'The kind of a block stands behind its name: `block "Prove it" test`.',
    ],
    fixed: plan('block "Wake up" warm-up {', "  10 shots", "}", 'block "Prove it" test {', "  10 shots", "}"),
  },
  {
    name: "the unit of a column without its word",
    text: 'source "Hall" {\n  column "Path" is club-path «°»\n  column "Carry" is carry «(yd)»\n}\n',
    messages: [
      "The unit of a column stands behind `in`: `in °`.",
      "The unit of a column stands behind `in`: `in yd`.",
    ],
    fixed: 'source "Hall" {\n  column "Path" is club-path in °\n  column "Carry" is carry in yd\n}\n',
  },
  {
    name: "clubs as people write them short",
    text: block("10 shots with «7iron»", "8 shots with «3w»"),
    messages: [
      "The parts of a name are joined by hyphens: `7-iron`.",
      "The parts of a name are joined by hyphens: `3-wood`.",
    ],
    fixed: block("10 shots with 7-iron", "8 shots with 3-wood"),
  },
  {
    name: "the kind of a block in two words, and one that is known by another spelling",
    text: plan(
      'block "One" «warm up» {',
      "  5 shots",
      "}",
      'block "Two" «free play» {',
      "  5 shots",
      "}",
      'block "Three" «warmup» {',
      "  5 shots",
      "}",
    ),
    messages: [
      "The parts of a name are joined by hyphens: `warm-up`.",
      "The parts of a name are joined by hyphens: `free-play`.",
      "`warmup` is `warm-up` here.",
    ],
    fixed: plan(
      'block "One" warm-up {',
      "  5 shots",
      "}",
      'block "Two" free-play {',
      "  5 shots",
      "}",
      'block "Three" warm-up {',
      "  5 shots",
      "}",
    ),
  },
];
