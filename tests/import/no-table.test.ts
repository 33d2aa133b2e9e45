/** Files that lie about among tables are named for what they are. */
import { expect, test } from "vitest";
import { whyNoTable } from "../../server/import/table/no-table.ts";

test.each([
  ["a list", "- club: 7i\n  carry: 150.2\n- club: 7i\n  carry: 151.0\n"],
  ["a list under a name", "---\r\nshots:\r\n  - club: 7i\r\n    carry: 150.2\r\n"],
  ["keys in quotation marks", '- "club": 7i\n  "carry": 150\n'],
])("YAML: %s", (_, text) => {
  expect(whyNoTable(text)).toBe(
    "This is YAML, not a table of text. Export the shots as CSV or JSON and name that file.",
  );
});

test.each([
  ["a remark above the names", "- Hall: 2\nClub,Carry\n7i,150\n"],
  ["two remarks above the names", "Hall: 2\nDay: Monday\nClub,Carry\n7i,150\n"],
  ["a table with dashes", "-;Club: used;Carry\n-;7i;150\n"],
])("but not %s", (_, text) => {
  expect(whyNoTable(text)).toBeUndefined();
});
