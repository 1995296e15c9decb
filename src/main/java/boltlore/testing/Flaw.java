package boltlore.testing;

/** Why what was written down cannot be judged. */
public record Flaw(String found, String expected) {}
