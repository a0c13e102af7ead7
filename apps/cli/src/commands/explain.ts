import { explainRule, isRuleId, ruleIds } from "@treewright/core/judge/explain.ts";
import { wrap } from "../columns.ts";
import type { Command } from "../command.ts";
import { EXIT, Stop } from "../exit.ts";

export const explain: Command = {
  name: "explain",
  takes: "[RULE]",
  says: "a rule in full: what it says, its limits, its source",
  about: [
    "Every answer names the rules it rests on. Without a rule the names of all are listed, in the order of the work.",
  ],
  options: {},
  examples: [
    ["explain clearance-rider-up", "one rule"],
    ["explain", "the names of all rules"],
  ],
  async run({ takes: [rule] }, desk) {
    if (rule === undefined) for (const id of ruleIds()) desk.say(id);
    else if (isRuleId(rule)) {
      for (const line of explainRule(rule)
        .split("\n")
        .flatMap((text) => wrap(text, 0, 2)))
        desk.say(line);
    } else {
      throw new Stop(
        EXIT.wrongUse,
        `There is no rule "${rule.slice(0, 60)}". Their names: treewright explain`,
      );
    }
    return EXIT.answered;
  },
};
