export async function showFigures(_root: HTMLElement): Promise<void> {}
