/** Units as people write them beside numbers and in headers. */

/** Spellings, folded, of the units that tables use, beside their own symbols. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  "°": ["º", "deg", "degs", "degree", "degrees", "grad"],
  m: ["metre", "metres", "meter", "meters", "mtr", "mtrs"],
  cm: ["centimetre", "centimetres", "centimeter", "centimeters"],
  mm: ["millimetre", "millimetres", "millimeter", "millimeters"],
  yd: ["yds", "yard", "yards"],
  ft: ["feet", "foot", "'"],
  in: ["inch", "inches", "ins", '"'],
  s: ["sec", "secs", "second", "seconds"],
  ms: ["msec", "msecs", "millisecond", "milliseconds"],
  "m/s": ["mps", "ms-1", "m·s-1", "metres/second", "meters/second", "m/sec"],
  "km/h": ["kph", "kmh", "kmph", "km/hr"],
  mph: ["miles/h", "miles/hour", "mi/h", "mp/h"],
  rpm: ["r/min", "rev/min", "revs/min", "1/min", "min-1", "u/min", "rpms"],
  "°/s": ["deg/s", "deg/sec"],
  "%": ["pct", "percent", "per cent"],
};

const SYMBOLS = new Map(
  Object.entries(SPELLINGS).flatMap(([symbol, words]) =>
    [symbol, ...words].map((word) => [foldUnit(word), symbol] as const),
  ),
);

/** The symbol of the unit that a text is, as the library writes it; undefined where it is none that is known. */
export function symbolOf(text: string): string | undefined {
  return SYMBOLS.get(foldUnit(text));
}

/** A unit without regard to case, full stops and spaces. */
export function foldUnit(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s.]+/g, "")
    .replace(/^º/, "°");
}
