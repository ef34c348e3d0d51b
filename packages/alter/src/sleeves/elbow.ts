/** rad that a sleeve is bent at the elbow at most: beyond it the forearm would stand out more than it bends. */
export const mostBend = Math.PI / 4;
