import type { Command } from "./command.ts";
import { check } from "./commands/check.ts";
import { newCase } from "./commands/new.ts";
import { schema } from "./commands/schema.ts";

/** In the order of the work. */
export const commands: readonly Command[] = [newCase, check, schema];
