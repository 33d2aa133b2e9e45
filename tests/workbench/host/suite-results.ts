/** What a suite reports from inside the extension host; written anew after each step, so that a stall shows where. */
export type SuiteResults = {
  readonly tests: readonly TestResult[];
  /** The test under way. */
  readonly running?: string;
  /** All tests had their turn. */
  readonly finished: boolean;
};

export type TestResult = {
  readonly name: string;
  readonly outcome: "passed" | "failed" | "skipped";
  readonly milliseconds: number;
  /** Why it failed or was skipped. */
  readonly message?: string;
  readonly stack?: string;
};

/** What a suite may want to know about where it runs; put in when the suite is bundled. */
export type SuiteFacts = {
  /** `remote`: Node, behind a workbench in a browser. `browser`: a web worker and a virtual folder. `desktop`: Electron. */
  readonly host: "remote" | "browser" | "desktop";
  readonly trusted: boolean;
  readonly extensionId: string;
};
