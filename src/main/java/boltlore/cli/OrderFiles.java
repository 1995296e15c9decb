package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The order files that a person names: files as they are, folders as the JSON files in them, sorted. */
final class OrderFiles {

    /** Tables of expected findings stand beside the demo orders and are no orders. */
    private static final String EXPECTED = "expected.json";

    private OrderFiles() {}

    static Outcome<List<Path>> find(List<Path> named) {
        List<Path> files = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (Path path : named) {
            if (Files.isDirectory(path)) {
                add(path, files, faults);
            } else {
                files.add(path);
            }
        }
        return faults.isEmpty() ? Outcome.sound(files) : Outcome.faulty(faults);
    }

    /** What a program keeps beside a file for itself has a name with a point in front. */
    private static boolean isOrder(Path file) {
        String name = file.getFileName().toString();
        return name.toLowerCase(Locale.ROOT).endsWith(".json") && !name.startsWith(".") && !name.equals(EXPECTED);
    }

    private static void add(Path folder, List<Path> files, List<Fault> faults) {
        try (Stream<Path> inside = Files.list(folder)) {
            List<Path> orders = inside.filter(OrderFiles::isOrder).sorted().toList();
            if (orders.isEmpty()) {
                faults.add(Fault.of(folder.toString(), "no order in this folder", "files that end in .json", ""));
            }
            files.addAll(orders);
        } catch (IOException e) {
            faults.add(Fault.of(folder.toString(), "a folder that cannot be read", "a readable folder", ""));
        }
    }
}
