/**
 * Keeps the code that Node compiled from a bundled script between starts. Node's own cache is written before a script has
 * run, so it lacks the functions that are compiled when they are first called, which are nearly all: compiling those again
 * takes a third of a short run. What is kept here is written when the process ends. It stands in the folder of Node's own
 * cache, so that Node says where that is, whether there is one, and which of its versions it is for.
 */
import { readFileSync, renameSync, writeFileSync } from "node:fs";
import module, { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { Script } from "node:vm";

/** What a script may export of itself. */
interface Exports {
  /** The names of its parts that were run. */
  readonly used?: readonly string[];
}

/**
 * Runs a script as `require` runs a CommonJS module, with what was kept of it. It must be ASCII, and the function that
 * `require` puts around a module, behind a comment that no other text of the script has:
 * `/*0123456789abcdef*\/(function (exports, require, module, __filename, __dirname) { … })`. In it `import()` does not work.
 * What it requires of scripts that end in `.late.cjs` is such a script, of which code is kept by itself. Code is kept anew
 * where a run used parts of the script that none before it did.
 * @param path absolute
 * @param purpose what this run is for, a word: code is kept for each purpose, as each calls other functions
 * @returns what the script exports
 */
export function requireCompiled(path: string, purpose: string): Exports {
  module.enableCompileCache();
  const folder = module.getCompileCacheDir();
  const source = readFileSync(path);
  const file =
    folder === undefined ? undefined : join(folder, `${basename(path)}-${purpose}-${idOf(source)}`);
  const kept = file === undefined ? undefined : keptIn(file);
  const script = new Script(source.toString("latin1"), {
    filename: path,
    ...(kept === undefined ? {} : { cachedData: kept.code }),
  });
  const exported: { exports: Exports } = { exports: {} };
  if (file !== undefined) {
    const known = kept !== undefined && script.cachedDataRejected === false ? kept.used : undefined;
    process.on("exit", () => {
      const all = new Set([...(known ?? []), ...(exported.exports.used ?? [])]);
      if (all.size !== known?.length) keep(file, script.createCachedData(), [...all]);
    });
  }
  const plain = createRequire(path);
  const late = new Map<string, Exports>();
  const load = (name: string): unknown => {
    if (!name.endsWith(".late.cjs")) return plain(name);
    const loaded = late.get(name) ?? requireCompiled(plain.resolve(name), purpose);
    late.set(name, loaded);
    return loaded;
  };
  script.runInThisContext()(exported.exports, Object.assign(load, plain), exported, path, dirname(path));
  return exported.exports;
}

/** How long the comment is that a script begins with, and what of it says which text it is. */
const ID = { start: "/*".length, end: "/*0123456789abcdef".length };

function idOf(source: Buffer): string {
  return source.toString("latin1", ID.start, ID.end);
}

/** A file holds the code, since the engine would copy it if it did not stand at its beginning; names; and how many bytes those are, and a check. */
const TAIL = 8;

interface Kept {
  readonly code: Buffer;
  /** The names of the parts of the script that were run with it. */
  readonly used: readonly string[];
}

/** Undefined where nothing was kept, or not all of it. */
function keptIn(file: string): Kept | undefined {
  try {
    const bytes = readFileSync(file);
    const end = bytes.length - TAIL;
    const names = end - bytes.readUInt32LE(end);
    if (bytes.readUInt32LE(end + 4) !== checkOf(bytes.subarray(0, end))) return undefined;
    return { code: bytes.subarray(0, names), used: bytes.toString("latin1", names, end).split("\n") };
  } catch {
    return undefined;
  }
}

/** In one step, as other processes may read it meanwhile. What cannot be kept is compiled again the next time. */
function keep(file: string, code: Buffer, used: readonly string[]): void {
  const names = Buffer.from(used.join("\n"), "latin1");
  const content = Buffer.concat([code, names, Buffer.alloc(TAIL)]);
  const end = content.length - TAIL;
  content.writeUInt32LE(names.length, end);
  content.writeUInt32LE(checkOf(content.subarray(0, end)), end + 4);
  try {
    const whole = `${file}-${process.pid}`;
    writeFileSync(whole, content, { mode: 0o600 });
    renameSync(whole, file);
  } catch {
    // a folder that cannot be written to
  }
}

/** What a disk writes or loses as a whole. */
const SECTOR = 512;

/**
 * Tells code from what a disk made of it: a number made of its length and a word of each sector. The engine itself compares
 * lengths only. A checksum of every byte would need a part of Node that takes longer to load than what it is there to save.
 */
function checkOf(content: Buffer): number {
  const words = new DataView(content.buffer, content.byteOffset, content.length);
  let check = content.length;
  for (let at = 0; at + 4 <= content.length; at += SECTOR) check = (check * 31 + words.getInt32(at)) | 0;
  return check >>> 0;
}
