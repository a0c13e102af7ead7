import type { Command } from "./command.ts";
import { answerCase } from "./commands/answer.ts";
import { ask } from "./commands/ask.ts";
import { check } from "./commands/check.ts";
import { explain } from "./commands/explain.ts";
import { exportRecords } from "./commands/export.ts";
import { newCase } from "./commands/new.ts";
import { passes } from "./commands/passes.ts";
import { plates } from "./commands/plates.ts";
import { schema } from "./commands/schema.ts";
import { sizes } from "./commands/sizes.ts";
import { template } from "./commands/template.ts";
import { verify } from "./commands/verify.ts";

/** In the order of the work. */
export const commands: readonly Command[] = [
  newCase,
  check,
  answerCase,
  ask,
  plates,
  sizes,
  passes,
  template,
  explain,
  verify,
  exportRecords,
  schema,
];
