package boltlore.catalogue.json;

import boltlore.json.Json;
import boltlore.json.JsonOut;
import boltlore.json.SourceLocation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts edits of lines into the files of a family's kit: what nobody has changed stays as it is written. */
final class KitEdits {

    private final List<KitEdit> edits;
    private final List<KitEdit> done = new ArrayList<>();

    KitEdits(List<KitEdit> edits) {
        this.edits = edits;
    }

    /** Those that found no place. */
    List<KitEdit> left() {
        return edits.stream().filter(edit -> !done.contains(edit)).toList();
    }

    /** What the file is to hold, where it was changed before or is now. */
    Optional<JsonOut> into(Json tree, boolean changed, boolean ofKit) {
        int before = done.size();
        JsonOut text = ofKit ? file(tree) : plain(tree);
        return changed || done.size() > before ? Optional.of(text) : Optional.empty();
    }

    private JsonOut file(Json tree) {
        JsonOut.Members json = JsonOut.object();
        ((Json.Obj) tree).members().forEach((key, value) -> {
            if (key.equals("positions") && value instanceof Json.Arr positions) {
                List<JsonOut> left = new ArrayList<>();
                positions.items().forEach(position -> position(position).ifPresent(left::add));
                json.put(key, JsonOut.list(left));
            } else {
                json.put(key, plain(value));
            }
        });
        return json;
    }

    /** The position with its lines; nothing where its last line is taken out. */
    private Optional<JsonOut> position(Json position) {
        Map<String, Json> members = position instanceof Json.Obj object ? object.members() : Map.of();
        String name = EntryEdits.text(members.get("position"));
        if (!(members.get("lines") instanceof Json.Arr lines)) {
            return isOnlyLine(ownName(members)) ? onlyLine(members) : position(withLines(members));
        }
        List<JsonOut> left = new ArrayList<>();
        lines.items()
                .forEach(line -> line(name, line, lines.items().size() == 1).ifPresent(left::add));
        added(name).forEach(edit -> {
            left.add(changed(Map.of(), edit, true));
            done.add(edit);
        });
        JsonOut.Members json = JsonOut.object();
        members.forEach((key, value) -> json.put(key, key.equals("lines") ? JsonOut.list(left) : plain(value)));
        return left.isEmpty() ? Optional.empty() : Optional.of(json);
    }

    /** Whether the position can be written as its only line: it gets none beside it, and no name of its own. */
    private boolean isOnlyLine(String position) {
        return added(position).isEmpty()
                && edits.stream()
                        .noneMatch(edit ->
                                edit.position().equals(position) && edit.name().isPresent());
    }

    private List<KitEdit> added(String position) {
        return edits.stream()
                .filter(edit ->
                        edit.kind() == KitEdit.Kind.ADDED && edit.position().equals(position))
                .toList();
    }

    /** Of a position that is written as its only line. */
    private static String ownName(Map<String, Json> members) {
        String own = EntryEdits.text(members.get("position"));
        return own.isEmpty() ? Defaults.slug(EntryEdits.text(members.get("part"))) : own;
    }

    /** The same position with its only line below it, under the name that the line had. */
    private static Json withLines(Map<String, Json> members) {
        SourceLocation nowhere = SourceLocation.document("", 0);
        Json name = new Json.Text(nowhere, ownName(members));
        Map<String, Json> line = new LinkedHashMap<>(Map.of("line", name));
        Map<String, Json> position = new LinkedHashMap<>(Map.of("position", name));
        members.forEach((key, value) -> (Defaults.OF_ONLY_LINE.contains(key) ? line : position).put(key, value));
        // It was required when its only line is fitted.
        position.putIfAbsent("required", members.getOrDefault("when", new Json.Obj(nowhere, Map.of())));
        position.put("lines", new Json.Arr(nowhere, List.of(new Json.Obj(nowhere, line))));
        return new Json.Obj(nowhere, position);
    }

