/** Pages beside plans, which run nothing and load nothing. They are renewed while somebody sees them. */
import { type Disposable, type LogOutputChannel, ViewColumn, type WebviewPanel, window } from "vscode";
import { type Declared, keyOf } from "../../shared/protocol/message.ts";

/** A page as a panel shows it. */
export interface Page {
  readonly title: string;
  readonly html: string;
}

/** What the pages of a kind are. */
export interface PageKind {
  readonly viewType: `drillwright.${string}`;
  /** The page as it is now. Undefined where there is none, which leaves the last as it is: the editor says why. */
  readonly ask: (about: Declared) => Promise<Page | undefined>;
  /** Calls when pages may have become others. */
  readonly hear: (listener: () => void) => Disposable;
}

/** The panels of a kind, one for each plan or session. */
export class PagePanels implements Disposable {
  private readonly kind: PageKind;
  private readonly output: LogOutputChannel;
  private readonly hearing: Disposable;
  private readonly panels = new Map<string, PagePanel>();

  constructor(kind: PageKind, output: LogOutputChannel) {
    this.kind = kind;
    this.output = output;
    this.hearing = kind.hear(() => {
      for (const panel of this.panels.values()) void panel.renew();
    });
  }

  show(about: Declared, page: Page): void {
    const key = keyOf(about);
    let panel = this.panels.get(key);
    if (panel === undefined) {
      panel = new PagePanel(this.kind, about, this.output, () => this.panels.delete(key));
      this.panels.set(key, panel);
    }
    panel.show(page);
  }

  /** What the panels hold, seen or not. */
  get pages(): readonly string[] {
    return [...this.panels.values()].map(({ html }) => html);
  }

  dispose(): void {
    this.hearing.dispose();
  }
}

class PagePanel {
  private readonly kind: PageKind;
  private readonly about: Declared;
  private readonly output: LogOutputChannel;
  /** Undefined when it was closed: the editor takes nothing for it any more. */
  private panel: WebviewPanel | undefined;
  /** How often the page was asked for: an answer that another has overtaken is none. */
  private asked = 0;

  constructor(kind: PageKind, about: Declared, output: LogOutputChannel, onClose: () => void) {
    this.kind = kind;
    this.about = about;
    this.output = output;
    this.panel = window.createWebviewPanel(
      kind.viewType,
      "",
      { viewColumn: ViewColumn.Beside, preserveFocus: true },
      { enableScripts: false, localResourceRoots: [], enableFindWidget: true },
    );
    this.panel.onDidChangeViewState(() => void this.renew()); // what changed while it was hidden
    this.panel.onDidDispose(() => {
      this.panel = undefined;
      onClose();
    });
  }

  get html(): string {
    return this.panel?.webview.html ?? "";
  }

  show(page: Page): void {
    this.fill(page);
    this.panel?.reveal(undefined, true);
  }

  async renew(): Promise<void> {
    if (this.panel?.visible !== true) return;
    const asked = ++this.asked;
    try {
      const page = await this.kind.ask(this.about);
      if (page !== undefined && asked === this.asked) this.fill(page);
    } catch (error) {
      this.output.warn(`${this.kind.viewType} was not renewed: ${String(error)}`);
    }
  }

  private fill({ title, html }: Page): void {
    if (this.panel === undefined) return;
    this.panel.title = title;
    if (this.panel.webview.html !== html) this.panel.webview.html = html;
  }
}
