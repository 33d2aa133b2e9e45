/** The report as a page. */
import { describe, expect, test } from "vitest";
import { reportsHtml } from "../../server/report/formats/html.ts";
import { LESSON, scoredSessions, secondVisit } from "./lesson.ts";

test("a whole report", async () => {
  await expect(reportsHtml([await secondVisit()])).toMatchFileSnapshot("expected/second-visit.html");
});

describe("a page stands for itself", () => {
  let made: Promise<string> | undefined;
  const allVisits = () => {
    made ??= scoredSessions().then((sessions) => reportsHtml(sessions));
    return made;
  };

  test("it may load nothing and run nothing", async () => {
    const page = await allVisits();
    expect(page).toContain(
      `<meta http-equiv="Content-Security-Policy" content="default-src &#39;none&#39;; style-src &#39;unsafe-inline&#39;;`,
    );
    expect(page).not.toMatch(/<(?:script|link|img|iframe|object|embed|form|base)\b/i);
    expect(page).not.toMatch(/\b(?:src|href|on\w+)=|url\(|@import/i);
  });

  test("every picture has words that stand in for it", async () => {
    const page = await allVisits();
    const pictures = page.match(/<svg[^>]*>/g) ?? [];
    expect(pictures.length).toBeGreaterThan(10);
    for (const picture of pictures) expect(picture).toMatch(/role="img" aria-label="[^"]{20,}"/);
  });

  test("every place in every picture is a number", async () => {
    const page = await allVisits();
    expect(page).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });

  test("whoever is told to swing is told to take care", async () => {
    const page = await allVisits();
    const [first = ""] = page.split("</article>");
    expect(first.indexOf("What next?")).toBeLessThan(first.indexOf("Stop on pain, dizziness or numbness"));
    expect(page).toContain("nothing here is medical advice");
  });
});

describe("texts of others", () => {
  /** The lesson with another name for its player. */
  async function withName(name: string): Promise<string> {
    const files = Object.fromEntries(
      Object.entries(LESSON).map(([path, content]) => [path, String(content).replaceAll("P-12", name)]),
    );
    return reportsHtml(await scoredSessions(files));
  }

  test("markup is shown, not obeyed", async () => {
    const page = await withName("<script>alert('x')</script>&amp;");
    expect(page).toContain("<bdi>&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;&amp;amp;</bdi>");
    expect(page).not.toContain("<script>");
  });

  test("writing from right to left turns nothing around it", async () => {
    expect(await withName("לי-12")).toContain("<bdi>לי-12</bdi>, left-handed");
  });

  test("characters that hide what a text is are shown as such", async () => {
    expect(await withName("P\u202E21")).toContain("<bdi>P\uFFFD21</bdi>");
  });
});

test("a session without shots says so, and shows no goals as judged", async () => {
  const files = { ...LESSON, "data/p-12-first.csv": "Block,Club,Path,Face,Attack,Start,Carry,Offline\n" };
  const page = reportsHtml((await scoredSessions(files)).slice(2));
  expect(page).toContain("There are no shots, so nothing is scored.");
  expect(page).not.toContain("<svg");
});
