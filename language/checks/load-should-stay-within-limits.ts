import { isBlock, isLoadLimit, isPlan, isSessionPlan, isSessionPlayer } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { asksForFullEffort, swingsOf } from "./practice.ts";
import { quoted } from "./wording.ts";

/** More swings than are good. */
export const check = defineCheck({
  on: ["Plan", "Session"],
  reason:
    "Backs, wrists and elbows count every swing. What is planned over the limit is mostly also swung over it.",
  run(node, { isBroken, report }) {
    const reference = isPlan(node) ? undefined : node.statements.find(isSessionPlan);
    const plan = isPlan(node) ? node : reference?.plan?.ref;
    const player = isPlan(node) ? undefined : node.statements.find(isSessionPlayer)?.player?.ref;
    const holder = isPlan(node) ? node : player;
    if (plan === undefined || holder === undefined || isBroken(plan)) return;
    for (const limit of holder.statements.filter(isLoadLimit)) {
      const isCounted = limit.fullEffort ? asksForFullEffort : () => true;
      const planned = plan.statements
        .filter(isBlock)
        .reduce((sum, block) => sum + swingsOf(block, isCounted), 0);
      if (planned <= limit.count) continue;
      const kind = limit.fullEffort ? "full-effort swings" : "swings";
      report({
        message: isPlan(node)
          ? `The blocks ask for ${planned} ${kind}, and ${limit.count} are enough. Ask for fewer, or for less effort.`
          : `The plan asks for ${planned} ${kind}, and for ${quoted(player?.name ?? "")} ${limit.count} a ${limit.period ?? "session"} are enough. Give the player a shorter plan.`,
        node: isPlan(node) ? limit : (reference ?? node),
      });
    }
  },
  reporting: `
plan "Gate" {
  «limit 15 full-effort swings»
  block "Start" {
    8 shots at 50 % effort
    12 shots
  }
  block "Again" {
    8 shots
  }
}`,
  silent: `
plan "Gate" {
  limit 20 full-effort swings
  block "Start" {
    8 shots at 50 % effort
    12 shots
  }
  block "Again" {
    8 shots
  }
}`,
});
