/**
 * Whether a name speaks of the back of a garment: all that tells the back of a skirt from its front, which no role does.
 */
export const namesBack = (name: string): boolean => /back|rück|hinter/i.test(name);
