/** Answers the server about files that it cannot reach itself. */
import { Disposable, FileSystemError, FileType, Uri, workspace } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import {
  type FileKind,
  type FileParams,
  fileKind,
  readFile,
  readFolder,
} from "../../shared/protocol/files.ts";
import type { RequestMessage } from "../../shared/protocol/message.ts";

export function answerAboutFiles(client: BaseLanguageClient): Disposable {
  return Disposable.from(
    answer(client, fileKind, async (uri) => kindOf((await workspace.fs.stat(uri)).type)),
    answer(client, readFile, async (uri) => inBase64(await workspace.fs.readFile(uri))),
    answer(client, readFolder, async (uri) =>
      (await workspace.fs.readDirectory(uri)).flatMap(([name, type]) => {
        const kind = kindOf(type);
        return kind === null ? [] : [{ name, kind }];
      }),
    ),
  );
}

/** What is not there is no error: the server asks about all sorts of paths that somebody is just typing. */
function answer<Result>(
  client: BaseLanguageClient,
  { method }: RequestMessage<FileParams, Result | null>,
  find: (uri: Uri) => Promise<Result | null>,
): Disposable {
  return client.onRequest(method, async ({ file }: FileParams): Promise<unknown> => {
    try {
      return await find(Uri.parse(file));
    } catch (error) {
      if (error instanceof FileSystemError && error.code === "FileNotFound") return null;
      throw error;
    }
  });
}

/** A link is what it leads to. */
function kindOf(type: FileType): FileKind | null {
  if ((type & FileType.Directory) !== 0) return "folder";
  return (type & FileType.File) !== 0 ? "file" : null;
}

/** Piece by piece: the engine limits how many characters can be made at once. */
function inBase64(content: Uint8Array): string {
  let characters = "";
  for (let start = 0; start < content.length; start += 0x8000) {
    characters += String.fromCharCode(...content.subarray(start, start + 0x8000));
  }
  return btoa(characters);
}
