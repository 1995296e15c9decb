package boltlore.report;

/**
 * Plain horizontal bars, one for each plain row of a table on the same page, first row on top.
 *
 * @param axis what the bars measure, with its unit: 'Cost (EUR)'
 * @param table name of the table on this page
 * @param labels key of the column that names the bars
 * @param values key of the column that gives their lengths
 */
public record BarChart(String title, String axis, String table, String labels, String values) {}
