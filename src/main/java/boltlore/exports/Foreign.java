package boltlore.exports;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What lies in a folder of sheets and is none: replacing the folder would lose it. A workbook 'bill' is {@code bill.xlsx},
 * {@code json/bill.json} and any number of {@code csv/bill-….csv}.
 */
final class Foreign {

    private static final Set<String> OF_THE_SYSTEM = Set.of("Thumbs.db", "desktop.ini");

    private final Path folder;
    private final Set<String> workbooks;

    private Foreign(Path folder, List<Path> files) {
        this.folder = folder;
        this.workbooks = files.stream()
                .filter(file -> file.startsWith(folder.resolve("json")))
                .map(Foreign::base)
                .collect(Collectors.toSet());
    }

    /** Names of files that no run has written, sorted; none where there is no such folder. */
    static List<String> in(Path folder) throws IOException {
        List<Path> files = files(folder);
        Foreign foreign = new Foreign(folder, files);
        return files.stream()
                .filter(foreign::isForeign)
                .map(file -> folder.relativize(file).toString())
                .sorted()
                .toList();
    }

    /** None where another run replaces the folder at this moment: that run has looked for itself. */
    private static List<Path> files(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).toList();
        } catch (NoSuchFileException gone) {
            return List.of();
        } catch (UncheckedIOException e) {
            if (e.getCause() instanceof NoSuchFileException) {
                return List.of();
            }
            throw e.getCause();
        }
    }

    private boolean isForeign(Path file) {
        String name = file.getFileName().toString();
        if (name.startsWith(".") || OF_THE_SYSTEM.contains(name)) {
            return false;
        }
        Path in = folder.relativize(file);
        String place = in.getNameCount() == 1 ? "" : in.subpath(0, in.getNameCount() - 1) + "/";
        return switch (place + name.substring(name.lastIndexOf('.') + 1)) {
            case "xlsx", "json/json" -> !workbooks.contains(base(file));
            case "csv/csv" -> workbooks.stream().noneMatch(workbook -> name.startsWith(workbook + "-"));
            default -> true;
        };
    }

    private static String base(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, Math.max(0, name.lastIndexOf('.')));
    }
}
