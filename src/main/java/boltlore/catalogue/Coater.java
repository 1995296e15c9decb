package boltlore.catalogue;

/** An outside coater; fitsMasks says whether it fits the masks or the workshop does before sending. */
public record Coater(String name, String says, int turnRoundDays, boolean fitsMasks) {}
