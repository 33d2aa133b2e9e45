/** Files that lie about among tables, and hold no text of one. */

/** What they are, and the texts they begin with. */
const KINDS = {
  "a workbook or an archive": ["pk\u0003\u0004"],
  "a PDF": ["%pdf-"],
  "a web page or XML, whatever its name says": ["<!doctype", "<html", "<table", "<body", "<?xml"],
} as const;

/** A list of mappings with a key on each line, alone or under a name. */
const YAML =
  /^(?:---[^\n]*\n)?(?:[\p{L}_][^:\n]*:[ \t]*\n)?[ \t]*- +[\p{L}_"'][^:\n]*:(?: [^\n]*)?\n[ \t]+[\p{L}_"'][^:\n]*:(?: |\n)/u;

/** What a text is that is no table, and what to do instead, by its beginning; undefined where it may be one. */
export function whyNoTable(text: string): string | undefined {
  const beginning = text.slice(0, 200).trimStart().toLowerCase();
  for (const [what, beginnings] of Object.entries(KINDS)) {
    if (beginnings.some((start) => beginning.startsWith(start)))
      return `This is ${what}, not a table of text. Export the shots as CSV and name that file.`;
  }
  if (YAML.test(text.slice(0, 2000).replace(/\r\n?/g, "\n")))
    return "This is YAML, not a table of text. Export the shots as CSV or JSON and name that file.";
  return undefined;
}

/** What to say of a text that holds NUL, which no text does. */
export function whyBinary(text: string): string {
  return (
    whyNoTable(text) ??
    "This is no table of text: it holds bytes that no text has. Export the shots as CSV and name that file."
  );
}
