/** What the page itself says, in core's language: every other sentence on it is core's. */
export const PAGE_WORDS = {
  title: "Can the head of this saddle be altered?",
  intro: "Say what you know; where you do not know, leave it.",
  never: "Nobody presses, heats or bends a head at home.",
  vetFirst: "At any pain, heat, swelling, sore or lameness stop, and ring the vet first.",
  ask: "What may be done, and by whom?",
  horse: "Horse",
  saddle: "Saddle",
  home: "What you may do at home",
  see: "Whom to see, in this order",
  why: "Why",
  promise: "This comes from what you said, not from looking: it promises nothing.",
} as const;
