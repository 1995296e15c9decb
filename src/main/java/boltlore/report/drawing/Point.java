package boltlore.report.drawing;

/** A place on the paper in mm, from the upper left corner, downwards. */
public record Point(double xMm, double yMm) {}
