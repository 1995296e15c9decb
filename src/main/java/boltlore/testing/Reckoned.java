package boltlore.testing;

/**
 * A limit with how it comes about.
 *
 * @param basis in figures: '500 ohm/V × 396 V'; empty where it stands in the catalogue
 * @param unit of limit and result, empty with a state
 */
record Reckoned(Limit limit, String basis, String unit) {}
