package boltlore.distribution;

import boltlore.cli.CommandModel;
import boltlore.handbook.Handbook;
import boltlore.handbook.ManPage;
import boltlore.handbook.ZshCompletion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/** Lays into a finished image what people read: handbook, man pages, completion for zsh, licences of the libraries. */
public final class Furnishing {

    private static final Pattern MADE_AT_RUN_TIME =
            Pattern.compile("jdk/jfr/internal/handlers/EventHandler.*|java/util/concurrent/locks/.*");

    private Furnishing() {}

    /** Furnishes the image in the folder that the first word names. */
    public static void main(String... image) throws IOException {
        Path home = Path.of(image[0]);
        Handbook.write(home.resolve("docs"));
        ManPage.writeAll(home.resolve("man/man1"));
        Files.writeString(
                Files.createDirectories(home.resolve("completion")).resolve("_boltlore"),
                ZshCompletion.of(CommandModel.whole()));
        Licences.collect(home.resolve("lib"), home.resolve("licences"));
        settle(home.resolve("lib/classes"));
    }

    /**
     * The classes in an order that does not hang on which thread was first, and without those that Java names after the
     * time of day or loads where threads happen to meet, so that each build packs the same list. Classes come before the
     * notes on their lambdas.
     */
    static void settle(Path list) throws IOException {
        List<String> lines = Files.readAllLines(list);
        Files.write(
                list,
                lines.stream()
                        .filter(line -> !MADE_AT_RUN_TIME.matcher(line).matches())
                        .sorted(Comparator.comparing((String line) -> line.startsWith("@"))
                                .thenComparing(Comparator.naturalOrder()))
                        .distinct()
                        .toList());
    }
}
