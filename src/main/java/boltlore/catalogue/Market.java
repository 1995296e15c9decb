package boltlore.catalogue;

import java.util.List;

/** A market with its mains, inlets and sockets in the facts. */
public record Market(String name, String says, List<String> languages, Facts facts) {}
