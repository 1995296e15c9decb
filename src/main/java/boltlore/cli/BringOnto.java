package boltlore.cli;

import boltlore.bring.BroughtBack;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.checking.Checks;
import boltlore.checking.Remark;
import boltlore.exports.NewFiles;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Takes an edited list of lines back: says what was changed and which kits change by it, and writes the whole edited
 * catalogue into a new folder where one is named. The catalogue itself stays as it is.
 */
record BringOnto(
        RoomCommand command,
        Screen screen,
        Path catalogue,
        @Nullable Path target,
        boolean asOfNow,
        boolean insists) {

    private static final Duration LONGEST = Duration.ofSeconds(60);

    int bring(Path file) {
        Outcome<Integer> exit = CatalogueReader.read(catalogue)
                .then(before -> BringCommand.bytes(file)
                        .then(bytes -> BroughtBack.read(file.toString(), bytes, before, asOfNow)
                                .then(back -> changed(before, back))));
        return command.done(screen, exit);
    }

    private Outcome<Integer> changed(Catalogue before, BroughtBack back) {
        String family = back.family().name();
        List<String> says = back.says();
        screen.line(says.isEmpty() ? "Nothing was changed." : "Changed in " + family + ": " + says.size());
        says.forEach(each -> screen.wrapped(2, each));
        back.notes().forEach(note -> screen.wrapped(0, note));
        if (says.isEmpty()) {
            return back.faults().isEmpty() ? Outcome.sound(Exit.OK) : Outcome.faulty(back.faults());
        }
        Outcome<SortedMap<String, String>> edited = back.edits().apply(catalogue, family);
        return edited instanceof Outcome.Sound<SortedMap<String, String>> texts
                ? proved(before, back, texts.value())
                : sound(Outcome.<Catalogue>faulty(edited.faults()), back).then(none -> Outcome.sound(Exit.OK));
    }

    /** Reads the edited catalogue from a folder of its own, which is gone when the proof is made. */
    private Outcome<Integer> proved(Catalogue before, BroughtBack back, SortedMap<String, String> changes) {
        try {
            SortedMap<String, byte[]> whole = contents();
            changes.forEach((path, text) -> whole.put(path, text.getBytes(StandardCharsets.UTF_8)));
            Path aside = Files.createTempDirectory("boltlore");
            try {
                String family = back.family().name();
                return NewFiles.write(aside, whole)
                        .then(written -> sound(
                                new EditedFaults(catalogue, aside, back, changes.keySet())
                                        .of(CatalogueReader.read(aside)),
                                back))
                        .then(after -> Outcome.sound(worse(kits(before, after, family), holds(before, after, family))))
                        .then(exit -> concluded(exit, whole));
            } finally {
                delete(aside);
            }
        } catch (IOException | UncheckedIOException failure) {
            return Outcome.faulty(
                    Fault.of(catalogue.toString(), "a file that cannot be copied", "a readable catalogue", ""));
        }
    }

    /** The edited catalogue, if neither the workbook nor what came of it has a fault: all of them at once. */
    private static Outcome<Catalogue> sound(Outcome<Catalogue> read, BroughtBack back) {
        List<Fault> all =
                Stream.concat(back.faults().stream(), read.faults().stream()).toList();
        return all.isEmpty() ? read : Outcome.faulty(all);
    }

    private int kits(Catalogue before, Catalogue after, String family) {
        Deadline until = Deadline.in(LONGEST.toNanos(), System::nanoTime);
        ProofTask.Done done = new RevisionTask(before, after, List.of(after.family(family)))
                .done(until, new ProofProgress(command.progress()));
        done.print(screen);
        return done.exit();
    }

    /** A defect that was found is told before a question that was left open. */
    private static int worse(int kits, int holds) {
        return kits == Exit.STOPPED || holds == Exit.STOPPED ? Exit.STOPPED : Math.max(kits, holds);
    }

    /** Says what is doubtful in the edited catalogue and was not before, and what its proof finds. */
    private int holds(Catalogue before, Catalogue after, String family) {
        Set<Remark> known = new HashSet<>(Checks.check(before));
        List<Remark> fresh = Checks.check(after).stream()
                .filter(remark -> !known.contains(remark))
                .toList();
        screen.line("To check since the edits: " + fresh.size());
        fresh.forEach(remark -> screen.wrapped(2, remark.says()));
        Deadline until = Deadline.in(LONGEST.toNanos(), System::nanoTime);
        ProofResults done = new ProvingTask(
                        after,
                        List.of(after.family(family)),
                        new ProofFiles(),
                        (folder, sets) -> Outcome.sound(List.of()))
                .done(until, new ProofProgress(command.progress()));
        if (done.exit() == Exit.OK) {
            screen.line("Proved: " + family + " holds as edited.");
        } else {
            done.printOpen(screen);
            screen.line("");
        }
        return done.exit();
    }

    /** Writes what holds; what does not where somebody insists, in the terminal or by --yes. */
    private Outcome<Integer> concluded(int exit, SortedMap<String, byte[]> whole) {
        if (target == null) {
            screen.wrapped(0, "Nothing was written. --to FOLDER writes the edited catalogue into a new folder.");
            return Outcome.sound(exit);
        }
        if (exit != Exit.OK
                && !insists
                && !said("The edited catalogue does not hold as it is. Write it all the same?")) {
            screen.wrapped(
                    0,
                    "Nothing was written, for the edited catalogue does not hold as it is. Edit the workbook and bring it"
                            + " again; --yes writes it all the same.");
            return Outcome.sound(exit);
        }
        return NewFiles.write(target, whole).then(files -> {
            screen.line("Written into " + target + ": " + files.size() + " files.");
            return Outcome.sound(exit);
        });
    }

    /** Whether somebody in a terminal says yes; a script is not asked. */
    private boolean said(String question) {
        return OnTerminal.isTerminal(Sure.INPUT)
                && new Dialogue(screen, BringCommand.input())
                        .ask(question + " Type yes:")
                        .filter("yes"::equalsIgnoreCase)
                        .isPresent();
    }

    /** All files of the catalogue's folder by path. */
    private SortedMap<String, byte[]> contents() throws IOException {
        SortedMap<String, byte[]> contents = new TreeMap<>();
        try (Stream<Path> all = Files.walk(catalogue)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String path = catalogue.relativize(file).toString().replace('\\', '/');
                contents.put(path, Files.readAllBytes(file));
            }
        }
        return contents;
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
