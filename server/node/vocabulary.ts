/** The words of the language that a table can be put into, as one file sees them. */
import { EmptyFileSystem, type LangiumDocument, URI } from "langium";
import { createCoreServices, type DrillwrightServices } from "../../language/core-module.ts";
import {
  Club,
  Dimension,
  type Document,
  isClub,
  isDimension,
  isMetric,
  Metric,
} from "../../language/generated/tree/ast.ts";
import { lowerClub, lowerMetric } from "../../language/lowering/vocabulary.ts";
import { unitModel } from "../../language/types/units.ts";
import type { Vocabulary } from "../import/propose/vocabulary.ts";

export function vocabularyOf(file: LangiumDocument<Document>, services: DrillwrightServices): Vocabulary {
  const visible = (type: string) => [...services.names.Names.visible(file, type as typeof Metric.$type)];
  return {
    metrics: visible(Metric.$type).filter(isMetric).map(lowerMetric),
    clubs: visible(Club.$type).filter(isClub).map(lowerClub),
    units: new Map(
      visible(Dimension.$type)
        .filter(isDimension)
        .map(({ name, units }) => [
          name,
          units.flatMap(({ names }) => {
            const [first] = names;
            return first === undefined
              ? []
              : [{ unit: unitModel(first), names: names.map(({ name }) => name) }];
          }),
        ]),
    ),
  };
}

/** The built-in words alone. */
export async function libraryVocabulary(): Promise<Vocabulary> {
  const { shared, drillwright } = createCoreServices(EmptyFileSystem);
  await shared.workspace.WorkspaceManager.initializeWorkspace([]);
  const { LangiumDocuments, LangiumDocumentFactory } = shared.workspace;
  const file = LangiumDocumentFactory.fromString<Document>("", URI.file("/proposal.drill"));
  LangiumDocuments.addDocument(file);
  await shared.workspace.DocumentBuilder.build([file]);
  return vocabularyOf(file, drillwright);
}
