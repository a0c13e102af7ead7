import type { Command } from "./command.ts";
import { answerCase } from "./commands/answer.ts";
import { ask } from "./commands/ask.ts";
import { check } from "./commands/check.ts";
import { explain } from "./commands/explain.ts";
import { newCase } from "./commands/new.ts";
import { schema } from "./commands/schema.ts";
import { template } from "./commands/template.ts";

/** In the order of the work. */
export const commands: readonly Command[] = [newCase, check, answerCase, ask, template, explain, schema];
