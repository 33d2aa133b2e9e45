/** A mistake in a line of a block leaves what the other lines cannot do together. */
import { expect, test } from "vitest";
import { check } from "../checks/checked-files.ts";
import { underlined } from "../checks/marks.ts";

const shown = async (text: string) =>
  underlined(
    text,
    (await check(text)).map(({ range, code }) => ({ range, message: code })),
  );

test("in targets and goals", async () => {
  const found = await shown(`plan "Gate" {
  block "Start" {
    10 shots
    target club-path within ±2°
    target carry at least 150 °
    require club-path at least 4° in-to-out
  }
  block "End" {
    10 shots
    success {
      average carry at least 150 yd
      average carry at most 140 yd
      at least 12 of 10 shots with carry at least 150 yd
    }
  }
}`);
  expect(found).toBe(`plan "Gate" {
  block "Start" {
    10 shots
    target club-path within ±2°
    target carry at least 150 °
                              ^ unit-must-fit
    require club-path at least 4° in-to-out
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ targets-must-hold-together
  }
  block "End" {
    10 shots
    success {
      average carry at least 150 yd
      average carry at most 140 yd
      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ goals-must-hold-together
      at least 12 of 10 shots with carry at least 150 yd
               ^^ hits-must-not-exceed-shots
    }
  }
}`);
});

test("but goals hang on every target and requirement", async () => {
  const aim = await shown(`plan "Gate" {
  block "Start" {
    10 shots
    target offline within ±8 yd
    target carri at least 150 yd
    success {
      at most 5 of 10 shots on target
      at least 8 of 10 shots with offline within ±5 yd
    }
  }
}`);
  expect(aim.match(/\^ .*/g)).toEqual(["^ name-must-be-known"]);
  const required = await shown(`plan "Gate" {
  block "Start" {
    10 shots
    require carri at least 150 yd
    success {
      worst carry at least 150 yd
      at least 2 of 10 shots with apex at least 20 yd
      at least 1 of 10 shots with total at most 140 yd
    }
  }
}`);
  expect(required.match(/\^ .*/g)).toEqual(["^ name-must-be-known"]);
});

test("in drills", async () => {
  const found = await shown(`drill "Gate" {
  10 shots
  target club-path within ±2°
  cue "Low hands"
  target carry at least 150 °
  leave out shots where club-path within ±3°
}
plan "Gate" {
  block "Start" from "Gate"
}`);
  expect(found).toBe(`drill "Gate" {
  10 shots
  target club-path within ±2°
  cue "Low hands"
  target carry at least 150 °
                            ^ unit-must-fit
  leave out shots where club-path within ±3°
  ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ leave-out-must-spare-the-targets
}
plan "Gate" {
  block "Start" from "Gate"
}`);
});

test("but a line that may stand instead of a drill's says nothing of that", async () => {
  const found = await shown(`drill "Gate" {
  10 shots
  target club-path within ±2°
}
plan "Gate" {
  block "Start" from "Gate" {
    target club-pth between 4° in-to-out and 6° in-to-out
    require club-path at least 3° in-to-out
  }
}`);
  expect(found.match(/\^ .*/g)).toEqual(["^ name-must-be-known"]);
});

test("nor is anything said of a block of which the shots are not known", async () => {
  const found = await shown(`plan "Gate" {
  block "Start" {
    10 shots with 7-irn
    success {
      at least 7 shots with carry at least 150 yd
      at least 7 shots with carry below 140 yd
    }
  }
}`);
  expect(found.match(/\^ .*/g)).toEqual(["^ name-must-be-known"]);
});

test("and what is put right elsewhere in the block is noticed", async () => {
  const text = (unit: string) => `plan "Gate" {
  block "Start" {
    10 shots
    target carry at least 150 ${unit}
    require carry below 140 yd
  }
}`;
  expect((await check(text("°"))).map(({ code }) => code)).toEqual(["unit-must-fit"]);
  expect((await check(text("yd"))).map(({ code }) => code)).toEqual(["targets-must-hold-together"]);
});
