package boltlore.cli;

import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Which orders a command works with, and from which catalogue. */
final class OrdersOption {

    @Parameters(arity = "1..*", paramLabel = "ORDER", description = "Order files, or folders of them.")
    private List<Path> orders = new ArrayList<>();

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    /** What comes of the orders' files, once the catalogue is read and folders are looked into. */
    <T> Outcome<T> then(BiFunction<CatalogueSession, List<Path>, Outcome<T>> next) {
        return CatalogueSession.of(catalogue)
                .then(session -> OrderFiles.find(orders).then(files -> next.apply(session, files)));
    }

    /** All of them resolved, and after them those of more files, none of which may be among them. */
    Outcome<KitsTogether> kits(List<Path> more) {
        return then((session, files) -> KitsTogether.read(
                session, Stream.concat(files.stream(), more.stream()).toList()));
    }
}
