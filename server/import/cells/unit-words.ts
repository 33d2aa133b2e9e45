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
  s: ["sec", "secs", "second", "seconds", "sek", "sekunde", "sekunden"],
  ms: ["msec", "msecs", "millisecond", "milliseconds"],
  "m/s": ["mps", "ms-1", "m·s-1", "metres/second", "meters/second", "m/sec", "m/sek"],
  "km/h": ["kph", "kmh", "kmph", "km/hr", "km/t", "km/std", "kilometres/hour", "kilometers/hour"],
  mph: ["miles/h", "miles/hour", "mi/h", "mp/h"],
  rpm: [
    "r/min",
    "rev/min",
    "revs/min",
    "1/min",
    "min-1",
    "u/min",
    "tr/min",
    "rpms",
    "revs/minute",
    "revolutions/minute",
  ],
  "°/s": ["deg/s", "deg/sec"],
  // No reading can be given in these: they are known so that none is taken for another.
  "ft/s": ["fps", "feet/s", "feet/second", "ft/sec"],
  kn: ["kt", "kts", "knot", "knots"],
  km: ["kilometre", "kilometres", "kilometer", "kilometers"],
  mi: ["mile", "miles"],
  "rev/s": ["rps", "hz", "1/s", "u/s"],
  krpm: [],
  "rad/s": [],
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

/** A unit without regard to case, full stops, spaces and raised figures: `m s⁻¹` is `ms-1`, `miles per hour` is `miles/hour`. */
export function foldUnit(text: string): string {
  return text
    .toLowerCase()
    .replace(/\sper\s/g, "/")
    .replace(/[\s.]+/g, "")
    .replace(/[⁻−–]/g, "-")
    .replace(/¹$/, "1")
    .replace(/^º/, "°");
}
