/** What comes from plans is text: nothing of it is drawn as an icon, or fetched as a picture. */
import { type CodeLens, type CompletionItem, type Hover, MarkdownString, type MarkedString } from "vscode";
import type { Middleware } from "vscode-languageclient";
import { withoutIcons } from "../shown-text.ts";

export const middleware: Middleware = {
  provideCodeLenses: async (document, token, next) => (await next(document, token))?.map(withPlainTitle),
  provideHover: async (document, position, token, next) =>
    withoutPictures(await next(document, position, token)),
  provideCompletionItem: async (document, position, context, token, next) => {
    const found = await next(document, position, context, token);
    for (const item of Array.isArray(found) ? found : (found?.items ?? [])) cleanDocumentation(item);
    return found;
  },
  resolveCompletionItem: async (item, token, next) => {
    const resolved = await next(item, token);
    if (resolved) cleanDocumentation(resolved);
    return resolved;
  },
};

function withPlainTitle(lens: CodeLens): CodeLens {
  if (lens.command !== undefined) lens.command.title = withoutIcons(lens.command.title);
  return lens;
}

function withoutPictures(hover: Hover | null | undefined): Hover | null | undefined {
  for (const content of hover?.contents ?? []) clean(content);
  return hover;
}

function cleanDocumentation({ documentation }: CompletionItem): void {
  if (documentation !== undefined) clean(documentation);
}

/** A picture in a comment would be fetched from wherever it says. As text it stays where it is. */
function clean(content: MarkdownString | MarkedString): void {
  if (content instanceof MarkdownString) content.value = content.value.replace(/!(?=\[)/g, "\\!");
}
