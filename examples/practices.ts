/**
 * What truly happened in the practices of the examples: who hit what, and how able they were while they did.
 *
 * Abilities are stated as a right-hander says them: out-to-in and closed are negative, for either hand.
 */
import type { Ability, Task } from "../tests/support/generator.ts";

/** A block of a practice, as it was hit: which may be fewer or more shots than the plan asks for. */
export interface Exercise {
  readonly name: string;
  readonly tasks: readonly (Task & { readonly shots: number })[];
  /** One task after the other; each in turn; or as somebody called them. */
  readonly order?: "turn" | "called";
}

export interface Practice {
  readonly seed: number;
  readonly hand: "right" | "left";
  readonly date: string;
  /** Hours and minutes. */
  readonly begins: string;
  readonly exercises: readonly Exercise[];
  /** Files under `data/` the practice was exported to. */
  readonly hall?: string;
  readonly field?: string;
  /** Shots that were marked as not counting, by number from 1. */
  readonly marked?: readonly number[];
  /** Cells that hold something else than was measured, by number of the shot and column. */
  readonly spoilt?: readonly { readonly shot: number; readonly column: string; readonly text: string }[];
  /** Columns that stayed empty. */
  readonly empty?: readonly string[];
}

/** One swing with several clubs: what varies with the club is its speed, loft and best strike. */
function swing(
  attack: Ability["attack"],
  path: Ability["path"],
  faceToPath: Ability["faceToPath"],
  strikeCost: number,
) {
  return (clubSpeed: Ability["clubSpeed"], loft: number, bestSmash: number): Ability => ({
    clubSpeed,
    attack,
    path,
    faceToPath,
    loft: [loft, 1.2],
    bestSmash,
    strikeCost,
  });
}

type Swing = ReturnType<typeof swing>;

const sevenIron = (of: Swing) => of([36.4, 0.6], 24.5, 1.39);
const pitchingWedge = (of: Swing) => of([33.4, 0.6], 35, 1.27);
const gapWedge = (of: Swing) => of([32.4, 0.6], 39, 1.22);

// P-07: a cut that becomes a straight ball within one lesson, and half a cut again a week later.
const cut = swing([-4.1, 0.9], [-5.2, 1.6], [3.6, 1.5], 0.02);
const gated = swing([-3.9, 0.9], [0.7, 1.5], [1.2, 1.5], 0.02);
const proved = swing([-3.9, 0.9], [0.3, 1.5], [0.9, 1.4], 0.018);
const weekLater = swing([-4.0, 0.9], [-1.2, 1.7], [1.4, 1.5], 0.02);
const windows = swing([-3.9, 0.8], [1.0, 1.3], [0.6, 1.3], 0.018);

// P-12: the same cut, left-handed. The path comes back a little in the lesson; the face does not follow yet.
const otherCut = swing([-4.6, 1.0], [-6.0, 1.8], [4.4, 1.8], 0.025);
const otherGated = swing([-4.2, 1.1], [-0.4, 2.1], [3.6, 1.9], 0.025);
const otherProved = swing([-4.3, 1.1], [-2.6, 2.0], [3.4, 1.9], 0.022);

// P-07 with the long irons: helps the ball up, then does not.
const helping = swing([-0.9, 1.0], [-1.0, 1.7], [1.0, 1.6], 0.024);
const striking = swing([-3.0, 1.0], [-0.8, 1.7], [0.9, 1.6], 0.022);
const fiveIron = (of: Swing, loft: number) => of([38.8, 0.5], loft, 1.43);
const nineIron = (of: Swing) => of([34.2, 0.5], 31, 1.31);

// P-21: good hands, and a driver that goes down.
const pitch = (speed: Ability["clubSpeed"], loft: number): Ability =>
  swing([-3.8, 0.8], [-0.6, 1.4], [0.5, 1.4], 0.012)(speed, loft, 1.16);
const sixty = (deviation: number) => pitch([24.9, deviation], 42);
const fortyFive = (deviation: number) => pitch([21.9, deviation], 45);
const downOnIt = swing([-3.1, 1.1], [-1.8, 1.8], [1.9, 2.2], 0.02);
const tilted = swing([0.9, 1.4], [0.2, 1.9], [1.2, 2.2], 0.02);
const driver = (of: Swing, loft: number) => of([44.6, 0.6], loft, 1.48);
const spareIron = swing([-3.5, 1], [-1.5, 1.7], [1, 1.7], 0.02);

/** The lesson of "Seven-iron: from cut to start line". */
function lesson(
  before: Swing,
  during: Swing,
  after: Swing,
  hits: { gate: number; test: number },
): Exercise[] {
  return [
    {
      name: "Wake up",
      tasks: [
        { club: "gap-wedge", shots: 8, effort: 0.5, ability: gapWedge(before) },
        { club: "7-iron", shots: 8, effort: 0.7, ability: sevenIron(before) },
      ],
    },
    { name: "Where we are", tasks: [{ club: "7-iron", shots: 12, ability: sevenIron(before) }] },
    { name: "Gate", tasks: [{ club: "7-iron", shots: hits.gate, ability: sevenIron(during) }] },
    {
      name: "Called clubs",
      order: "called",
      tasks: [
        { club: "7-iron", shots: 6, ability: sevenIron(after) },
        { club: "pitching-wedge", shots: 6, ability: pitchingWedge(after) },
      ],
    },
    { name: "Prove it", tasks: [{ club: "7-iron", shots: hits.test, ability: sevenIron(after) }] },
  ];
}

