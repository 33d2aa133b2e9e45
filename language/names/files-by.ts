/** Finds the files that have something to do with a key. */
import type { LangiumDocument } from "langium";
import type { Document } from "../generated/tree/ast.ts";

type File = LangiumDocument<Document>;

export class FilesBy {
  private readonly files = new Map<string, Set<File>>();
  /** What each file was noted with, by its URI. */
  private readonly noted = new Map<string, { readonly file: File; readonly keys: readonly string[] }>();

  get(key: string): Iterable<File> {
    return this.files.get(key) ?? [];
  }

  /** Notes a file with these keys and no others. Linear in its keys. */
  note(file: File, keys: readonly string[]): void {
    const uri = file.uri.toString();
    this.forget(uri);
    if (keys.length > 0) this.noted.set(uri, { file, keys });
    for (const key of keys) {
      const files = this.files.get(key);
      if (files === undefined) this.files.set(key, new Set([file]));
      else files.add(file);
    }
  }

  forget(uri: string): void {
    const known = this.noted.get(uri);
    if (known === undefined) return;
    this.noted.delete(uri);
    for (const key of known.keys) {
      const files = this.files.get(key);
      files?.delete(known.file);
      if (files?.size === 0) this.files.delete(key);
    }
  }
}
