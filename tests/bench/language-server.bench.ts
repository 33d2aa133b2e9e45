/**
 * One open file: from process start to the first diagnostics, from a keystroke to its diagnostics, completion, layout
 * and memory, beside a JSON server with a schema on equal content and the framework's bare server on the same grammar.
 * It prints and decides nothing.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { printFigure, printRatio } from "./figures.ts";
import { completions, formattings, keystrokes, type Session, start } from "./language-server/client.ts";
import { type Contender, contendersIn } from "./language-server/contenders.ts";
import { jsonText, planText } from "./language-server/texts.ts";

const STARTS = 7;
const MANY_LINES = 5_000;

const folder = mkdtempSync(join(tmpdir(), "drillwright-bench-"));
const { ours, bare, json } = await contendersIn(folder);
const contenders = [ours, bare, json];

/** Times of each contender under one name, printed as they are taken. */
class Figures {
  private readonly times = new Map<Contender, number[]>();
  private readonly name: string;

  constructor(name: string) {
    this.name = name;
  }

  add(contender: Contender, times: readonly number[]): void {
    this.times.set(contender, [...this.of(contender), ...times]);
  }

  of(contender: Contender): readonly number[] {
    return this.times.get(contender) ?? [];
  }

  print(unit?: string): void {
    for (const [contender, times] of this.times) printFigure(`${this.name}, ${contender.name}`, times, unit);
  }

  ratio(to: Contender, must?: number): void {
    printRatio(`${this.name}, against ${to.name}`, this.of(ours), this.of(to), must);
  }
}

function open(contender: Contender, lines: number, change = (text: string) => text): Promise<Session> {
  const isJson = contender.languageId === "json";
  const text = change(isJson ? jsonText(lines) : planText(lines));
  return start(contender, join(folder, isJson ? "bench.json" : "bench.drill"), text);
}

const starts = new Figures("start → first diagnostics, 60 lines");
for (let round = 0; round < STARTS; round++) {
  for (const contender of contenders) {
    const session = await open(contender, 60);
    await session.stop();
    starts.add(contender, [session.time]);
  }
}
starts.print();
starts.ratio(json);
starts.ratio(bare);

for (const lines of [60, MANY_LINES]) {
  const keys = new Figures(`keystroke, ${lines} lines`);
  const memory = new Figures(`peak memory, ${lines} lines`);
  for (const contender of contenders) {
    const session = await open(contender, lines);
    keys.add(contender, await keystrokes(session));
    memory.add(contender, [session.peakMemory()]);
    await session.stop();
  }
  keys.print();
  keys.ratio(json, lines === 60 ? 2 : undefined);
  keys.ratio(bare, lines === 60 ? undefined : 0.65);
  memory.print("MB");
}

const completion = new Figures(`completion after a letter, ${MANY_LINES} lines`);
const layout = new Figures(`layout, ${MANY_LINES} lines`);
for (const contender of contenders) {
  const session = await open(contender, MANY_LINES);
  completion.add(contender, await completions(session, contender === json ? "blocked" : "club-path"));
  await session.stop();
  if (contender === bare) continue; // it has none
  const ragged = await open(contender, MANY_LINES, (text) => text.replaceAll(/^ +/gm, ""));
  layout.add(contender, await formattings(ragged));
  await ragged.stop();
}
completion.print();
completion.ratio(json);
completion.ratio(bare);
layout.print();
layout.ratio(json);

rmSync(folder, { recursive: true, force: true });
process.exit(0); // the pipes of the servers that were stopped would keep the process alive
