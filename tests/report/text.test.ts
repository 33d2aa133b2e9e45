/** What the report for people at a terminal shows. */
import { expect, test } from "vitest";
import { reportText } from "../../server/report/formats/text.ts";
import { PLAIN } from "../../server/report/palette.ts";
import { secondVisit } from "./lesson.ts";

test("a whole report", async () => {
  await expect(reportText(await secondVisit(), PLAIN)).toMatchFileSnapshot("expected/second-visit.txt");
});
