package boltlore.resolution.rules.facts;

/** The finish that the order chose, or the family fixed, for the role. */
public record RoleFinish(String role, String finish, boolean ownOven) {}
