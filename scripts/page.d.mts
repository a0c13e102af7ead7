export function buildPage(): boolean;
