/** What is put into pages, or stands in for them. Knows no editor, so that it can be tested. */

/** A sentence in the colours of the editor. */
export function sentencePage(sentence: string): string {
  return `<!DOCTYPE html>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'">
<p>${escaped(sentence)}</p>
`;
}

/** A page of ours with a sentence over it, framed like its cautions. */
export function withNotice(page: string, sentence: string): string {
  return page.replace("<body>", () => `<body>\n<p class="care" role="status">${escaped(sentence)}</p>`);
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
}
