/** Files on disk that are being written. */
import { createHash } from "node:crypto";
import { open, stat } from "node:fs/promises";
import type { Hash } from "../import/follow/followed-session.ts";
import type { GrowingFile } from "../import/follow/tail.ts";
import { isMissing } from "./system-errors.ts";

/** The file at an absolute path. What is no file, as a folder or a pipe, is as good as missing. */
export function growingFile(path: string): GrowingFile {
  return {
    async state() {
      try {
        const stats = await stat(path);
        return stats.isFile() ? { size: stats.size, modified: stats.mtimeMs + stats.ino } : undefined;
      } catch (error) {
        if (isMissing(error)) return undefined;
        throw error;
      }
    },
    async read(from, to) {
      if (to <= from) return new Uint8Array();
      const file = await open(path);
      try {
        const { buffer, bytesRead } = await file.read(new Uint8Array(to - from), 0, to - from, from);
        return buffer.subarray(0, bytesRead);
      } catch (error) {
        if (isMissing(error)) return new Uint8Array();
        throw error;
      } finally {
        await file.close();
      }
    },
  };
}

export function sha256SoFar(): Hash {
  const hash = createHash("sha256");
  return { update: (bytes) => void hash.update(bytes), soFar: () => hash.copy().digest("hex") };
}
