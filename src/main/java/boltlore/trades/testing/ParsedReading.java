package boltlore.trades.testing;

import boltlore.catalogue.FoundState;
import java.math.BigDecimal;
import java.time.LocalDate;

/** A reading understood. */
sealed interface ParsedReading {

    LocalDate on();

    record Figured(BigDecimal number, LocalDate on) implements ParsedReading {}

    record State(FoundState state, LocalDate on) implements ParsedReading {}
}
