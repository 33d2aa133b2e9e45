/** Lists, parameters and arguments. */
import { plan, type Slip } from "./slip.ts";

export const SLIPS: readonly Slip[] = [
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
    name: "names that are said to be several in other words",
    text: "metric miss is «left», right\n\nmetric hit is one of left «or» right\n",
    messages: [
      "Say that it is one of several names: `is one of`.",
      "A comma stands between the members of a list: write `,` for `or`.",
    ],
    fixed: "metric miss is one of left, right\n\nmetric hit is one of left, right\n",
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
];
