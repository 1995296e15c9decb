package boltlore.book.db;

import boltlore.book.Entry;
import boltlore.book.Person;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * A book as lines of JSON: each entry after the contents that came with it, the persons last. The same book always gives
 * the same bytes, whatever database it is kept in.
 */
public final class Transfer {

    private final Book book;

    public Transfer(Book book) {
        this.book = book;
    }

    /** Writes all of the book; tells how many entries. */
    public long export(Writer out) {
        return book.read(reading -> {
            long[] count = {0};
            reading.journal().each(entry -> {
                reading.contents()
                        .with(entry.number())
                        .forEach(hash -> line(
                                out,
                                JsonOut.object()
                                        .put("content", hash)
                                        .put(
                                                "bytes",
                                                Base64.getEncoder()
                                                        .encodeToString(reading.contents()
                                                                .of(hash)))
                                        .writtenInLine()));
                line(out, entry.exported());
                count[0]++;
            });
            reading.persons().all().forEach(person -> line(out, person(person).writtenInLine()));
            return count[0];
        });
    }

    private static void line(Writer out, String line) {
        try {
            out.write(line);
            out.write('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A person with all data, as they are handed out. */
    public static JsonOut.Members person(Person person) {
        JsonOut.Members details = JsonOut.object();
        person.details().forEach(details::put);
        return JsonOut.object()
                .put("personal", person.key())
                .put("role", person.role())
                .putIfAny("name", person.name())
                .put("details", details)
                .put("since", person.since())
                .putIfAny("erased", person.erased());
    }

    /**
     * Reads lines of an export into a book that holds nothing yet, or the beginning of just this journal; all of it or
     * nothing.
     *
     * @param name what messages call the export
     * @param lines opened anew for each try
     */
    public Outcome<Long> read(String name, Lines lines) {
        Outcome<Long> entries = book.transactionOutcome(true, handle -> {
            try (BufferedReader opened = lines.open()) {
                return new Replay(name, handle).of(opened);
            } catch (IOException e) {
                return Outcome.faulty(
                        Fault.of(name, "lines that cannot be read", "lines of JSON in UTF-8", "Check the file."));
            }
        });
        if (entries.faults().isEmpty()) {
            book.count();
        }
        return entries;
    }

    /** An export to read from its first line. */
    public interface Lines {
        BufferedReader open() throws IOException;
    }

    /** One import under way. */
    private static final class Replay {

        private final String name;
        private final Handle handle;
        private final Reading reading;
        private final SortedMap<String, byte[]> contents = new TreeMap<>();
        private int line;
        private long last;
        private String chain = Entry.NO_CHAIN;

        Replay(String name, Handle handle) {
            this.name = name;
            this.handle = handle;
            this.reading = new Reading(handle);
        }

        Outcome<Long> of(BufferedReader lines) throws IOException {
            for (@Nullable String text = lines.readLine(); text != null; text = lines.readLine()) {
                line++;
                Outcome<Long> taken = take(text);
                if (!taken.faults().isEmpty()) {
                    return taken;
                }
            }
            return last == 0 ? Outcome.faulty(fault("no entry", "the export of a book", "")) : longer();
        }

        private Outcome<Long> longer() {
            long known = reading.journal().last().map(Entry::number).orElse(0L);
            return known > last
                    ? Outcome.faulty(fault(
                            "an export that ends with entry " + last,
                            "one that goes on to entry " + known + " at least, which this book holds",
                            "The book is the newer of the two: nothing was changed."))
                    : Outcome.sound(last);
        }

        private Outcome<Long> take(String text) {
            return JsonFile.parse(name, text.getBytes(StandardCharsets.UTF_8)).then(json -> {
                Faults faults = new Faults();
                ObjectReader reader = ObjectReader.of(json, faults);
                if (reader.has("entry")) {
                    Entry entry = Entry.read(reader);
                    return placed(faults.orElse(entry)).then(this::entry);
                }
                if (reader.has("content")) {
                    String hash = reader.text("content");
                    byte[] content = content(reader);
                    reader.done();
                    return placed(faults.orElse(content)).then(bytes -> content(hash, bytes));
                }
                Person person = readPerson(reader);
                return placed(faults.orElse(person)).then(this::person);
            });
        }

        /** Every line is a text of its own with a line 1. */
        private <T> Outcome<T> placed(Outcome<T> read) {
            return read.faults().isEmpty()
                    ? read
                    : Outcome.faulty(read.faults().stream()
                            .map(fault -> new Fault(
                                    name, line, fault.place(), fault.found(), fault.expected(), fault.advice()))
                            .toList());
        }

        private static byte[] content(ObjectReader reader) {
            return reader.get("bytes", boltlore.json.Shape.Plain.TEXT)
                    .filter(boltlore.json.Json.Text.class::isInstance)
                    .map(json -> decoded(((boltlore.json.Json.Text) json).text()))
                    .orElse(new byte[0]);
        }

        private static byte[] decoded(String text) {
            try {
                return Base64.getDecoder().decode(text);
            } catch (IllegalArgumentException none) {
                return new byte[0];
            }
        }

        private Outcome<Long> content(String hash, byte[] bytes) {
            if (!Entry.sha256(bytes).equals(hash)) {
                return Outcome.faulty(fault(
                        "a content that is not what its hash says",
                        "the content of hash " + hash,
                        "The export was changed: export again."));
            }
            contents.put(hash, bytes);
            return Outcome.sound(0L);
        }

        private Outcome<Long> entry(Entry entry) {
            if (!entry.follows(last, chain)) {
                return Outcome.faulty(fault(
                        "an entry " + entry.number() + " that was changed, or does not follow entry " + last,
                        "the entries of one journal in their order, each as it was written",
                        "The export was changed or cut: export again."));
            }
            last = entry.number();
            chain = entry.chain();
            Optional<Entry> known = reading.journal().entry(entry.number());
            if (known.isPresent()) {
                contents.clear();
                return known.get().chain().equals(chain)
                        ? Outcome.sound(last)
                        : Outcome.faulty(fault(
                                "entry " + last + " of another journal",
                                "a book that is empty, or holds the beginning of this journal",
                                "Import into a new book: --book names it."));
            }
            contents.values().forEach(content -> reading.contents().keep(content, entry.number()));
            contents.clear();
            reading.journal().insert(Stream.of(entry));
            return placed(Sums.take(handle, entry)).then(happening -> Outcome.sound(entry.number()));
        }

        private Outcome<Long> person(Person person) {
            reading.persons().put(person);
            return Outcome.sound(0L);
        }

        private Fault fault(String found, String expected, String advice) {
            return new Fault(name, line, "", found, expected, advice);
        }
    }

    private static Person readPerson(ObjectReader reader) {
        SortedMap<String, String> details = new TreeMap<>();
        Person person = new Person(
                reader.text("personal"),
                reader.text("role"),
                reader.findText("name").orElse(""),
                details,
                reader.text("since"),
                reader.findText("erased").orElse(""));
        reader.object("details", members -> {
            members.keys().forEach(key -> details.put(key, members.text(key)));
            return details;
        });
        reader.done();
        return person;
    }
}
