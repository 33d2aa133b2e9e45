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
import { crc32 } from "node:zlib";

/**
 * Runs a script as `require` runs a CommonJS module, with what was kept of it. It must be ASCII, and the function that
 * `require` puts around a module: `(function (exports, require, module, __filename, __dirname) { … })`. In it `import()`
 * does not work.
 * @param path absolute
 * @param purpose what this run is for, a word: code is kept for each purpose, as each calls other functions
 */
export function requireCompiled(path: string, purpose: string): void {
  module.enableCompileCache();
  const folder = module.getCompileCacheDir();
  const source = readFileSync(path);
  const kept =
    folder === undefined
      ? undefined
      : join(folder, `${basename(path)}-${purpose}-${crc32(source).toString(16)}`);
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

/** Undefined where nothing was kept, or not all of it. */
function codeIn(file: string): Buffer | undefined {
  try {
    const bytes = readFileSync(file);
    const code = bytes.subarray(4);
    return bytes.readUInt32LE(0) === crc32(code) ? code : undefined;
  } catch {
    return undefined;
  }
}

/** In one step, as other processes may read it meanwhile. What cannot be kept is compiled again the next time. */
function keep(file: string, code: Buffer): void {
  const checksum = Buffer.alloc(4);
  checksum.writeUInt32LE(crc32(code));
  try {
    const whole = `${file}-${process.pid}`;
    writeFileSync(whole, Buffer.concat([checksum, code]), { mode: 0o600 });
    renameSync(whole, file);
  } catch {
    // a folder that cannot be written to
  }
}
