/** What the server answers about sessions, curricula and the like, for views that show it. */
import { Disposable, type TreeView } from "vscode";
import { type Declared, keyOf } from "../../shared/protocol/message.ts";
import { projectChanged } from "../../shared/protocol/project-changed.ts";
import type { LanguageServer } from "../language-server.ts";
import { Soon } from "../soon.ts";

/** How long somebody must have stopped typing before the server is asked anew, in milliseconds. */
const PAUSE = 400;

/** Answers by what they are about. Each is asked for once, until all are asked for anew or forgotten. */
export class KeptAnswers<Answer> {
  private readonly ask: (about: Declared) => Promise<Answer | null>;
  private answers = new Map<string, { readonly about: Declared; readonly answer: Answer | null }>();
  /** Goes on whenever the answers become others. */
  private turn = 0;

  /** @param ask null where there is nothing of that name. */
  constructor(ask: (about: Declared) => Promise<Answer | null>) {
    this.ask = ask;
  }

  /** Undefined where nobody has asked yet. */
  known(about: Declared): Answer | null | undefined {
    return this.answers.get(keyOf(about))?.answer;
  }

  async about(about: Declared): Promise<Answer | null> {
    const known = this.known(about);
    if (known !== undefined) return known;
    const { answers } = this;
    const { file, name } = about;
    const answer = await this.ask({ file, name });
    answers.set(keyOf(about), { about: { file, name }, answer });
    return answer;
  }

  /** Asks about each that is not known yet, one after the other, and tells of each answer, as long as it is current. */
  async inTurn<Of extends Declared>(all: readonly Of[], told: (of: Of) => void): Promise<void> {
    const { turn } = this;
    for (const of of all) {
      if (this.known(of) !== undefined) continue;
      await this.about(of).catch(() => null);
      if (turn !== this.turn) return;
      told(of);
    }
  }

  /** Asks anew about all that was asked about. False where something overtook it: then nothing has changed. */
  async renew(): Promise<boolean> {
    const turn = ++this.turn;
    const answers: typeof this.answers = new Map();
    for (const [key, { about }] of this.answers) {
      const answer = await this.ask(about).catch(() => null);
      if (turn !== this.turn) return false;
      if (answer !== null) answers.set(key, { about, answer });
    }
    this.turn++;
    this.answers = answers;
    return true;
  }

  forget(): void {
    this.turn++;
    this.answers = new Map();
  }
}

/**
 * Keeps the answers of a view true. Where it is seen they are asked for anew, and only then it is drawn: nothing flickers
 * while somebody types. For one that nobody sees the server does no work.
 */
export function keepTrue<Answer>(
  answers: KeptAnswers<Answer>,
  view: Pick<TreeView<unknown>, "visible" | "onDidChangeVisibility">,
  server: LanguageServer,
  draw: () => void,
): Disposable {
  const forget = () => {
    answers.forget();
    draw();
  };
  const renew = async () => {
    if (!view.visible) forget();
    else if (await answers.renew()) draw();
  };
  const soon = new Soon(() => void renew(), PAUSE);
  return Disposable.from(
    soon,
    server.hear(projectChanged, () => soon.ask()),
    server.onDidStop(forget),
  );
}
