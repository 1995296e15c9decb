package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.db.Server;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A desk at one book: runs commands on it as people type them. */
record DeskAt(String book) {

    static DeskAt file(Path folder) {
        return new DeskAt(folder.resolve("book.db").toString());
    }

    static DeskAt server() {
        return new DeskAt(Server.running().database());
    }

    Ran run(Object... words) {
        List<Object> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--book", book, "--by", "Kim Aster"));
        return Ran.boltlore(all.toArray());
    }

    /** Runs what must succeed; tells what it printed, on one line. */
    String done(Object... words) {
        Ran ran = run(words);
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        return ran.out().replaceAll("\\s+", " ");
    }

    /** Runs what must be refused; tells why, on one line. */
    String refused(Object... words) {
        Ran ran = run(words);
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.FAULTS);
        return ran.err().replaceAll("\\s+", " ");
    }

    /** An order file with one text in the place of another, and brackets that support nothing left out. */
    static Path order(Path folder, String from, String to) throws IOException {
        String text = Files.readString(Path.of("catalog/orders/bl-1001.json"));
        assertThat(text).contains(from);
        return Files.writeString(
                Files.createTempDirectory(folder, "order").resolve("order.json"),
                text.replace(from, to).replace("\"leftOut\": \"undecided\"", "\"leftOut\": \"all\""));
    }

    /** All that the book holds, as lines. */
    String exported(Path folder) throws IOException {
        Path file = Files.createTempDirectory(folder, "export").resolve("book.jsonl");
        done("book", "export", file);
        return Files.readString(file);
    }
}
