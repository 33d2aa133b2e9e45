import type { FileSystemProvider, URI } from "langium";

/** Whether there is such a file, or a link that leads to one. */
export async function isFile(files: Pick<FileSystemProvider, "stat">, uri: URI): Promise<boolean> {
  return files.stat(uri).then(
    (node) => node.isFile,
    () => false,
  );
}
