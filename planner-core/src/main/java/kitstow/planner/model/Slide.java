package kitstow.planner.model;

/**
 * How a module pulls out.
 *
 * @param extensionMm how far its moving part comes out, above zero
 * @param ratings what the runners may carry
 * @param contentsOnly whether the ratings are for contents only; otherwise the moving mass counts
 * @param lockIn whether it locks when closed
 * @param lockOut whether it locks when open
 */
public record Slide(
    int extensionMm, Ratings ratings, boolean contentsOnly, boolean lockIn, boolean lockOut) {}
