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

describe("how the ball flew", () => {
  const flights = async (files = LESSON) => {
    const [, section = ""] = reportsHtml((await scoredSessions(files)).slice(0, 1)).split(
      "<h2>What the ball did</h2>",
    );
    return section.split("</section>")[0] ?? "";
  };
  const without = (line: RegExp) =>
    Object.fromEntries(
      Object.entries(LESSON).map(([path, content]) => [path, String(content).replace(line, "")]),
    );

  test("from the side, from above and close up, for the baseline and the test, measured against standard", async () => {
    const section = await flights();
    const alternatives = [...section.matchAll(/aria-label="([^"]*)"/g)].map(([, text]) => text);
    expect(alternatives).toEqual([
      expect.stringMatching(
        /^Where we are, flights of 12 shots\. Measured: carry 1\d\d yd to .*\. In reference air, an estimate: carry .* Highest point \d+ yd on average, an estimate\.$/,
      ),
      expect.stringMatching(
        /^Where we are, landings of 12 shots\. Measured: .* In reference air, an estimate/,
      ),
      expect.stringMatching(/^Where we are: 12 shots over start direction and curve/),
      expect.stringMatching(/^Prove it, flights of 12 shots/),
      expect.stringMatching(/^Prove it, landings of 12 shots/),
      expect.stringMatching(/^Prove it: 12 shots over start direction and curve/),
    ]);
    expect(section.match(/class="landed"/g)).toHaveLength(3 * 24);
    expect(section.match(/class="standard"/g)).toHaveLength(3 * 24);
    expect(section).toMatch(/Diamonds, .* an estimate of the flight model\./);
    expect(section).toMatch(/Average carry \d+ yd measured; \d+ yd in reference air, an estimate\./);
  });

  test("where the air is not stated nothing is brought to reference air, and the page says what to write", async () => {
    const section = await flights(without(/ {2}temperature .*\n/));
    expect(section).not.toContain('class="standard"');
    expect(section).toContain('class="way"');
    expect(section).toContain("the session does not state the temperature: write “temperature 18 °C”.");
  });

  test("where the spin was not read there are landings and no ways through the air", async () => {
    const section = await flights(without(/ {2}column "Spin" .*\n/));
    expect(section).toContain('class="landed"');
    expect(section).not.toMatch(/class="way"|flights of/);
    expect(section).toContain("The ways through the air are not estimated. The shot has no spin-rate.");
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
  const files = {
    ...LESSON,
    "data/p-12-first.csv": "Block,Club,Path,Face,Attack,Ball,Launch,Start,Spin,Axis,Carry,Offline\n",
  };
  const page = reportsHtml((await scoredSessions(files)).slice(2));
  expect(page).toContain("There are no shots, so nothing is scored.");
  expect(page).not.toContain("<svg");
});
