/** Flags of the engine beneath Node, which may come and go with its versions. */

/** The newest Node known to have those that are set here; one that lacks a flag would say so to whoever waits. */
const NEWEST_TRIED = 26;

/** Sets a flag of the engine, where it is known to have it. Takes several milliseconds, as Node loads a module for it. */
export function setEngineFlag(flag: string): void {
  const version = Number.parseInt(process.versions.node, 10);
  if (version <= NEWEST_TRIED) process.getBuiltinModule?.("node:v8").setFlagsFromString(flag);
}
