export function testsToLeaveOut(): string[];
