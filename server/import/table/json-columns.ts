/** JSON that is written column by column: `{"carry": [150, 151], "club": ["7i", "7i"]}`. */

/** The items of each column, by its name, all of them equally many. */
export type JsonColumns = ReadonlyMap<string, readonly unknown[]>;

/** A list under each name; or an object whose keys are the numbers of rows, as programs for statistics write them. */
interface List {
  readonly rows: readonly string[];
  readonly items: readonly unknown[];
}

/** How deep names are joined. */
const DEEPEST = 6;

/**
 * The columns in an object, with names such as `club.path` for what lies deeper, or in the one around all of them. Undefined
 * where it is no table by columns: it holds no lists, none with a number in it, or one beside numbers, which is a shot and a
 * series of it. A sentence where it seems to be one, and what stands in a row cannot be told.
 */
export function columnsOf(value: object): JsonColumns | string | undefined {
  const lists = new Map<string, List>();
  const numbers = collect(value, "", lists, 0);
  const [first] = lists.values();
  if (first === undefined || (numbers > 0 && lists.size === 1)) return undefined;
  if (![...lists.values()].some(({ items }) => items.some((item) => /\d/.test(String(item)))))
    return undefined;
  const rows = first.rows.join();
  if ([...lists.values()].some((list) => list.rows.join() !== rows)) {
    if (numbers > 0) return undefined;
    const lengths = [...lists].map(([name, { items }]) => `${name} ${items.length}`);
    return `its lists are not equally long, or not of the same rows (${lengths.slice(0, 8).join(", ")}), so which readings belong together cannot be told`;
  }
  return inside(value) ?? new Map([...lists].map(([name, { items }]) => [name, items]));
}

/** Where an object holds no list itself: the columns in the only member that has some. */
function inside(value: object): JsonColumns | undefined {
  const members: unknown[] = Object.values(value);
  if (members.some((member) => listOf(member) !== undefined)) return undefined;
  const found = members.flatMap((member) => (isObject(member) ? (columnsOf(member) ?? []) : []));
  const [columns] = found;
  return found.length === 1 && columns instanceof Map ? columns : undefined;
}

/** Collects the lists; how many numbers stand beside them. */
function collect(value: object, prefix: string, lists: Map<string, List>, depth: number): number {
  let numbers = 0;
  for (const [key, member] of Object.entries(value)) {
    const list = listOf(member);
    if (list !== undefined) lists.set(prefix + key, list);
    else if (typeof member === "number") numbers++;
    else if (isObject(member) && depth < DEEPEST)
      numbers += collect(member, `${prefix}${key}.`, lists, depth + 1);
  }
  return numbers;
}

function listOf(member: unknown): List | undefined {
  if (!Array.isArray(member) && !isObject(member)) return undefined;
  const rows = Object.keys(member);
  const items: unknown[] = Object.values(member);
  const isList = Array.isArray(member) || (rows.length > 1 && rows.every((row) => /^\d+$/.test(row)));
  return isList && items.every((item) => typeof item !== "object" || item === null)
    ? { rows, items }
    : undefined;
}

function isObject(value: unknown): value is object {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** On which line, from 1, each item of the first list of so many items begins; all on the first where there is no such list. */
export function linesOfItems(text: string, count: number): number[] {
  let line = 1;
  let lines: number[] = [];
  let isAtItem = false;
  for (const { 0: token } of text.matchAll(/"(?:[^"\\]|\\.)*"|[[\]{},\n]|[^\s"[\]{},]+/g)) {
    if (token === "\n") line++;
    else if (token === "[") [lines, isAtItem] = [[], true];
    else if (token === ",") isAtItem = true;
    else if (token === "]" && lines.length === count) return lines;
    else if (isAtItem) {
      lines.push(line);
      isAtItem = false;
    }
  }
  return Array<number>(count).fill(1);
}
