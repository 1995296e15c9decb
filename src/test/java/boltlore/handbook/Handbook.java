package boltlore.handbook;

import boltlore.cli.CommandModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The handbook as pages that need no network, no script and no server. */
public final class Handbook {

    static final Path SOURCES = Path.of("src/doc");

    /** In the order in which they are read; 'reference' is made from the schemas. */
    static final List<String> NAMES = List.of(
            "index",
            "tour",
            "sheets",
            "sales",
            "stores",
            "fabrication",
            "bench",
            "shipping",
            "engineering",
            "office",
            "resolving",
            "proofs",
            "server",
            "installing",
            "release-notes",
            "reference");

    private Handbook() {}

    static List<Page> pages() throws IOException {
        List<Page> pages = new ArrayList<>();
        for (String name : NAMES) {
            pages.add(Page.of(
                    name,
                    name.equals("reference")
                            ? Reference.markdown(Path.of("catalog/schema"))
                            : Files.readString(SOURCES.resolve(name + ".md"))));
        }
        return pages;
    }

    /** Writes the pages, their style sheet and their pictures. */
    public static void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        List<Page> pages = pages();
        for (Page page : pages) {
            Files.writeString(folder.resolve(page.name() + ".html"), page.html(pages, CommandModel.release()));
        }
        try (Stream<Path> others = Files.list(SOURCES)) {
            for (Path file : others.filter(each -> each.toString().matches(".*\\.(css|png|svg)"))
                    .toList()) {
                Files.write(folder.resolve(file.getFileName()), Files.readAllBytes(file));
            }
        }
    }
}
