package boltlore.catalogue.json;

import boltlore.catalogue.json.EntryEdit.What;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.SourceLocation;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Puts edits of positions, options, values and limits into the trees of a family's files. */
final class EntryEdits {

    private static final SourceLocation NOWHERE = SourceLocation.document("", 0);

    private final List<EntryEdit> edits;
    private final Set<EntryEdit> done = new HashSet<>();

    EntryEdits(List<EntryEdit> edits) {
        this.edits = edits;
    }

    /** Those that found no place. */
    List<EntryEdit> left() {
        return edits.stream().filter(edit -> !done.contains(edit)).toList();
    }

    /** family.json with its options and limits as edited; the same tree where nothing of it is. */
    Json family(Json tree) {
        Map<String, Json> members = members(tree);
        list(members, "options", What.OPTION, "");
        list(members, "limits", What.LIMIT, "");
        return same(tree, members);
    }

    /** A file of the kit with its positions as edited; a new one comes after the one that it stands below. */
    Json kit(Json tree) {
        Map<String, Json> members = members(tree);
        list(members, "positions", What.POSITION, "");
        return same(tree, members);
    }

    /** The new positions that stand below none: a file of their own. */
    Optional<Json> own() {
        List<Json> first = new ArrayList<>();
        added(What.POSITION, "", "", first);
        Map<String, Json> file = new LinkedHashMap<>();
        file.put("$schema", new Json.Text(NOWHERE, "../../../schema/kit.schema.json"));
        file.put("positions", new Json.Arr(NOWHERE, first));
        return first.isEmpty() ? Optional.empty() : Optional.of(new Json.Obj(NOWHERE, file));
    }

    private static Json same(Json tree, Map<String, Json> members) {
        return members.equals(members(tree)) ? tree : new Json.Obj(tree.location(), members);
    }

    private void list(Map<String, Json> members, String key, What what, String of) {
        List<Json> before = members.get(key) instanceof Json.Arr all ? all.items() : List.of();
        List<Json> after = new ArrayList<>();
        if (what != What.POSITION) {
            added(what, of, "", after);
        }
        for (Json entry : before) {
            String name = name(what, members(entry));
            Optional<EntryEdit> edit = edits.stream()
                    .filter(each -> each.kind() != KitEdit.Kind.ADDED
                            && is(each, what, of)
                            && each.name().equals(name))
                    .findFirst();
            edit.ifPresent(done::add);
            if (edit.filter(each -> each.kind() == KitEdit.Kind.REMOVED).isEmpty()) {
                after.add(edited(entry, what, name, edit));
            }
            added(what, of, name, after);
        }
        if (!after.equals(before)) {
            members.put(key, new Json.Arr(NOWHERE, after));
        }
    }

    private static boolean is(EntryEdit edit, What what, String of) {
        return edit.what() == what && edit.of().equals(of);
    }

    private static String name(What what, Map<String, Json> entry) {
        String own = text(entry.get(what.key()));
        return own.isEmpty() && what == What.POSITION ? Defaults.slug(text(entry.get("part"))) : own;
    }

    private void added(What what, String of, String below, List<Json> entries) {
        for (EntryEdit edit : edits) {
            if (edit.kind() == KitEdit.Kind.ADDED
                    && is(edit, what, of)
                    && edit.after().equals(below)) {
                done.add(edit);
                Map<String, Json> entry = new LinkedHashMap<>();
                entry.put(what.key(), new Json.Text(NOWHERE, edit.name()));
                edit.keys().forEach((key, change) -> put(entry, key, change.to()));
                if (what == What.POSITION) {
                    entry.put("lines", new Json.Arr(NOWHERE, List.of()));
                }
                entries.add(edited(new Json.Obj(NOWHERE, entry), what, edit.name(), Optional.empty()));
            }
        }
    }

    private Json edited(Json entry, What what, String name, Optional<EntryEdit> edit) {
        Map<String, Json> members = members(entry);
        if (what == What.OPTION) {
            list(members, "values", What.VALUE, name);
        }
        if (what == What.POSITION && edit.isPresent()) {
            members.putIfAbsent("position", new Json.Text(NOWHERE, name));
        }
        edit.ifPresent(each -> each.keys().forEach((key, change) -> put(members, key, change.to())));
        return same(entry, members);
    }

    private static void put(Map<String, Json> entry, String key, String value) {
        String place = key.equals("bag") && entry.containsKey("crate") ? "crate" : key;
        Json before = entry.get(place);
        if (value.isEmpty()) {
            entry.remove(place);
        } else if (before instanceof Json.Obj wording && key.equals("says")) {
            Map<String, Json> languages = members(wording);
            languages.put("en", new Json.Text(NOWHERE, value));
            entry.put(place, new Json.Obj(before.location(), languages));
        } else {
            entry.put(place, EntryEdit.CONDITIONS.contains(key) ? condition(value) : new Json.Text(NOWHERE, value));
        }
    }

    /** A condition that is no JSON stays a text, which the reading of the edited catalogue refuses. */
    static Json condition(String text) {
        return JsonFile.parse("", text.getBytes(StandardCharsets.UTF_8)) instanceof Outcome.Sound<Json> tree
                ? tree.value()
                : new Json.Text(NOWHERE, text);
    }

    static String text(@Nullable Json json) {
        return json instanceof Json.Text text ? text.text() : "";
    }

    private static Map<String, Json> members(Json json) {
        return json instanceof Json.Obj object ? new LinkedHashMap<>(object.members()) : new LinkedHashMap<>();
    }
}
