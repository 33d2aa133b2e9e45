/** Rebuilds only what a change can touch. */
import {
  DefaultDocumentBuilder,
  type LangiumDocument,
  type LangiumSharedCoreServices,
  type ValidationCategory,
} from "langium";
import { once } from "../../shared/once.ts";
import { Names } from "./names.ts";

/**
 * A file depends on the files it uses, whether they exist or not, and on nothing else. The default would look at every
 * reference of every file, and relink each file with an unknown name at each keystroke in any other.
 */
export class DrillwrightDocumentBuilder extends DefaultDocumentBuilder {
  protected readonly names: Names;

  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.names = new Names(services);
  }

  protected override shouldRelink(document: LangiumDocument, changedUris: Set<string>): boolean {
    return this.usersOf(changedUris).has(document);
  }

  /** There is one category of checks, which are run together. The framework asks this for every file, and at every check. */
  protected override findMissingValidationCategories(): ValidationCategory[] {
    return [];
  }

  /** The files that use one of these. The framework asks for every file of the workspace. */
  private readonly usersOf = once(
    (uris: Set<string>): ReadonlySet<LangiumDocument> =>
      new Set([...uris].flatMap((uri) => [...this.names.users(uri)])),
  );
}
