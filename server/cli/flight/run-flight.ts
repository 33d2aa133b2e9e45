/** From options and a table to flights in the form that was asked for. */
import type { Hand } from "../../../shared/plan-model.ts";
import { pathOfName } from "../../node/path-names.ts";
import { UnreadableDataError } from "../../node/unreadable-data-error.ts";
import { toolVersion } from "../../node/version.ts";
import { libraryVocabulary } from "../../node/vocabulary.ts";
import type { Palette } from "../../report/palette.ts";
import { printable } from "../../report/printable.ts";
import { UsageError } from "../command.ts";
import { givenTable } from "../given-table.ts";
import type { Io } from "../io.ts";
import { readStdin, STDIN } from "../stdin.ts";
import { AmountReader } from "./amounts.ts";
import { type AirOptions, airIn } from "./conditions.ts";
import { boundsOf, estimatesOf, worthOf } from "./estimates.ts";
import { type LaunchOptions, launchesIn, type StatedLaunch, valuesIn } from "./launches.ts";

export type FlightOptions = LaunchOptions &
  AirOptions & { readonly hand: Hand; readonly format: "text" | "json" | "csv" | "svg" };

export interface FlightOutput {
  readonly output: string;
  /** What to bear in mind: sentences. */
  readonly notes: readonly string[];
}

/** Read once a process. */
let vocabulary: ReturnType<typeof libraryVocabulary> | undefined;

/** @throws UsageError, PathError, UnreadableDataError */
export async function runFlight(
  file: string | undefined,
  options: FlightOptions,
  palette: Palette,
  io: Io,
): Promise<FlightOutput> {
  vocabulary ??= libraryVocabulary();
  const amounts = new AmountReader(await vocabulary, options.hand);
  const values = valuesIn(options, amounts);
  const air = airIn(options, amounts);
  const { launches, notes } =
    file === undefined ? single(values) : await fromTable(file, values, amounts, io);
  const all = launches.map((launch) => estimatesOf(launch, air));
  const [first] = file === undefined ? launches : [];
  const worth = () => (first === undefined ? [] : worthOf(first, air));
  const bounds = () => (first === undefined ? null : boundsOf(first));
  const metric = (name: string) => amounts.metricCalled(name);

  switch (options.format) {
    case "json": {
      const { documentOf } = await import("./json.ts");
      const document = documentOf(all, air, bounds(), worth(), options.hand, toolVersion());
      return { output: `${JSON.stringify(document, null, 2)}\n`, notes };
    }
    case "csv": {
      const { csvOf } = await import("./csv.ts");
      return { output: csvOf(all), notes };
    }
    case "svg": {
      const { pictureOf } = await import("./picture.ts");
      const output = pictureOf(all, air, metric("carry").unit);
      if (output !== undefined) return { output, notes };
      throw new UsageError(`There is no flight to draw. ${whyNone(all[0]?.flight.carry)}`);
    }
    case "text": {
      const { launchText } = await import("./launch-text.ts");
      const { tableText } = await import("./table-text.ts");
      const words = { metric, hand: options.hand, palette };
      const [estimates] = all;
      const output =
        file === undefined && estimates !== undefined
          ? launchText(estimates, air, bounds(), worth(), words)
          : tableText(all, air, words);
      return { output, notes };
    }
  }
}

function single(values: Record<string, number>): { launches: StatedLaunch[]; notes: string[] } {
  const missing = ["ball-speed", "launch-angle", "spin-rate"].filter((name) => !(name in values));
  if (missing.length > 0) {
    throw new UsageError(
      `flight needs a launch, and ${missing.map((name) => `--${name}`).join(", ")} ${missing.length === 1 ? "is" : "are"} not given: flight --ball-speed "70 m/s" --launch-angle "12°" --spin-rate "2700 rpm", or a table of launches.`,
    );
  }
  return { launches: [{ line: null, values, problems: [] }], notes: [] };
}

async function fromTable(
  file: string,
  values: Record<string, number>,
  amounts: AmountReader,
  io: Io,
): Promise<{ launches: readonly StatedLaunch[]; notes: string[] }> {
  const name = file === STDIN ? "standard input" : file;
  const bytes = file === STDIN ? await readStdin(io) : await bytesOf(file, io.cwd);
  const { launches, passedOver, error } = launchesIn(bytes, values, amounts);
  if (error !== null) throw new UnreadableDataError(`${name}: ${error}`);
  if (launches.length === 0)
    throw new UnreadableDataError(`${name}: The table has no rows under its header.`);
  const listed = passedOver
    .slice(0, 12)
    .map((header) => JSON.stringify(header))
    .join(", ");
  const notes =
    passedOver.length === 0
      ? []
      : [
          printable(
            `${name}: not read, since not named as a metric of a launch: ${listed}${passedOver.length > 12 ? ` and ${passedOver.length - 12} more` : ""}.`,
          ),
        ];
  return { launches, notes };
}

async function bytesOf(file: string, cwd: string): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  for await (const piece of givenTable(pathOfName(file, cwd), cwd)) pieces.push(piece);
  return Buffer.concat(pieces);
}

function whyNone(carry: { readonly status: string; readonly reason?: string } | undefined): string {
  return carry?.reason ?? "";
}
