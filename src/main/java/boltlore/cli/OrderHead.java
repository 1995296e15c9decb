package boltlore.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What an order says beside its choices, as far as it is given on the command line; the rest is asked. */
final class OrderHead {

    @Option(names = "--order", paramLabel = "NUMBER", description = "The order's number; asked where it is not given.")
    private @Nullable String order;

    @Option(names = "--customer", paramLabel = "NAME", description = "The customer; asked where it is not given.")
    private @Nullable String customer;

    @Option(
            names = "--built",
            paramLabel = "DATE",
            converter = Day.class,
            description = "When the donor was built, as 1971-05-20.")
    private @Nullable LocalDate built;

    @Option(names = "--placed", paramLabel = "DATE", converter = Day.class, description = "The date of the order.")
    private @Nullable LocalDate placed;

    @Option(
            names = "--out",
            paramLabel = "ORDER.json",
            description = "The file to write, which must not exist; without it the order's number here.")
    private @Nullable Path out;

    @Nullable
    String order() {
        return order;
    }

    @Nullable
    String customer() {
        return customer;
    }

    @Nullable
    LocalDate built() {
        return built;
    }

    @Nullable
    LocalDate placed() {
        return placed;
    }

    @Nullable
    Path out() {
        return out;
    }
}
