package kitstow.tui.view;

/**
 * A box as one view sees it.
 *
 * @param key sign in the drawing and the legend, or "" for an outline that needs none
 * @param minXMm front end
 * @param maxXMm rear end
 * @param lowMm lower end (or left end, seen from above)
 * @param highMm upper end (or right end, seen from above)
 * @param near how near to the eye; what is nearer hides what is behind it
 * @param solid whether it hides what is behind it; outlines of holders do not
 */
public record Block(
    String key, int minXMm, int maxXMm, int lowMm, int highMm, int near, boolean solid) {}
