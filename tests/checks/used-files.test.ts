import { expect, test } from "vitest";
import { check } from "./checked-files.ts";

const library = {
  "library/standards.drill": "metric pace is speed\n",
  "library/bags.drill": "club chipper\n",
  "plans/library-day.drill": "metric rhythm is ratio\n",
};

test.each(["./library", "./library/", "library"])("a folder that is used, as %s", async (path) => {
  const found = await check(`use "${path}"\n`, library);
  expect(found.map(({ code, message }) => ({ code, message }))).toEqual([
    {
      code: "used-file-must-exist",
      message: `"${path}" is a folder. Name the file in it that is meant, such as "./library/standards".`,
    },
  ]);
  expect(found[0]?.fixes.map(({ title }) => title)).toEqual([
    'Use "./library/standards"',
    'Use "./library/bags"',
  ]);
});
