package boltlore.report.xlsx;

import boltlore.report.drawing.Drawing;

/**
 * A drawing over one row that is left white.
 *
 * @param widthPoints as it is shown
 * @param heightPoints as it is shown
 */
record LaidPicture(Drawing drawing, int row, double widthPoints, double heightPoints) {}
