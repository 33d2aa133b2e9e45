/** The parts of the grammar by numbers, which stand for them in the reader that is written from it. */
import { type AstNode, type Grammar, GrammarAST } from "langium";
import { walk } from "../walk.ts";

const parts = new WeakMap<Grammar, readonly AstNode[]>();

/** All parts of all rules, always in the same order. */
export function partsOf(grammar: Grammar): readonly AstNode[] {
  const known = parts.get(grammar);
  if (known !== undefined) return known;
  const found: AstNode[] = [];
  for (const rule of grammar.rules) {
    if (GrammarAST.isParserRule(rule)) walk(rule.definition, (part) => found.push(part));
    else if (GrammarAST.isInfixRule(rule)) found.push(...partsOfChain(rule));
  }
  parts.set(grammar, found);
  return found;
}

/** What the framework takes a chain of operators for: operands, and operators between them. */
function partsOfChain({ call, operators }: GrammarAST.InfixRule): AstNode[] {
  const signs = operators.precedences.flatMap((level) => level.operators);
  const choice = { $type: GrammarAST.Alternatives.$type, elements: signs };
  const assigned = (feature: string, terminal: object): AstNode =>
    Object.assign({ $type: GrammarAST.Assignment.$type }, { feature, operator: "+=", terminal });
  return [assigned("parts", call), assigned("operators", choice)];
}
