/** One answer in plain words, for letter and screen. Each entry is one sentence. */
export interface Words {
  readonly heading: string;
  readonly meaning: string;
  readonly nextStep: string;
  readonly who: string;
}

export const words = (heading: string, meaning: string, nextStep: string, who: string): Words => ({
  heading,
  meaning,
  nextStep,
  who,
});
