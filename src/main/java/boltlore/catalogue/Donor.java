package boltlore.catalogue;

/** The donor vehicle: wheelbase in mm, axle loads and limits and gross limit in kg. */
public record Donor(
        int wheelbaseMm, int frontAxleKg, int rearAxleKg, int frontAxleLimitKg, int rearAxleLimitKg, int grossKg) {}
