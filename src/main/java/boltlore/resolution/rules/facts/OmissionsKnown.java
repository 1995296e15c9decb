package boltlore.resolution.rules.facts;

/** All lines that the order leaves out have been stated; before that, nothing joins the kit only to be withdrawn. */
public record OmissionsKnown() {}
