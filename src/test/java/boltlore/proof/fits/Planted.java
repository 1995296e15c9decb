package boltlore.proof.fits;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.checking.Checks;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.logic.KitConditions;
import boltlore.proof.Answer;
import boltlore.proof.Prover;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A copy of the demo catalogue with something changed in it. */
final class Planted {

    static final String VAN = "pannier-van";
    static final String PICKUP = "stook-pickup";

    private record Edit(String file, UnaryOperator<String> change) {}

    private final List<Edit> edits = new ArrayList<>();

    /** The demo as it is delivered. */
    static Planted demo() {
        return new Planted();
    }

    /** Changes a text that stands in that file, wherever it stands there. */
    Planted in(String file, String from, String to) {
        return rewriting(file, text -> {
            assertThat(text).as(file).contains(from);
            return text.replace(from, to);
        });
    }

    /** Changes a whole file. */
    Planted rewriting(String file, UnaryOperator<String> change) {
        edits.add(new Edit(file, change));
        return this;
    }

    Planted inKit(String family, String file, String from, String to) {
        return in("families/" + family + "/kit/" + file + ".json", from, to);
    }

    Planted inFits(String family, String from, String to) {
        return in("families/" + family + "/fits.json", from, to);
    }

    Planted inPart(String file, String from, String to) {
        return in("parts/" + file + ".json", from, to);
    }

    /** What does not fit in some valid order of the family, by its title. */
    List<String> found(String family) {
        return shown(family).stream().map(defect -> defect.statement().title()).toList();
    }

    /** What does not fit in some valid order of the family; that order's own kit has it as well. */
    List<Answer.Defect> shown(String family) {
        Catalogue catalogue = catalogue();
        List<Answer.Defect> defects = Prover.prove(
                        catalogue, catalogue.family(family), FitKinds.all(), Deadline.NONE, Prover.Progress.NONE)
                .defects()
                .toList();
        for (Answer.Defect defect : defects) {
            assertThat(FitKinds.of(catalogue, defect.witness().orElseThrow(), line -> false)
                            .all())
                    .as(defect.statement().title())
                    .anySatisfy(finding -> {
                        assertThat(finding.kind().code() + ": " + finding.subject())
                                .isEqualTo(defect.statement().title());
                        assertThat(finding.says()).isEqualTo(defect.statement().refuted());
                        assertThat(finding.severity())
                                .isEqualTo(defect.statement().kind().severity());
                    });
        }
        return defects;
    }

    /** The parts of the lines that the order's kit has. */
    Set<String> linesOf(Choices order) {
        Catalogue catalogue = catalogue();
        KitConditions kit = new KitConditions(catalogue, order.family(), line -> false, order);
        return order.family()
                .lines()
                .filter(line -> kit.in(line.name()).isAlways())
                .map(line -> line.part().text())
                .collect(Collectors.toSet());
    }

    /** What the check of the catalogue says, by subject and check. */
    List<String> remarked() {
        return Checks.check(catalogue()).stream()
                .map(remark -> remark.about() + ": " + remark.check().written())
                .toList();
    }

    Catalogue catalogue() {
        try {
            Path folder = Files.createTempDirectory("planted");
            try {
                copy(Path.of("catalog"), folder);
                for (Edit edit : edits) {
                    String text = Files.readString(folder.resolve(edit.file()));
                    Files.writeString(folder.resolve(edit.file()), edit.change().apply(text));
                }
                return sound(CatalogueReader.read(folder));
            } finally {
                delete(folder);
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private static Catalogue sound(Outcome<Catalogue> outcome) {
        if (outcome instanceof Outcome.Sound<Catalogue> sound) {
            return sound.value();
        }
        throw new AssertionError(outcome.faults().toString());
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.filter(Files::isRegularFile).toList()) {
                Path there = to.resolve(from.relativize(each));
                Files.createDirectories(there.getParent());
                Files.copy(each, there);
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path left, IOException failed) throws IOException {
                Files.delete(left);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
