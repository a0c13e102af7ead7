export function builtCommand(): string | undefined;
