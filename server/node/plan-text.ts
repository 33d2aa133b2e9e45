/** The text of a `.drill` file from its bytes. */

export type PlanText =
  | { readonly text: string }
  /** Why the bytes are no plan, in a sentence or two. */
  | { readonly problem: string };

const UTF_8 = new TextDecoder("utf-8", { fatal: true });

/** UTF-8, with or without a byte order mark. Anything else is refused: a guess would be wrong in somebody's name. */
export function planText(bytes: Uint8Array): PlanText {
  let text: string;
  try {
    text = UTF_8.decode(bytes);
  } catch {
    return {
      problem: "This file is not written in UTF-8. Save it again with that encoding, if it is a plan.",
    };
  }
  if (text.includes("\0"))
    return { problem: "This file is no text. Was something else saved under its name?" };
  return { text };
}
