package boltlore.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The smallest family of catalog/README.md, copied out as it says there, with a question that takes several answers. */
public final class Barrow {

    private static final Pattern FILE = Pattern.compile("`([a-z0-9./-]+\\.json)`\\n```json\\n(.*?)```", Pattern.DOTALL);
    private static final List<String> COPIED = List.of(
            "workshop/workshop.json",
            "workshop/markets.json",
            "workshop/coating.json",
            "workshop/cautions.json",
            "finishes.json",
            "materials.json");

    private static final String MORE = """
              {"option": "extras", "choose": "several", "asks": "What else?", "values": [
               {"value": "bell", "says": {"en": "Bell", "de": "Klingel", "fr": "Sonnette"}},
               {"value": "flag", "says": {"en": "Flag", "de": "Fahne", "fr": "Drapeau"}},
               {"value": "tray", "says": {"en": "Tray", "de": "Ablage", "fr": "Plateau"}}]},
              {"option": "lamp\"""";

    private static final String LIMIT = """
            "limits": [
              {"limit": "tray-or-flag", "never": {"all": [{"extras": "tray"}, {"extras": "flag"}]}, "because": "The tray hides the flag."},
            """;

    private static final String LINES = """
            "positions": [
              {"position": "extras", "says": {"en": "Extras", "de": "Zubehör", "fr": "Accessoires"}, "subSystem": "drive", "stage": "front", "fill": "some", "required": {"extras": ["bell", "tray"]}, "lines": [
               {"line": "bell", "part": "TB-LAMP", "quantity": "1", "when": {"extras": "bell"}},
               {"line": "tray", "part": "TB-LAMP", "quantity": "2", "when": {"extras": "tray"}},
               {"line": "plain", "part": "TB-LAMP", "quantity": "3", "when": {"all": [{"extras": "bell"}, {"not": {"extras": ["flag", "tray"]}}]}}]},
            """;

    private Barrow() {}

    public static void write(Path folder) {
        try {
            for (String file : COPIED) {
                write(folder.resolve(file), Files.readString(Path.of("catalog").resolve(file)));
            }
            Matcher files = FILE.matcher(Files.readString(Path.of("catalog/README.md")));
            while (files.find()) {
                write(folder.resolve(files.group(1)), withMore(files.group(1), files.group(2)));
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String withMore(String file, String text) {
        return switch (file) {
            case "families/tin-barrow/family.json" ->
                text.replace("{\"option\": \"lamp\"", MORE.strip()).replace("\"limits\": [", LIMIT.strip());
            case "families/tin-barrow/kit/all.json" -> text.replace("\"positions\": [", LINES.strip());
            case "orders/tb-1.json" ->
                text.replace("\"lamp\": \"yes\"", "\"lamp\": \"yes\", \"extras\": [\"bell\", \"flag\"]");
            default -> text;
        };
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
