package boltlore.cli;

import boltlore.bring.Brought;
import boltlore.bring.Known;
import boltlore.bring.Mapping;
import boltlore.exports.NewFiles;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Brings lists of parts from spreadsheets into a catalogue. */
@Command(
        name = "bring",
        description =
                "Read lists of parts from spreadsheets (XLSX, XLS, ODS, CSV), say what each column and row is taken"
                        + " for, ask where it is in doubt, and write them as files of a catalogue.")
final class BringCommand extends RoomCommand {

    private static final long LONG_KILOBYTES = 200;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Spreadsheets.")
    private List<Path> files = new ArrayList<>();

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description =
                    "The catalogue to write into, or a new folder: then a small workshop is written too. Without it"
                            + " nothing is written but the mapping.")
    private @Nullable Path into;

    @Option(
            names = "--mapping",
            paramLabel = "FILE",
            description =
                    "Where it is kept what each column is and what was answered; without it beside the spreadsheet,"
                            + " under its name with '.bring.json'. For one spreadsheet.")
    private @Nullable Path mapping;

    @Option(
            names = "--onto",
            paramLabel = "CATALOGUE",
            description =
                    "Take back lists that 'parts-list' wrote: say what was changed in them and which kits change.")
    private @Nullable Path onto;

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            description = "With --onto: write the edited catalogue into this new folder.")
    private @Nullable Path target;

    @Option(
            names = "--as-of-now",
            description =
                    "With --onto: take a list that does not say what it was written from as written from the catalogue"
                            + " as it is now; it takes out again what was edited there since.")
    private boolean asOfNow;

    @Option(
            names = "--yes",
            description = "With --to: write it even if its proof finds defects; a terminal asks, a script is refused.")
    private boolean insists;

    @Override
    int run(Screen screen) {
        if (onto != null) {
            BringOnto back = new BringOnto(this, screen, onto, target, asOfNow, insists);
            return files.stream().mapToInt(back::bring).max().orElse(Exit.OK);
        }
        if (mapping != null && files.size() > 1) {
            Fault one =
                    Fault.of("", "--mapping with " + files.size() + " spreadsheets", "one spreadsheet", "Name one.");
            return refused(List.of(one), Exit.USAGE);
        }
        List<JsonOut> answers = new ArrayList<>();
        int exit = Exit.OK;
        for (Path file : files) {
            exit = Math.max(exit, bring(screen, file, answers));
        }
        if (json()) {
            screen.line(JsonOut.list(answers).written().stripTrailing());
        }
        return exit;
    }

    private int bring(Screen screen, Path file, List<JsonOut> answers) {
        announce(file);
        Path kept = mapping != null ? mapping : file.resolveSibling(file.getFileName() + ".bring.json");
        Outcome<Known> known = BroughtInto.known(into);
        Outcome<Brought> read = known.then(there -> bytes(file)
                .then(bytes -> given(kept)
                        .then(found -> Brought.read(
                                file.toString(), bytes, found.isEmpty() ? null : found.get(0), family(file), there))));
        if (!(read instanceof Outcome.Sound<Brought> sound)) {
            screen.flush();
            return refused(read.faults(), Exit.FAULTS);
        }
        Brought brought = sound.value();
        if (!json() && isTerminal() && !brought.mapping().open().isEmpty()) {
            brought = new BringTalk(screen, input(), file, known).ask(brought);
        }
        List<Fault> unkept = new MappingKept(kept).keep(brought, into == null ? Path.of("catalog") : into);
        List<String> open = brought.mapping().open();
        if (json()) {
            answers.add(BroughtText.json(brought));
        } else {
            new BroughtText(screen, kept).print(brought);
        }
        if (!unkept.isEmpty()) {
            screen.flush();
            return refused(unkept, Exit.NOT_WRITTEN);
        }
        return !open.isEmpty() ? Exit.OPEN : into == null ? Exit.OK : write(screen, brought, into);
    }

    /** A long list takes some seconds: what is read is said before. */
    private void announce(Path file) {
        try {
            long kilobytes = Files.size(file) / 1024;
            if (Files.isRegularFile(file) && kilobytes > LONG_KILOBYTES) {
                PrintWriter progress = progress();
                progress.println("Reading " + file + ", " + kilobytes + " kB.");
                progress.flush();
            }
        } catch (IOException | SecurityException unknown) {
            // Reading it tells what is wrong.
        }
    }

    /** From Java 22 on there is a console without a terminal too; reading from it then ends at once, and nothing is asked. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean isTerminal() {
        return System.console() != null;
    }

    static BufferedReader input() {
        return new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    }

    /** The spreadsheet's bytes, if it is a plain file of bearable size. */
    static Outcome<byte[]> bytes(Path file) {
        Outcome<byte[]> read = JsonFile.bytes(file);
        return read.faults().isEmpty()
                ? read
                : Outcome.faulty(read.faults().stream()
                        .map(fault -> Fault.of(
                                fault.file(),
                                fault.found(),
                                fault.expected().replace("a JSON file", "a spreadsheet"),
                                fault.advice()))
                        .toList());
    }

    private static Outcome<List<Mapping>> given(Path kept) {
        return Files.exists(kept)
                ? JsonFile.bytes(kept)
                        .then(bytes -> Brought.mapping(kept.toString(), bytes))
                        .then(mapping -> Outcome.sound(List.of(mapping)))
                : Outcome.sound(List.of());
    }

    /** The file's name as the catalogue writes names. */
    private static String family(Path file) {
        String name = String.valueOf(file.getFileName()).replaceFirst("\\.[A-Za-z]+$", "");
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        return plain.isEmpty()
                ? "list"
                : plain.substring(0, Math.min(40, plain.length())).replaceAll("-+$", "");
    }

    private int write(Screen screen, Brought brought, Path folder) {
        Outcome<List<Path>> written = NewFiles.writeTexts(folder, brought.files());
        if (!(written instanceof Outcome.Sound<List<Path>> sound)) {
            screen.flush();
            return refused(written.faults(), Exit.NOT_WRITTEN);
        }
        return new BroughtInto(this, json() ? new Screen(aside()) : screen)
                .judge(folder, brought.mapping().family(), sound.value());
    }
}
