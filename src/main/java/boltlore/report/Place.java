package boltlore.report;

/**
 * Where a formula finds a number: in the column of a row of a table, or in a particular (row is its key, column
 * {@link Particulars#VALUE}).
 *
 * @param page or empty for the formula's own page
 * @param block name of the table or particulars, or empty for the formula's own
 * @param row its key, or empty for the formula's own row
 */
public record Place(String page, String block, String row, String column) {}
