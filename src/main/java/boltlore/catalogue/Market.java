package boltlore.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A market with its mains, inlets and sockets in the facts.
 *
 * @param massLimit null where the workshop knows of none
 */
public record Market(
        String name,
        String says,
        List<String> languages,
        Facts facts,
        @Nullable MassLimit massLimit) {}
