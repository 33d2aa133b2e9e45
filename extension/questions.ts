/** Asks a few questions in a row, each answered by a choice from a list, with a way back. */
import { Disposable, QuickInputButtons, type QuickPickItem, window } from "vscode";

export interface Question<Answer> {
  readonly placeHolder: string;
  readonly choices: readonly (QuickPickItem & { readonly answer: Answer })[];
}

const BACK = Symbol("back");

/**
 * One answer to each question; undefined where somebody did not answer. A question with a single choice is not asked,
 * and one without any is answered by undefined.
 */
export async function askInTurn<Answer>(
  title: string,
  questions: readonly Question<Answer>[],
): Promise<(Answer | undefined)[] | undefined> {
  const answers = questions.map(({ choices }) => choices[0]?.answer);
  const open = [...questions.entries()].filter(([, { choices }]) => choices.length > 1);
  for (let step = 0; step < open.length; ) {
    const [index, question] = open[step] as [number, Question<Answer>];
    const given = await ask(title, question, step + 1, open.length);
    if (given === undefined) return undefined;
    if (given !== BACK) answers[index] = given as Answer;
    step += given === BACK ? -1 : 1;
  }
  return answers;
}

function ask<Answer>(
  title: string,
  { placeHolder, choices }: Question<Answer>,
  step: number,
  totalSteps: number,
): Promise<Answer | typeof BACK | undefined> {
  const pick = window.createQuickPick<(typeof choices)[number]>();
  pick.title = title;
  pick.placeholder = placeHolder;
  pick.items = choices;
  pick.matchOnDescription = true;
  if (totalSteps > 1) {
    pick.step = step;
    pick.totalSteps = totalSteps;
  }
  if (step > 1) pick.buttons = [QuickInputButtons.Back];
  return new Promise((resolve) => {
    const subscriptions = Disposable.from(
      pick,
      pick.onDidTriggerButton(() => end(BACK)),
      pick.onDidAccept(() => end(pick.selectedItems[0]?.answer)),
      pick.onDidHide(() => end(undefined)),
    );
    const end = (answer: Answer | typeof BACK | undefined) => {
      resolve(answer);
      subscriptions.dispose();
    };
    pick.show();
  });
}
