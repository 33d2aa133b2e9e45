/**
 * Beyond this many shots no estimate of "how many would decide it" is given: nobody hits them for one criterion,
 * and the estimate assumes that the player goes on as observed.
 */
export const MOST_SHOTS = 1000;