    /** A position that is written as its only line. */
    private Optional<JsonOut> onlyLine(Map<String, Json> members) {
        String name = ownName(members);
        Optional<KitEdit> edit = edits.stream()
                .filter(each -> each.position().equals(name) && each.kind() != KitEdit.Kind.ADDED)
                .findFirst();
        edit.ifPresent(done::add);
        if (edit.isPresent() && edit.get().kind() == KitEdit.Kind.REMOVED) {
            return Optional.empty();
        }
        Map<String, Json> named = new LinkedHashMap<>(members);
        if (edit.isPresent() && edit.get().part().isPresent()) {
            // Its name came from the part that it had.
            named.putIfAbsent("position", new Json.Text(SourceLocation.document("", 0), name));
        }
        return Optional.of(edit.map(change -> changed(named, change, false))
                .orElseGet(() -> plain(new Json.Obj(SourceLocation.document("", 0), members))));
    }

    private Optional<JsonOut> line(String position, Json line, boolean only) {
        Map<String, Json> members = line instanceof Json.Obj object ? object.members() : Map.of();
        String usual = only ? position : position + "-" + Defaults.slug(EntryEdits.text(members.get("part")));
        String name = members.containsKey("line") ? EntryEdits.text(members.get("line")) : usual;
        Optional<KitEdit> edit = edits.stream()
                .filter(each -> each.line().equals(name)
                        && each.position().equals(position)
                        && each.kind() != KitEdit.Kind.ADDED)
                .findFirst();
        edit.ifPresent(done::add);
        if (edit.isPresent() && edit.get().kind() == KitEdit.Kind.REMOVED) {
            return Optional.empty();
        }
        // Its usual name comes from its part, or from its being alone.
        boolean named = members.containsKey("line") || !added(position).isEmpty();
        return Optional.of(edit.map(change -> changed(
                        members,
                        change,
                        named || change.part().isPresent() || change.name().isPresent()))
                .orElseGet(() -> named && !members.containsKey("line") ? named(name, members) : plain(line)));
    }

    private static JsonOut named(String name, Map<String, Json> members) {
        JsonOut.Members json = JsonOut.object().put("line", name);
        members.forEach((key, value) -> json.put(key, plain(value)));
        return json;
    }

    private static JsonOut changed(Map<String, Json> members, KitEdit edit, boolean named) {
        Map<String, JsonOut> values = new LinkedHashMap<>();
        if (named) {
            values.put("line", JsonOut.text(edit.line()));
        }
        members.forEach((key, value) -> values.put(key, plain(value)));
        edit.name().ifPresent(name -> values.put("line", JsonOut.text(name.to())));
        edit.part().ifPresent(part -> values.put("part", JsonOut.text(part.to())));
        edit.quantity().ifPresent(quantity -> values.put("quantity", JsonOut.text(quantity.to())));
        edit.when().ifPresent(when -> values.put("when", plain(EntryEdits.condition(when.to()))));
        edit.note().ifPresent(note -> {
            if (note.to().isEmpty()) {
                values.remove("note");
            } else {
                values.put("note", JsonOut.text(note.to()));
            }
        });
        JsonOut.Members json = JsonOut.object();
        values.forEach(json::put);
        return json;
    }

    private static JsonOut plain(Json json) {
        if (json instanceof Json.Obj object) {
            JsonOut.Members members = JsonOut.object();
            object.members().forEach((key, value) -> members.put(key, plain(value)));
            return members;
        }
        if (json instanceof Json.Arr list) {
            return JsonOut.list(list.items(), KitEdits::plain);
        }
        if (json instanceof Json.Num number) {
            return JsonOut.number(number.number());
        }
        if (json instanceof Json.Truth truth) {
            return JsonOut.truth(truth.truth());
        }
        return json instanceof Json.Text text ? JsonOut.text(text.text()) : JsonOut.nothing();
    }
}
