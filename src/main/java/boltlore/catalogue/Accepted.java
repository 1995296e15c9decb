package boltlore.catalogue;

/**
 * A finding that valid orders of a family may have and that somebody has looked at and left as it is.
 *
 * @param finding as a proof or a kit names it, for example 'fitted but not required: cover (late)'
 * @param because the reason, in full
 */
public record Accepted(String finding, String because) {}
