/** Pages beside plans, which run nothing and load nothing. They are renewed while somebody sees them. */
import {
  Disposable,
  type LogOutputChannel,
  l10n,
  ViewColumn,
  type WebviewPanel,
  type WebviewPanelSerializer,
  window,
} from "vscode";
import { type Declared, keyOf } from "../../shared/protocol/message.ts";
import type { LanguageServer } from "../language-server.ts";
import { sentencePage, withNotice } from "./page-html.ts";
import type { PageMemory } from "./page-memory.ts";

/** A page as a panel shows it. */
export interface Page {
  readonly title: string;
  readonly html: string;
}

/** What the pages of a kind are. */
export interface PageKind {
  readonly viewType: `drillwright.${string}`;
  /** The page as it is now; why there is none at the moment, in a sentence; or null where it is about nothing any more. */
  readonly ask: (about: Declared) => Promise<Page | string | null>;
  /** Calls when pages may have become others. */
  readonly hear: (listener: () => void) => Disposable;
}

const RUNS_NOTHING = { enableScripts: false, localResourceRoots: [] };

/** The panels of a kind, one for each plan or session. They come back with a window that is loaded again. */
export class PagePanels implements Disposable, WebviewPanelSerializer {
  private readonly kind: PageKind;
  private readonly server: LanguageServer;
  private readonly memory: PageMemory;
  private readonly output: LogOutputChannel;
  private readonly subscriptions: Disposable;
  private readonly panels = new Map<string, PagePanel>();

  constructor(kind: PageKind, server: LanguageServer, memory: PageMemory, output: LogOutputChannel) {
    this.kind = kind;
    this.server = server;
    this.memory = memory;
    this.output = output;
    this.subscriptions = Disposable.from(
      window.registerWebviewPanelSerializer(kind.viewType, this),
      kind.hear(() => {
        for (const panel of this.panels.values()) void panel.renew();
      }),
    );
  }

  show(about: Declared, page: Page): void {
    const panel = this.panels.get(keyOf(about)) ?? this.add(about, this.newPanel());
    panel.show(page);
  }

  /** Fills a panel of an earlier window. One that nobody knows, or whose session or plan is gone, is closed. */
  async deserializeWebviewPanel(panel: WebviewPanel): Promise<void> {
    const about = this.memory
      .about(this.kind.viewType, panel.title)
      .find((each) => !this.panels.has(keyOf(each)));
    if (about === undefined) {
      panel.dispose();
      return;
    }
    panel.webview.options = RUNS_NOTHING;
    await this.add(about, panel).fillAgain();
  }

  /** What the panels hold, seen or not. */
  get pages(): readonly string[] {
    return [...this.panels.values()].map(({ html }) => html);
  }

  dispose(): void {
    this.subscriptions.dispose();
  }

  private newPanel(): WebviewPanel {
    const place = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    return window.createWebviewPanel(this.kind.viewType, "", place, {
      ...RUNS_NOTHING,
      enableFindWidget: true,
    });
  }

  private add(about: Declared, panel: WebviewPanel): PagePanel {
    const { kind, server, memory, output } = this;
    const added = new PagePanel(panel, about, { kind, server, memory, output }, () => {
      this.panels.delete(keyOf(about));
      memory.forget(kind.viewType, about);
    });
    this.panels.set(keyOf(about), added);
    return added;
  }
}

/** What panels of a kind share. */
interface Surroundings {
  readonly kind: PageKind;
  readonly server: LanguageServer;
  readonly memory: PageMemory;
  readonly output: LogOutputChannel;
}

class PagePanel {
  private readonly about: Declared;
  private readonly around: Surroundings;
  /** Undefined when it was closed: the editor takes nothing for it any more. */
  private panel: WebviewPanel | undefined;
  /** How often the page was asked for: an answer that another has overtaken is none. */
  private asked = 0;
  /** The last page, as it was when it was current. */
  private last: Page | undefined;

  constructor(panel: WebviewPanel, about: Declared, around: Surroundings, onClose: () => void) {
    this.about = about;
    this.around = around;
    this.panel = panel;
    panel.onDidChangeViewState(() => void this.renew()); // what changed while it was hidden
    panel.onDidDispose(() => {
      this.panel = undefined;
      onClose();
    });
  }

  get html(): string {
    return this.panel?.webview.html ?? "";
  }

  show(page: Page): void {
    this.fillWith(page);
    this.panel?.reveal(undefined, true);
  }

  /** Where there is no page, the last stays, and says that it is no longer current. Nobody starts a server for it. */
  async renew(): Promise<void> {
    if (this.panel?.visible !== true || !this.around.server.isRunning) return;
    const found = await this.ask();
    if (found === undefined) return;
    if (typeof found === "object" && found !== null) this.fillWith(found);
    else if (this.last !== undefined) {
      const why = found ?? l10n.t("What it is about is no longer there.");
      const notice = l10n.t("This page is no longer current. {0}", why);
      this.fill({ title: this.last.title, html: withNotice(this.last.html, notice) });
    }
  }

  /** Fills a panel that holds nothing. */
  async fillAgain(): Promise<void> {
    const found = await this.ask();
    if (found === null) this.panel?.dispose();
    else if (typeof found === "string")
      this.fill({ title: this.panel?.title ?? "", html: sentencePage(found) });
    else if (found !== undefined) this.fillWith(found);
  }

  /** Undefined for an answer that was overtaken, or that there is not, which the log says. */
  private async ask(): Promise<Page | string | null | undefined> {
    const { kind, output } = this.around;
    const asked = ++this.asked;
    try {
      const found = await kind.ask(this.about);
      return asked === this.asked ? found : undefined;
    } catch (error) {
      output.warn(`${kind.viewType} was not renewed: ${String(error)}`);
      return undefined;
    }
  }

  private fillWith(page: Page): void {
    this.last = page;
    this.fill(page);
  }

  private fill({ title, html }: Page): void {
    if (this.panel === undefined) return;
    const { kind, memory } = this.around;
    this.panel.title = title;
    memory.remember(kind.viewType, title, this.about);
    if (this.panel.webview.html !== html) this.panel.webview.html = html;
  }
}
