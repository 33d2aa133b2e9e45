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

/**
 * Runs a script as `require` runs a CommonJS module, with what was kept of it. It must be ASCII, and the function that
 * `require` puts around a module, behind a comment that no other text of the script has:
 * `/*0123456789abcdef*\/(function (exports, require, module, __filename, __dirname) { … })`. In it `import()` does not work.
 * @param path absolute
 * @param purpose what this run is for, a word: code is kept for each purpose, as each calls other functions
 */
export function requireCompiled(path: string, purpose: string): void {
  module.enableCompileCache();
  const folder = module.getCompileCacheDir();
  const source = readFileSync(path);
  const kept =
    folder === undefined ? undefined : join(folder, `${basename(path)}-${purpose}-${idOf(source)}`);
  const cachedData = kept === undefined ? undefined : codeIn(kept);
  const script = new Script(source.toString("latin1"), {
    filename: path,
    ...(cachedData === undefined ? {} : { cachedData }),
  });
  if (kept !== undefined && script.cachedDataRejected !== false) {
    process.on("exit", () => keep(kept, script.createCachedData()));
  }
  const exported = { exports: {} };
  script.runInThisContext()(exported.exports, createRequire(path), exported, path, dirname(path));
}

/** How long the comment is that a script begins with, and what of it says which text it is. */
const ID = { start: "/*".length, end: "/*0123456789abcdef".length };

function idOf(source: Buffer): string {
  return source.toString("latin1", ID.start, ID.end);
}

/** Undefined where nothing was kept, or not all of it. */
function codeIn(file: string): Buffer | undefined {
  try {
    const bytes = readFileSync(file);
    const code = bytes.subarray(CHECK_LENGTH);
    return bytes.readUInt32LE(0) === checkOf(code) ? code : undefined;
  } catch {
    return undefined;
  }
}

/** In one step, as other processes may read it meanwhile. What cannot be kept is compiled again the next time. */
function keep(file: string, code: Buffer): void {
  const check = Buffer.alloc(CHECK_LENGTH);
  check.writeUInt32LE(checkOf(code));
  try {
    const whole = `${file}-${process.pid}`;
    writeFileSync(whole, Buffer.concat([check, code]), { mode: 0o600 });
    renameSync(whole, file);
  } catch {
    // a folder that cannot be written to
  }
}

const CHECK_LENGTH = 4;
/** What a disk writes or loses as a whole. */
const SECTOR = 512;

/**
 * Tells code from what a disk made of it: a number made of its length and a word of each sector. The engine itself compares
 * lengths only. A checksum of every byte would need a part of Node that takes longer to load than what it is there to save.
 */
function checkOf(code: Buffer): number {
  const words = new DataView(code.buffer, code.byteOffset, code.length);
  let check = code.length;
  for (let at = 0; at + 4 <= code.length; at += SECTOR) check = (check * 31 + words.getInt32(at)) | 0;
  return check >>> 0;
}
