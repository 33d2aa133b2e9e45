/** Of several, says which have a name that another has too. */
export function sharedNames<Of extends { readonly name: string }>(all: readonly Of[]): (of: Of) => boolean {
  const byName = Map.groupBy(all, ({ name }) => name);
  return ({ name }) => (byName.get(name)?.length ?? 0) > 1;
}
