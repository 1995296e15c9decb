package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.catalogue.json.PartlyRead;
import boltlore.checking.Checks;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.proof.FamilyProof;
import boltlore.proof.Prover;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** A copy of the demo catalogue in which slips are planted and mended again, and what reading, checks and proofs see of them. */
final class PlantedCopy {

    /** Where a fault is seen first. */
    enum Seen {
        READING,
        CHECK,
        PROOF,
        UNSEEN
    }

    private final Path folder;
    private final Map<Path, String> texts = new HashMap<>();
    private final Map<String, Set<String>> sound = new HashMap<>();

    private PlantedCopy(Path folder) {
        this.folder = folder;
    }

    /** The demo's files in a folder of their own; orders, schemas and remnants, which are no part of the catalogue, get no slips. */
    static PlantedCopy of(Path folder) throws IOException {
        PlantedCopy copy = new PlantedCopy(folder);
        Path demo = Path.of("catalog");
        try (Stream<Path> all = Files.walk(demo)) {
            for (Path each : all.filter(Files::isRegularFile).sorted().toList()) {
                Path name = demo.relativize(each);
                Files.createDirectories(folder.resolve(name).toAbsolutePath().getParent());
                Files.copy(each, folder.resolve(name));
                if (name.toString().endsWith(".json") && !name.toString().matches("(orders|schema|remnants|lists).*")) {
                    copy.texts.put(name, Files.readString(each));
                }
            }
        }
        Catalogue whole = copy.read().rest();
        whole.families().values().forEach(family -> copy.sound.put(family.name(), proved(whole, family)));
        return copy;
    }

    Path folder() {
        return folder;
    }

    List<Path> files() {
        return texts.keySet().stream().sorted().toList();
    }

    String text(Path file) {
        return texts.getOrDefault(file, "");
    }

    /** What reading or checks see, a proof left aside. */
    Seen checked(Map<Path, String> changed) throws IOException {
        plant(changed);
        try {
            PartlyRead read = read();
            return !read.whole().faults().isEmpty() ? Seen.READING : remarks(read) ? Seen.CHECK : Seen.UNSEEN;
        } finally {
            mend(changed);
        }
    }

    private static boolean remarks(PartlyRead read) {
        return !Checks.checkRest(read.rest(), read.faulty(), read.workshopKnown(), read.familiesKnown())
                .isEmpty();
    }

    /** Whether the proof of a family that a changed file belongs to says anything else than of the sound demo. */
    boolean provedOtherwise(Map<Path, String> changed) throws IOException {
        plant(changed);
        try {
            PartlyRead read = read();
            return !read.whole().faults().isEmpty()
                    || read.rest().families().values().stream()
                            .filter(family -> changed.keySet().stream().anyMatch(file -> mayTouch(file, family.name())))
                            .anyMatch(family ->
                                    !sound.getOrDefault(family.name(), Set.of()).equals(proved(read.rest(), family)));
        } finally {
            mend(changed);
        }
    }

    /** What of slips that are planted together is seen by proofs, each slip by itself: as long as nothing is found, none is. */
    <T> List<T> proofSees(List<T> together, Changes<T> changes) throws IOException {
        if (together.isEmpty() || !provedOtherwise(changes.of(together))) {
            return List.of();
        }
        if (together.size() == 1) {
            return together;
        }
        int half = together.size() / 2;
        List<T> seen = new ArrayList<>(proofSees(together.subList(0, half), changes));
        seen.addAll(proofSees(together.subList(half, together.size()), changes));
        return seen;
    }

    /** How the files read with slips in them. */
    interface Changes<T> {

        Map<Path, String> of(List<T> slips);
    }

    private void plant(Map<Path, String> changed) throws IOException {
        for (Map.Entry<Path, String> each : changed.entrySet()) {
            Files.writeString(folder.resolve(each.getKey()), each.getValue());
        }
    }

    private void mend(Map<Path, String> changed) throws IOException {
        for (Path file : changed.keySet()) {
            Files.writeString(folder.resolve(file), text(file));
        }
    }

    private static boolean mayTouch(Path file, String family) {
        return !file.startsWith("families") || file.startsWith(Path.of("families", family));
    }

    private PartlyRead read() {
        if (CatalogueReader.readAsFar(folder) instanceof Outcome.Sound<PartlyRead> sound) {
            return sound.value();
        }
        throw new IllegalStateException("a catalogue that cannot be read at all");
    }

    private static Set<String> proved(Catalogue catalogue, Family family) {
        FamilyProof proof = Prover.prove(catalogue, family, ProvedKinds.all(), Deadline.NONE, Prover.Progress.NONE);
        Set<String> titles = new HashSet<>();
        TrialKits.of(CatalogueSession.of(catalogue), proof, Deadline.NONE)
                .with(proof)
                .openDefects()
                .forEach(defect -> titles.add(defect.statement().title()));
        return titles;
    }
}
