/** What a command may touch of the world. `main.ts` gives it the process's own, tests give it theirs. */

export interface Output {
  write(text: string): void;
  /** Whether a person reads along at a terminal. */
  readonly isTTY: boolean;
}

export interface Input {
  /** Everything up to the end of the input. */
  read(): Promise<Uint8Array>;
  /** Whether somebody would have to type it. */
  readonly isTTY: boolean;
}

export interface Io {
  /** Results only, so that they can be piped. */
  readonly stdout: Output;
  /** Everything else that people should read. */
  readonly stderr: Output;
  readonly stdin: Input;
  /** Absolute path of the working folder, which relative paths count from. */
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
}
