/** Folders that hold nobody's plans. Those whose name begins with a dot are left out as well. */
export const LEFT_OUT: ReadonlySet<string> = new Set(["node_modules", "dist"]);
