import { describe, expect, test } from "vitest";
import type { Finding } from "../../shared/plan-model.ts";
import { finding, plan, score, table } from "./practice.ts";

/** Faces that are about 3° open to the path, and paths about 1° out-to-in. */
const openFaces = table(`
  face-to-path club-path club
  3.0          -1        7-iron
  2.5          -0.5      7-iron
  3.5          -1.5      7-iron
  2.8          -1        7-iron
  3.2          -1.2      7-iron
  2.9          -0.8      7-iron
  -4           6         driver
`);

const baseline = { name: "Gate", kind: "baseline", shots: 7 } as const;

function found(...findings: readonly Finding[]) {
  const [block] = score({ ...plan(baseline), findings: [...findings] }, openFaces).blocks;
  return block?.findings ?? [];
}

const open = finding("Open face", ["average face-to-path at least 2° open"], ["7-iron"]);
const outToIn = finding("Out-to-in", ["average club-path at least 0.9° out-to-in"], ["7-iron"]);
const closed = finding("Closed face", ["average face-to-path at least 2° closed"], ["7-iron"]);

describe("a finding", () => {
  test("is open while the baseline still asks for shots", () => {
    const more = { ...plan({ ...baseline, shots: 9 }), findings: [open] };
    expect(score(more, openFaces).blocks[0]?.findings).toMatchObject([
      { verdict: "undecided", strength: null },
    ]);
  });

  test("is shown where all its criteria are met over the shots with its clubs", () => {
    expect(found(open)).toMatchObject([
      {
        name: "Open face",
        verdict: "met",
        criteria: [{ id: "Open face/1", evidence: { shotsUsed: 6 } }],
        suspects: ["the grip"],
        checks: ["Where the thumb sits"],
        tries: [{ drill: "Gate drill", text: '"Gate drill" with width = 4°' }],
      },
    ]);
    expect(found(closed)[0]).toMatchObject({ verdict: "missed", strength: null });
  });

  test("without clubs looks at all shots of the baseline", () => {
    const all = finding("All", ["at least 7 of 7 shots with club-path within ±9°"]);
    expect(found(all)).toMatchObject([{ verdict: "met" }]);
  });

  test("says at which confidence it would still be shown as ability", () => {
    const [strong, weak] = found(outToIn, open);
    expect([strong?.name, weak?.name]).toEqual(["Open face", "Out-to-in"]);
    expect(strong?.strength).toBe(0.999);
    // t = (0.1/0.3406)·√6 = 0.719 with 5 degrees of freedom: P(T ≤ t) = 0.748
    expect(weak?.strength).toBeCloseTo(0.748, 2);
    expect(weak?.strength).toBeLessThanOrEqual(0.748);
  });

  test("is as strong as its weakest criterion, and as its needed parts", () => {
    const both = finding(
      "Both",
      ["average face-to-path at least 2° open", "average club-path at least 0.9° out-to-in"],
      ["7-iron"],
    );
    const either = finding(
      "Either",
      ["any of { average face-to-path at least 2° open / average club-path at least 0.9° out-to-in }"],
      ["7-iron"],
    );
    const [weaker] = found(both);
    const [stronger] = found(either);
    expect(weaker?.strength).toBeCloseTo(0.748, 2);
    expect(stronger?.strength).toBe(0.999);
  });

  test("that needs so many of its parts is as strong as the last one that it needs", () => {
    const strengthOf = (needed: string) => {
      const parts = [
        "average face-to-path at least 2° closed",
        "average club-path at least 0.9° out-to-in",
        "average face-to-path at least 2° open",
      ];
      const [only] = found(finding("Some", [`${needed} of { ${parts.join(" / ")} }`], ["7-iron"]));
      return only?.strength;
    };
    expect(strengthOf("1")).toBe(0.999);
    expect(strengthOf("any")).toBe(0.999);
    expect(strengthOf("2")).toBeCloseTo(0.748, 2);
    expect(strengthOf("3")).toBeNull(); // it is not met
  });

  test("about the shots hit alone has no strength", () => {
    const best = finding("Best", ["best face-to-path at least 1° open"], ["7-iron"]);
    const some = finding("Some", ["at least 3 of 6 shots with face-to-path at least 1° open"], ["7-iron"]);
    for (const { verdict, strength } of found(some, best))
      expect({ verdict, strength }).toEqual({ verdict: "met", strength: null });
  });

  test("counts over all shots there are where it says no number", () => {
    const [any] = finding(
      "Any",
      ["at least 6 of 9 shots with face-to-path at least 1° open"],
      ["7-iron"],
    ).when;
    const ofAll = {
      ...open,
      when: [{ ...(any as Extract<typeof any, { kind: "count" }>), outOf: null }],
    };
    const [{ verdict, criteria } = { verdict: null, criteria: [] }] = found(ofAll);
    expect(verdict).toBe("met");
    expect(criteria[0]?.evidence.required).toMatch(/^at least 6 of 6 shots/);
  });

  test("minds no requirement of the baseline: a pattern is no success", () => {
    const demanding = { ...baseline, require: "club-path at least 5° in-to-out" };
    const report = score({ ...plan(demanding), findings: [open] }, openFaces);
    expect(report.blocks[0]?.findings).toMatchObject([{ verdict: "met" }]);
  });
});

test("findings are looked for in baselines alone", () => {
  const report = score({ ...plan({ ...baseline, kind: "test" }), findings: [open] }, openFaces);
  expect(report.blocks[0]?.findings).toEqual([]);
});
