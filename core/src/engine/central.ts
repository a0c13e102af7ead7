/** Half of the central 95 % of a normal law, in standard deviations: 1.95996, as it is usually rounded (from memory). */
export const U_PER_SD = 1.96;
