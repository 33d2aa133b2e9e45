/** What is written into the files: plans as coaches write them, and the same as JSON with a schema. */

/** Blocks of ten lines each. */
export function planText(lines: number): string {
  const blocks = Array.from({ length: blocksIn(lines) }, (_, index) =>
    [
      `  block "Gate ${index}" blocked {`,
      "    18 shots",
      '    cue "Brush the grass a hand past the ball"',
      "    target club-path within 2° of 1° in-to-out",
      "    require attack-angle between 2° down and 6° down",
      "    success {",
      "      at least 12 of 18 shots on target",
      "      spread of start-direction at most 2.5°",
      "    }",
      "  }",
    ].join("\n"),
  );
  return `plan "Bench" {\n  for 7-iron\n  time 55 min\n${blocks.join("\n")}\n}\n`;
}

/** About 60 lines over a file of windows that all plans share, and one of drills that some do. */
export function linkedPlanText(number: number): string {
  const drills = drillsFile(number);
  const blocks = Array.from({ length: 4 }, (_, index) =>
    [
      `  block "Gate ${index}" from "Start-line gate ${drills}" with width = ${2 + index}°, hits = 11 {`,
      '    cue "Brush the grass a hand past the ball"',
      "    target club-path within 2° of 1° in-to-out",
      "  }",
      `  block "Proof ${index}" test {`,
      "    18 shots",
      "    require attack-angle between 2° down and 6° down",
      "    success {",
      "      at least 12 of 18 shots on target",
      '      at least 9 of 18 shots inside "Neutral path"',
      "      spread of start-direction at most 2.5°",
      "    }",
      "    target start-direction within ±3°",
      "  }",
    ].join("\n"),
  );
  return `use "../shared/windows.drill"\nuse "../shared/drills-${drills}.drill"\n\nplan "Week ${number}" {\n  for 7-iron\n  time 55 min\n${blocks.join("\n")}\n}\n`;
}

export const DRILLS_FILES = 20;

function drillsFile(number: number): number {
  return number % DRILLS_FILES;
}

export const WINDOWS_TEXT = `window "Neutral path" {
  is club-path within 2° of 1° in-to-out
  for driver is club-path within 3° of 2° in-to-out
}
window "Straight" is face-to-path within ±2°
`;

export function drillsText(number: number): string {
  return `drill "Start-line gate ${number}" (width: angle = 3°, hits: ratio = 12) blocked {
  18 shots
  cue "Brush the grass"
  target start-direction within ±width
  require attack-angle between 2° down and 6° down
  success {
    at least hits of 18 shots on target
    3 in a row on target
  }
}
`;
}

export const SCHEMA = {
  type: "object",
  required: ["plan", "blocks"],
  properties: {
    plan: { type: "string" },
    blocks: {
      type: "array",
      items: {
        type: "object",
        required: ["name", "kind", "shots", "success"],
        additionalProperties: false,
        properties: {
          name: { type: "string" },
          kind: { enum: ["warm-up", "baseline", "blocked", "test"] },
          shots: { type: "integer", minimum: 1 },
          cue: { type: "string" },
          target: {
            type: "object",
            required: ["metric"],
            properties: { metric: { enum: ["club-path", "carry"] } },
          },
          success: { type: "array", items: { type: "object" } },
        },
      },
    },
  },
};

export function jsonText(lines: number): string {
  const blocks = Array.from({ length: blocksIn(lines) }, (_, index) =>
    [
      "    {",
      `      "name": "Gate ${index}",`,
      '      "kind": "blocked",',
      '      "shots": 18,',
      '      "cue": "Brush the grass a hand past the ball",',
      '      "target": { "metric": "club-path", "within": 2, "of": 1 },',
      '      "success": [',
      '        { "atLeast": 12, "of": 18 }, { "spread": "start-direction", "atMost": 2.5 }',
      "      ]",
      "    }",
    ].join("\n"),
  );
  return `{\n  "plan": "Bench",\n  "blocks": [\n${blocks.join(",\n")}\n  ]\n}\n`;
}

function blocksIn(lines: number): number {
  return Math.max(1, Math.round((lines - 4) / 10));
}
