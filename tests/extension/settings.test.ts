import fc from "fast-check";
import { expect, test } from "vitest";
import { DEFAULT_SETTINGS, SETTINGS, settingsFrom } from "../../shared/settings.ts";

test("a section says what differs from the defaults", () => {
  expect(settingsFrom({ verdicts: { show: false, levels: { missed: "error" } } })).toEqual({
    ...DEFAULT_SETTINGS,
    "drillwright.verdicts.show": false,
    "drillwright.verdicts.levels.missed": "error",
  });
});

test("a value that a setting does not admit leaves its default", () => {
  const section = {
    verdicts: { show: "no", lens: 0, levels: { met: "loud", undecided: "toString" } },
    trace: null,
  };
  expect(settingsFrom(section)).toEqual(DEFAULT_SETTINGS);
});

test("whatever an editor hands out, every setting has a value that it admits", () => {
  fc.assert(
    fc.property(fc.anything(), fc.anything(), (verdicts, trace) => {
      for (const section of [verdicts, { verdicts, trace }]) {
        const settings = Object.entries(settingsFrom(section));
        expect(settings.map(([name]) => name)).toEqual(Object.keys(SETTINGS));
        for (const [name, value] of settings) {
          const setting = SETTINGS[name as keyof typeof SETTINGS];
          expect(setting.type === "boolean" ? [true, false] : Object.keys(setting.choices)).toContain(value);
        }
      }
    }),
  );
});
