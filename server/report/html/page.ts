/** A page that needs nothing but itself: no network, no scripts. */
import { html, Markup } from "./markup.ts";
import { STYLE } from "./style.ts";

/** What a page may load and run: nothing. Its own style stands in it. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

const style = new Markup(STYLE);

export function page(title: string, body: Markup): string {
  return `<!doctype html>\n${html`<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<style>${style}</style>
</head>
<body>
${body}
</body>
</html>`}\n`;
}
