package boltlore.resolution.rules.facts;

/**
 * A high-voltage connector of a part in the kit.
 *
 * @param blank empty where none is named
 * @param mayStayOpen whether it may stay open although mates and blanks close as many connectors as they can
 */
public record FittedPort(String part, String port, String blank, boolean mayStayOpen) {}
