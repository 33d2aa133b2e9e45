/**
 * Files that the server cannot reach itself, asked of the editor: all of them where the server is a web worker, else
 * those that are on no disk. They are asked for by their URIs.
 */
import type { RequestMessage } from "./message.ts";

export interface FileParams {
  readonly file: string;
}

export type FileKind = "file" | "folder";

/** What there is at a URI; null where there is nothing. */
export const fileKind: RequestMessage<FileParams, FileKind | null> = { method: "drillwright/fileKind" };

/**
 * The bytes of a file in Base64, the only way that every channel carries alike; null where there is none. The answer is
 * an error where there is one that cannot be read.
 */
export const readFile: RequestMessage<FileParams, string | null> = { method: "drillwright/readFile" };

/** What a folder holds; null where there is none. */
export const readFolder: RequestMessage<FileParams, readonly FolderEntry[] | null> = {
  method: "drillwright/readFolder",
};

export interface FolderEntry {
  readonly name: string;
  readonly kind: FileKind;
}
