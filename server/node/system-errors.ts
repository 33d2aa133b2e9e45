/** What the system says about a file, for people. */

/** Whether an error says that there is no such file. */
export function isMissing(error: unknown): boolean {
  const code = codeOf(error);
  return code === "ENOENT" || code === "ENOTDIR";
}

/** Whether an error is the system's answer, and no mistake of a program. */
export function isSystemError(error: unknown): boolean {
  return codeOf(error) !== "";
}

/** Why a file could not be read or written: `permission denied`. */
export function reasonOf(error: unknown): string {
  const code = codeOf(error);
  return REASONS[code] ?? (code === "" ? "it could not be opened" : `the system answered ${code}`);
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: "permission denied",
  EPERM: "permission denied",
  EISDIR: "it is a folder",
  EROFS: "the disk can only be read",
  ENOSPC: "no space is left on the disk",
  EMFILE: "too many files are open",
  ELOOP: "its symbolic links go round in a circle",
  ENAMETOOLONG: "its name is too long",
  EFBIG: "it is too large",
  ERR_FS_FILE_TOO_LARGE: "it is too large",
};

/** The system's word for what went wrong, such as `EACCES`; empty where an error is none of the system. */
export function codeOf(error: unknown): string {
  return error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : "";
}
