/** A sentence with its first letter large. */
export const capital = (text: string): string => text.replace(/^\p{Ll}/u, c => c.toUpperCase());
