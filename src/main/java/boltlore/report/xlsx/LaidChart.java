package boltlore.report.xlsx;

import boltlore.report.BarChart;

/**
 * A chart over cells that are left white.
 *
 * @param from left edge in characters from the left of the grid
 * @param to right edge
 * @param firstRow of the grid that it covers
 * @param lastRow of the grid that it covers
 */
record LaidChart(BarChart chart, double from, double to, int firstRow, int lastRow) {}
