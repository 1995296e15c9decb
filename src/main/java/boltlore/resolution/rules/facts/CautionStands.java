package boltlore.resolution.rules.facts;

/** The workshop wants that caution on that sheet. */
public record CautionStands(String caution, String sheet) {}
