export function npm(args: readonly string[]): string[];
