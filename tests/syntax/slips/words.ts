/** Words that are misspelt, in the wrong place, or in quotation marks or out of them. */
import { block, plan, type Slip } from "./slip.ts";

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
    name: "a keyword as a name",
    text: "metric «target» is angle\n",
    messages: [
      "`target` is a word of the language and cannot be a name. Choose another, such as `my-target`.",
    ],
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
    name: "words of the language in a list of names",
    text: 'metric miss is one of left, «back»\n\ndrill "A" («row»: ratio = 3) {\n}\n',
    messages: [
      "`back` is a word of the language and cannot be a name. Choose another, such as `my-back`.",
      "`row` is a word of the language and cannot be a name. Choose another, such as `my-row`.",
    ],
  },
  {
    name: "a statement in the wrong place",
    text: plan('«cue» "Brush the grass"'),
    messages: ["`cue` cannot stand directly in a `plan`; it belongs in a `block` or in a `drill`."],
  },
  {
    name: "a word that stands too far back",
    text: 'player "P-1" {\n  usual carry 150 yd with 7-iron «spread» 6 yd\n}\n',
    messages: [
      "The statement is complete before `spread`, which can stand further to the front of it. Put it there, or take the rest out.",
    ],
  },
  {
    name: "a statement that goes on too long",
    text: block("10 shots «today» and tomorrow"),
    messages: [
      "The statement is complete before `today`. Take the rest out, or start a new line for the next one.",
    ],
  },
  {
    name: "a text too long to be repeated",
    text: plan(`intent «${"brush ".repeat(20)}the grass»`),
    messages: [
      `Texts and names like this one stand in quotation marks: "${"brush ".repeat(10).slice(0, 59)}….`,
    ],
    fixed: plan(`intent "${"brush ".repeat(20)}the grass"`),
  },
];
