package boltlore.book;

/** A version of an order's quotation, and what it stands on. */
public record QuotedVersion(String order, int version, long entry, Offer offer, Frozen stands) {}
