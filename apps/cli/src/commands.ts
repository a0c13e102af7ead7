import type { Command } from "./command.ts";
import { check } from "./commands/check.ts";
import { schema } from "./commands/schema.ts";

/** In the order of the work. */
export const commands: readonly Command[] = [check, schema];
