import { DocumentState, URI } from "langium";
import { type CancellationToken, type Connection, DiagnosticSeverity } from "vscode-languageserver";
import type { DrillwrightServices } from "../../../language/core-module.ts";
import { isPlan } from "../../../language/generated/tree/ast.ts";
import type { Lowering } from "../../../language/lowering/document.ts";
import { IncompleteError } from "../../../language/lowering/unresolved.ts";
import { type PlanCard, type PlanCardParams, planCard } from "../../../shared/protocol/plan-card.ts";
import type { File } from "../declared.ts";

const MISTAKES: PlanCard = {
  page: null,
  problem: "There is a card when the mistakes of the plan are mended.",
};

export function handlePlanCard(
  connection: Connection,
  { shared, validation }: DrillwrightServices,
  lowering: Lowering,
): void {
  const { DocumentBuilder, LangiumDocuments } = shared.workspace;
  connection.onRequest(
    planCard.method,
    async ({ plan }: PlanCardParams, token: CancellationToken): Promise<PlanCard | null> => {
      await DocumentBuilder.waitUntil(DocumentState.IndexedReferences, token);
      const file = LangiumDocuments.getDocument(URI.parse(plan.file)) as File | undefined;
      const isHere = file?.parseResult.value.declarations.some(
        (each) => isPlan(each) && each.name === plan.name,
      );
      if (file === undefined || !isHere) return null;
      // Files that nobody has opened are not checked by themselves.
      const found =
        file.diagnostics ?? (await validation.DocumentValidator.validateDocument(file, undefined, token));
      if (found.some(({ severity }) => severity === DiagnosticSeverity.Error)) return MISTAKES;
      return cardOf(file, plan.name, lowering);
    },
  );
}

/** What makes pages is loaded with the first. */
async function cardOf(file: File, name: string, lowering: Lowering): Promise<PlanCard> {
  try {
    const plans = lowering.document(file).plans.filter((each) => each.name === name);
    const { cardsHtml } = await import("../../report/card/card.ts");
    return { page: cardsHtml(plans.slice(0, 1)), problem: null };
  } catch (error) {
    if (!(error instanceof IncompleteError)) throw error;
    return MISTAKES;
  }
}
