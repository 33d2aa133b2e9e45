/**
 * Colours text by a TextMate grammar, as far as the grammars of this project go: `match` with captures, `begin` with
 * `end`, and `include` of the repository. The first of the rules that match earliest wins.
 */
export interface ColouringRule {
  readonly name?: string;
  readonly match?: string;
  readonly captures?: Readonly<Record<string, { readonly name: string }>>;
  readonly begin?: string;
  readonly end?: string;
  readonly include?: string;
  readonly patterns?: readonly ColouringRule[];
}

export interface ColouringGrammar {
  readonly patterns: readonly ColouringRule[];
  readonly repository: Readonly<Record<string, ColouringRule>>;
}

/** A stretch of text with its scope, without its line breaks; stretches without a scope are left out. */
export interface Coloured {
  readonly text: string;
  readonly scope: string;
}

export function colour(grammar: ColouringGrammar, text: string): Coloured[] {
  const result: Coloured[] = [];
  const open: ColouringRule[] = [];
  for (const line of text.split("\n")) {
    let at = 0;
    let last = -1;
    // A rule that matched nothing at a place must not match there again.
    while (at <= line.length) {
      const inside = open.at(-1);
      const rules = flatten(grammar, inside?.patterns ?? (inside ? [] : grammar.patterns));
      const next = earliest(rules, line, at);
      const end = inside?.end === undefined ? undefined : find(inside.end, line, at);
      if (
        inside !== undefined &&
        end !== undefined &&
        (next === undefined || end.index <= next.match.index)
      ) {
        add(line.slice(at, end.index) + end[0], inside.name);
        open.pop();
        at = end.index + end[0].length;
      } else if (next === undefined) {
        add(line.slice(at), inside?.name);
        break;
      } else {
        const { rule, match } = next;
        add(line.slice(at, match.index), inside?.name);
        if (rule.begin !== undefined) {
          open.push(rule);
          add(match[0], rule.name);
        } else if (rule.captures === undefined) add(match[0], rule.name);
        else
          for (const [group, { name }] of Object.entries(rule.captures))
            add(match[Number(group)] ?? "", name);
        at = match.index + match[0].length;
        if (at === last) at++;
        last = at;
      }
    }
  }
  return result;

  function add(text: string, scope: string | undefined): void {
    const previous = result.at(-1);
    if (scope === undefined || text === "") return;
    if (previous?.scope === scope && open.length > 0) {
      result[result.length - 1] = { text: previous.text + text, scope };
    } else result.push({ text, scope });
  }
}

function flatten(grammar: ColouringGrammar, rules: readonly ColouringRule[]): ColouringRule[] {
  return rules.flatMap((rule) => {
    const included = rule.include === undefined ? rule : grammar.repository[rule.include.slice(1)];
    if (included === undefined)
      throw new Error(`The grammar includes ${rule.include}, which it does not have.`);
    const isGroup = included.match === undefined && included.begin === undefined;
    return isGroup ? flatten(grammar, included.patterns ?? []) : [included];
  });
}

function earliest(rules: readonly ColouringRule[], line: string, at: number) {
  let best: { rule: ColouringRule; match: RegExpExecArray } | undefined;
  for (const rule of rules) {
    const match = find(rule.match ?? rule.begin ?? "", line, at);
    if (match && (best === undefined || match.index < best.match.index)) best = { rule, match };
  }
  return best;
}

function find(expression: string, line: string, at: number): RegExpExecArray | undefined {
  const search = new RegExp(expression, "g");
  search.lastIndex = at;
  return search.exec(line) ?? undefined;
}
