/** What the pages are about that stand in tabs, for when a window is loaded again. */
import type { Memento } from "vscode";
import { type Declared, keyOf } from "../../shared/protocol/message.ts";

const KEY = "openPages";

/** A page that is open, as its tab can be told apart then: a page runs no script that could remember more. */
interface OpenPage {
  readonly viewType: string;
  readonly title: string;
  readonly about: Declared;
}

export class PageMemory {
  private readonly memory: Memento;

  /** @param memory of the workspace: plans and sessions are named by their addresses. */
  constructor(memory: Memento) {
    this.memory = memory;
  }

  /** What pages of a kind with a title are about. Several, where plans or sessions share a name. */
  about(viewType: string, title: string): readonly Declared[] {
    return this.all
      .filter((page) => page.viewType === viewType && page.title === title)
      .map(({ about }) => about);
  }

  remember(viewType: string, title: string, { file, name }: Declared): void {
    const about = { file, name };
    if (this.about(viewType, title).some((each) => keyOf(each) === keyOf(about))) return; // pages are renewed with every shot
    void this.memory.update(KEY, [...this.allBut(viewType, about), { viewType, title, about }]);
  }

  forget(viewType: string, about: Declared): void {
    void this.memory.update(KEY, this.allBut(viewType, about));
  }

  private get all(): readonly OpenPage[] {
    return this.memory.get<readonly OpenPage[]>(KEY, []);
  }

  private allBut(viewType: string, about: Declared): readonly OpenPage[] {
    return this.all.filter((page) => page.viewType !== viewType || keyOf(page.about) !== keyOf(about));
  }
}
