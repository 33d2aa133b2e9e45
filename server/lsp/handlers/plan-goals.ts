import { DocumentState, URI } from "langium";
import type { LangiumSharedServices } from "langium/lsp";
import type { CancellationToken, Connection } from "vscode-languageserver";
import type { Lowering } from "../../../language/lowering/document.ts";
import { type PlanGoals, type PlanGoalsParams, planGoals } from "../../../shared/protocol/plan-goals.ts";
import type { File } from "../declared.ts";
import { planGoalsOf } from "../plan-goals.ts";

export function handlePlanGoals(
  connection: Connection,
  { workspace: { DocumentBuilder, LangiumDocuments } }: LangiumSharedServices,
  lowering: Lowering,
): void {
  connection.onRequest(
    planGoals.method,
    async ({ plan }: PlanGoalsParams, token: CancellationToken): Promise<PlanGoals | null> => {
      await DocumentBuilder.waitUntil(DocumentState.IndexedReferences, token);
      const file = LangiumDocuments.getDocument(URI.parse(plan.file)) as File | undefined;
      return file === undefined ? null : planGoalsOf(file, plan.name, lowering);
    },
  );
}
