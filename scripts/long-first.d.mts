import { BaseSequencer } from "vitest/node";

export class LongFirst extends BaseSequencer {}
