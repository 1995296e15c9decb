package boltlore.json;

import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What the schemas share: the shapes of texts and numbers, and what has a language of its own. */
public final class CommonSchema {

    private static final Path LANGUAGES = Path.of("src/test/resources/schema/languages.json");

    private CommonSchema() {}

    /** The schema's text. The languages of conditions and choices are kept by hand; near misses and slips try them. */
    public static String text(Map<TextShape, String> texts) {
        Map<String, JsonOut> shared = new TreeMap<>();
        texts.forEach((shape, name) -> shared.put(name, text(shape).put("description", shape.says())));
        shared.put("text", string("\\S", Values.LONGEST_TEXT));
        shared.put("date", string("^(19|20|21)[0-9]{2}-[0-9]{2}-[0-9]{2}$", 10).put("format", "date"));
        shared.put("decimal", number("number", "^-?[0-9]+(\\.[0-9]+)?$"));
        shared.put("notNegative", number("number", "^[0-9]+(\\.[0-9]+)?$"));
        shared.put("positive", number("number", "^(?=.*[1-9])[0-9]+(\\.[0-9]+)?$"));
        shared.put("whole", number("integer", "^-?[0-9]+(\\.0+)?$"));
        shared.put("count", number("integer", "^[0-9]+(\\.0+)?$"));
        languages().members().forEach((name, json) -> shared.put(name, copy(json)));
        JsonOut.Members definitions = JsonOut.object();
        shared.forEach(definitions::put);
        return JsonOut.object()
                .put("$schema", "https://json-schema.org/draft/2020-12/schema")
                .put("title", "What the files of a catalogue share")
                .put("$defs", definitions)
                .written();
    }

    static JsonOut.Members text(TextShape shape) {
        return string(shape.pattern(), shape.longest());
    }

    private static JsonOut.Members string(String pattern, int longest) {
        return JsonOut.object().put("type", "string").put("pattern", pattern).put("maxLength", longest);
    }

    private static JsonOut.Members number(String type, String pattern) {
        return JsonOut.object()
                .put("type", JsonOut.list(List.of(JsonOut.text(type), JsonOut.text("string"))))
                .put("pattern", pattern)
                .put("maxLength", Values.LONGEST_NUMBER);
    }

    private static Json.Obj languages() {
        if (JsonFile.read(LANGUAGES) instanceof Outcome.Sound<Json> sound && sound.value() instanceof Json.Obj object) {
            return object;
        }
        throw new AssertionError(JsonFile.read(LANGUAGES).faults().toString());
    }

    private static JsonOut copy(Json json) {
        if (json instanceof Json.Obj object) {
            JsonOut.Members copy = JsonOut.object();
            object.members().forEach((key, value) -> copy.put(key, copy(value)));
            return copy;
        }
        if (json instanceof Json.Arr list) {
            return JsonOut.list(list.items(), CommonSchema::copy);
        }
        if (json instanceof Json.Text text) {
            return JsonOut.text(text.text());
        }
        if (json instanceof Json.Num number) {
            return JsonOut.number(number.number());
        }
        return json instanceof Json.Truth truth ? JsonOut.truth(truth.truth()) : JsonOut.nothing();
    }
}