export const practices: readonly Practice[] = [
  {
    seed: 7,
    hand: "right",
    date: "2026-09-14",
    begins: "17:30",
    hall: "p07-start-line.csv",
    // Two more shots than the test asks for, because the last one felt so good.
    exercises: lesson(cut, gated, proved, { gate: 19, test: 14 }),
    marked: [3, 36],
    // A letter O for a nought.
    spoilt: [{ shot: 53, column: "Start (°)", text: "O,6" }],
  },
  {
    seed: 71,
    hand: "right",
    date: "2026-09-21",
    begins: "18:05",
    field: "p07-week-later.csv",
    exercises: [
      {
        name: "Wake up",
        tasks: [
          { club: "gap-wedge", shots: 6, effort: 0.5, ability: gapWedge(weekLater) },
          { club: "7-iron", shots: 6, effort: 0.7, ability: sevenIron(weekLater) },
        ],
      },
      { name: "Cold look", tasks: [{ club: "7-iron", shots: 12, ability: sevenIron(weekLater) }] },
      {
        name: "One club more",
        tasks: [{ club: "6-iron", shots: 10, ability: weekLater([37.4, 0.6], 21.5, 1.41) }],
      },
    ],
    // The sun stood low: twice the face could not be seen.
    spoilt: [
      { shot: 17, column: "Face angle", text: "-" },
      { shot: 22, column: "Face angle", text: "" },
    ],
  },
  {
    seed: 77,
    hand: "right",
    date: "2026-10-19",
    begins: "16:40",
    field: "p07-two-windows.csv",
    exercises: [
      {
        name: "Wake up",
        tasks: [
          { club: "gap-wedge", shots: 6, effort: 0.5, ability: gapWedge(weekLater) },
          { club: "7-iron", shots: 6, effort: 0.7, ability: sevenIron(weekLater) },
        ],
      },
      { name: "Where we are", tasks: [{ club: "7-iron", shots: 12, ability: sevenIron(weekLater) }] },
      { name: "Wide gate", tasks: [{ club: "7-iron", shots: 12, ability: sevenIron(gated) }] },
      { name: "Narrow gate", tasks: [{ club: "7-iron", shots: 12, ability: sevenIron(proved) }] },
      { name: "Prove it", tasks: [{ club: "7-iron", shots: 14, ability: sevenIron(windows) }] },
    ],
  },
  {
    seed: 12,
    hand: "left",
    date: "2026-09-16",
    begins: "10:00",
    hall: "p12-start-line-hall.csv",
    field: "p12-start-line-field.csv",
    exercises: lesson(otherCut, otherGated, otherProved, { gate: 21, test: 12 }),
    marked: [31, 44],
  },
  {
    seed: 75,
    hand: "right",
    date: "2026-09-07",
    begins: "16:15",
    field: "p07-ball-first.csv",
    exercises: [
      {
        name: "Wake up",
        tasks: [
          { club: "pitching-wedge", shots: 6, effort: 0.5, ability: pitchingWedge(helping) },
          { club: "7-iron", shots: 6, effort: 0.7, ability: sevenIron(helping) },
        ],
      },
      { name: "Where we are", tasks: [{ club: "5-iron", shots: 10, ability: fiveIron(helping, 19.5) }] },
      { name: "Chalk line", tasks: [{ club: "5-iron", shots: 16, ability: fiveIron(striking, 18.5) }] },
      {
        name: "Down the bag",
        order: "turn",
        tasks: [
          { club: "5-iron", shots: 4, ability: fiveIron(striking, 18.5) },
          { club: "7-iron", shots: 4, ability: sevenIron(striking) },
          { club: "9-iron", shots: 4, ability: nineIron(striking) },
        ],
      },
      { name: "Keep it", tasks: [{ club: "5-iron", shots: 12, ability: fiveIron(striking, 18.5) }] },
    ],
    marked: [30],
  },
  {
    seed: 21,
    hand: "right",
    date: "2026-10-09",
    begins: "09:40",
    hall: "p21-wedges.csv",
    // The hall closed in the middle of the called lengths.
    exercises: [
      {
        name: "Wake up",
        tasks: [
          { club: "sand-wedge", shots: 6, effort: 0.4, ability: fortyFive(0.6) },
          { club: "gap-wedge", shots: 6, effort: 0.5, ability: sixty(0.6) },
        ],
      },
      { name: "Sixty as it comes", tasks: [{ club: "gap-wedge", shots: 10, ability: sixty(0.9) }] },
      { name: "Sixty", tasks: [{ club: "gap-wedge", shots: 12, ability: sixty(0.38) }] },
      { name: "Forty-five", tasks: [{ club: "sand-wedge", shots: 10, ability: fortyFive(0.5) }] },
      {
        name: "Called lengths",
        order: "called",
        tasks: [
          { club: "gap-wedge", shots: 5, ability: sixty(0.45) },
          { club: "sand-wedge", shots: 5, ability: fortyFive(0.45) },
        ],
      },
    ],
  },
  {
    seed: 210,
    hand: "right",
    date: "2026-10-20",
    begins: "14:20",
    field: "p21-up-on-it.csv",
    exercises: [
      {
        name: "Wake up",
        tasks: [
          { club: "7-iron", shots: 6, effort: 0.5, ability: sevenIron(spareIron) },
          { club: "driver", shots: 4, effort: 0.6, ability: driver(downOnIt, 13) },
          { club: "driver", shots: 4, effort: 0.8, ability: driver(downOnIt, 13) },
        ],
      },
      { name: "Where we are", tasks: [{ club: "driver", shots: 10, ability: driver(downOnIt, 12.5) }] },
      { name: "Tilt", tasks: [{ club: "driver", shots: 16, ability: driver(tilted, 14) }] },
      { name: "Fairway", tasks: [{ club: "driver", shots: 14, ability: driver(tilted, 14) }] },
    ],
    marked: [27],
    // Outside, the spin of a scuffed range ball cannot be seen.
    empty: ["Spin rate", "Spin axis"],
  },
];
