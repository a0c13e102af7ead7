/** Why a reading is not there. Five different things, none of which is "no". */
export const ABSENT = ["unknown", "not-asked", "not-looked", "cannot-be-seen"] as const;
export type Absent = (typeof ABSENT)[number];

/** What a person answers to a question. */
export const SAID = ["no", "unknown", "not-asked", "yes"] as const;
export type Said = (typeof SAID)[number];

/** What the hands and eyes tell of a part, in the order in which it opens less. */
export const SEEN = ["sound", "cannot-be-seen", "not-looked", "doubtful", "failed"] as const;
export type Seen = (typeof SEEN)[number];

/** What a look for a sign finds. */
export const SIGN = ["no", "cannot-be-seen", "not-looked", "unknown", "yes"] as const;
export type Sign = (typeof SIGN)[number];
