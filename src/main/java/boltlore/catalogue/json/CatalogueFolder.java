package boltlore.catalogue.json;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.TextShape;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Which files of a folder make up the catalogue. */
final class CatalogueFolder {

    static final String WORKSHOP = "workshop/workshop.json";
    static final String MARKETS = "workshop/markets.json";
    static final String COATING = "workshop/coating.json";
    static final String DEFAULTS = "workshop/defaults.json";
    static final String CAUTIONS = "workshop/cautions.json";
    static final String PRICING = "workshop/pricing.json";
    static final String SHIPPING = "workshop/shipping.json";
    static final String CAPACITY = "workshop/capacity.json";
    static final String STORES = "workshop/stores.json";
    static final String HOUSE = "workshop/house.json";
    static final String FINISHES = "finishes.json";
    static final String MATERIALS = "materials.json";

    private static final List<String> SINGLE = List.of(
            WORKSHOP, MARKETS, COATING, CAUTIONS, DEFAULTS, PRICING, SHIPPING, CAPACITY, STORES, HOUSE, FINISHES,
            MATERIALS);
    private static final List<String> NOT_CATALOGUE = List.of("orders", "remnants", "schema", "lists");
    private static final List<String> FAMILY = List.of(
            "family.json",
            "companions.json",
            "weights.json",
            "electrics.json",
            "tests.json",
            "joints.json",
            "fits.json",
            "driving.json");
    private static final int DEEPEST = 8;

    private final Path folder;
    private final Faults faults = new Faults();
    private final SortedMap<String, Path> files = new TreeMap<>();

    private CatalogueFolder(Path folder) {
        this.folder = folder;
    }

    /** The catalogue's files, and what is wrong with their names and places; faulty only where there is no folder. */
    static Outcome<CatalogueFolder> look(Path folder) {
        if (!Files.isDirectory(folder)) {
            String found = Files.exists(folder) ? "a file" : "nothing of that name";
            return Outcome.faulty(Fault.of(folder.toString(), found, "a catalogue folder", "Check the path."));
        }
        CatalogueFolder reading = new CatalogueFolder(folder);
        reading.list(folder, "", 1);
        reading.required();
        return Outcome.sound(reading);
    }

    /** The files by their path within the folder, with '/' between the steps. */
    SortedMap<String, Path> files() {
        return files;
    }

    Faults faults() {
        return faults;
    }

    private void list(Path within, String prefix, int depth) {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(within)) {
            for (Path entry : entries) {
                String name = entry.getFileName().toString();
                boolean ours = !name.startsWith(".") && !(depth == 1 && NOT_CATALOGUE.contains(name));
                if (ours && Files.isDirectory(entry) && name.endsWith(".json")) {
                    faults.add(
                            Fault.of(entry.toString(), "a folder", "a JSON file", "Rename it, or put the file there."));
                } else if (ours && Files.isDirectory(entry) && depth < DEEPEST) {
                    list(entry, prefix + name + "/", depth + 1);
                } else if (ours && name.endsWith(".json")) {
                    take(prefix + name, entry);
                }
            }
        } catch (IOException | SecurityException unreadable) {
            faults.add(Fault.of(
                    within.toString(), "a folder that cannot be read", "a readable folder", "Check its permissions."));
        }
    }

    private void take(String path, Path file) {
        if (isKnown(path)) {
            files.put(path, file);
        } else {
            faults.add(Fault.of(
                    file.toString(),
                    "a JSON file that is no part of a catalogue",
                    String.join(", ", SINGLE)
                            + ", parts/….json, families/…/family.json, families/…/companions.json, families/…/weights.json,"
                            + " families/…/electrics.json, families/…/tests.json, families/…/joints.json,"
                            + " families/…/fits.json, families/…/driving.json"
                            + " or families/…/kit/….json",
                    "Move or rename it."));
        }
    }

    private static boolean isKnown(String path) {
        String[] steps = path.split("/", -1);
        return SINGLE.contains(path)
                || (steps.length == 2 && steps[0].equals("parts"))
                || (steps.length >= 3 && steps[0].equals("families") && isOfFamily(steps));
    }

    private static boolean isOfFamily(String[] steps) {
        boolean head = steps.length == 3 && FAMILY.contains(steps[2]);
        return TextShape.NAME.fits().test(steps[1]) && (head || (steps.length == 4 && steps[2].equals("kit")));
    }

    private void required() {
        List.of(WORKSHOP, MARKETS, COATING, CAUTIONS).forEach(this::require);
        files.keySet().stream()
                .filter(path -> path.startsWith("families/"))
                .map(path -> path.split("/", -1)[1])
                .distinct()
                .toList()
                .forEach(family -> require("families/" + family + "/family.json"));
    }

    private void require(String path) {
        if (!files.containsKey(path)) {
            faults.add(Fault.of(folder.resolve(path).toString(), "nothing of that name", "a JSON file", "Add it."));
        }
    }
}
