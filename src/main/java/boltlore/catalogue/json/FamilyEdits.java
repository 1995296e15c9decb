package boltlore.catalogue.json;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.KeptLayout;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * What somebody has changed in a family.
 *
 * @param entries its positions, options, values and limits
 * @param lines the lines of its kit
 */
public record FamilyEdits(List<EntryEdit> entries, List<KitEdit> lines) {

    /**
     * Each edit in a sentence.
     *
     * @param conditions how a condition, as the catalogue writes it, is said
     * @return what is edited, in the order of the family
     */
    public List<String> says(UnaryOperator<String> conditions) {
        return Stream.concat(
                        entries.stream().map(edit -> edit.says(conditions)),
                        lines.stream().map(edit -> edit.says(conditions)))
                .toList();
    }

    /**
     * The files that change, laid out as they were but for what is edited.
     *
     * @param folder of the catalogue
     * @param family whose files they are
     * @return the texts by path within the folder; an edit that finds no place is a fault
     */
    public Outcome<SortedMap<String, String>> apply(Path folder, String family) {
        return CatalogueFolder.look(folder).then(files -> {
            SortedMap<String, Json> trees = new TreeMap<>();
            Map<String, String> written = new TreeMap<>();
            String own = "families/" + family + "/";
            files.files().forEach((path, file) -> {
                if (path.startsWith(own + "kit/") || path.equals(own + "family.json")) {
                    JsonFile.bytes(file).then(bytes -> {
                        written.put(path, new String(bytes, StandardCharsets.UTF_8));
                        return JsonFile.parse(file.toString(), bytes).then(tree -> {
                            trees.put(path, tree);
                            return Outcome.sound(tree);
                        });
                    });
                }
            });
            return texts(trees, own, folder).then(texts -> {
                SortedMap<String, String> kept = new TreeMap<>();
                texts.forEach((path, json) -> kept.put(
                        path, written.containsKey(path) ? KeptLayout.of(written.get(path), json) : json.written()));
                return Outcome.sound(kept);
            });
        });
    }

    private Outcome<SortedMap<String, JsonOut>> texts(SortedMap<String, Json> trees, String own, Path folder) {
        EntryEdits put = new EntryEdits(entries);
        KitEdits kit = new KitEdits(lines);
        SortedMap<String, JsonOut> texts = new TreeMap<>();
        Map<String, Json> edited = new TreeMap<>();
        put.own().ifPresent(positions -> edited.put(free(trees, own), positions));
        trees.forEach((path, tree) -> edited.put(path, path.contains("/kit/") ? put.kit(tree) : put.family(tree)));
        edited.forEach((path, tree) -> kit.into(tree, tree != trees.get(path), path.contains("/kit/"))
                .ifPresent(text -> texts.put(path, text)));
        List<Fault> faults = new ArrayList<>();
        Stream.concat(
                        put.left().stream().map(edit -> edit.says(UnaryOperator.identity())),
                        kit.left().stream().map(edit -> edit.says(UnaryOperator.identity())))
                .forEach(says -> faults.add(Fault.of(
                        folder.toString(),
                        says,
                        "an entry that stands in the files of its family",
                        "Change it there.")));
        return faults.isEmpty() ? Outcome.sound(texts) : Outcome.faulty(faults);
    }

    private static String free(Map<String, Json> trees, String own) {
        String path = own + "kit/added.json";
        for (int i = 2; trees.containsKey(path); i++) {
            path = own + "kit/added-" + i + ".json";
        }
        return path;
    }
}
