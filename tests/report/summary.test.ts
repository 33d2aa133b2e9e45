import { expect, test } from "vitest";
import { blockSummary } from "../../server/report/summary.ts";
import { scoreBlock, table } from "../scoring/practice.ts";

const three = table("carry\n160\n140\n155");
const goal = { target: "carry at least 150 yd", success: "at least 1 of 2 shots on target" };

test("a block in one line: shots on target of those asked for, and how its goals came out", () => {
  expect(blockSummary(scoreBlock({ ...goal, shots: 4 }, three))).toBe("2 of 4 on target · 1 goal met");
  expect(blockSummary(scoreBlock({ shots: 4 }, three))).toBe("3 of 4 shots");
  expect(blockSummary(scoreBlock({ ...goal, shots: 4 }, []))).toBe("1 goal not measured");
});

test("what the shots to come must bring, where one goal waits for them", () => {
  const wanted = { ...goal, success: "at least 4 of 6 shots on target", shots: 6 };
  const open = "2 of 6 on target · 1 goal undecided, needs 2 of the next 3";
  expect(blockSummary(scoreBlock(wanted, three))).toBe(open);
  const two = { ...wanted, success: [wanted.success, "at least 5 of 6 shots on target"] };
  expect(blockSummary(scoreBlock(two, three))).toBe("2 of 6 on target · 2 goals undecided");
});

test("where the block asks for at least so many, it is out of all that count", () => {
  expect(blockSummary(scoreBlock({ ...goal, shots: "at least 2" }, three))).toBe(
    "2 of 3 on target · 1 goal met",
  );
  expect(blockSummary(scoreBlock({ shots: "at least 2" }, three))).toBe("3 of 3 shots");
});
