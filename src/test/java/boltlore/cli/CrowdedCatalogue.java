package boltlore.cli;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.json.JsonOut;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A family with very many options as the files of a catalogue: one part in one place, whatever is chosen. */
final class CrowdedCatalogue {

    private static final Path EXAMPLES = Path.of("src", "test", "resources", "worked-families");
    private static final String PLACE = "families/t-shirt/kit/kit.json";

    private CrowdedCatalogue() {}

    static void write(Path folder, Family family) throws IOException {
        try (Stream<Path> all = Files.walk(EXAMPLES)) {
            for (Path from : all.filter(Files::isRegularFile).toList()) {
                String name = EXAMPLES.relativize(from).toString();
                if (!name.startsWith("families") && !name.startsWith("parts")) {
                    write(folder, name, Files.readString(from));
                }
            }
        }
        write(folder, "parts/parts.json", onePart(Files.readString(EXAMPLES.resolve("parts/parts.json"))));
        write(folder, "families/" + family.name() + "/kit/kit.json", Files.readString(EXAMPLES.resolve(PLACE)));
        write(folder, "families/" + family.name() + "/companions.json", companions());
        write(folder, "families/" + family.name() + "/family.json", of(family).written());
    }

    private static void write(Path folder, String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    /** The first part alone: one that nothing uses is a fault. */
    private static String onePart(String parts) {
        return parts.substring(0, parts.indexOf("  },")) + "  }]}";
    }

    private static String companions() {
        return JsonOut.object()
                .put("$schema", "../../schema/companions.schema.json")
                .put("companions", JsonOut.list(List.<String>of(), JsonOut::text))
                .written();
    }

    private static JsonOut of(Family family) {
        return JsonOut.object()
                .put("$schema", "../../schema/family.schema.json")
                .put("family", family.name())
                .put("says", family.says().english())
                .put("options", JsonOut.list(family.options(), CrowdedCatalogue::option))
                .put("limits", JsonOut.list(family.limits(), CrowdedCatalogue::limit));
    }

    private static JsonOut option(Option option) {
        return JsonOut.object()
                .put("option", option.name().text())
                .put("asks", option.asks())
                .put(
                        "values",
                        JsonOut.list(
                                option.valueNames(),
                                value ->
                                        JsonOut.object().put("value", value).put("says", option.name() + " " + value)));
    }

    private static JsonOut limit(Limit limit) {
        JsonOut.Members members = JsonOut.object().put("limit", limit.name()).put("because", limit.because());
        Condition then = limit.then();
        return then == null
                ? members.put("never", condition(limit.when()))
                : members.put("when", condition(limit.when())).put("then", condition(then));
    }

    private static JsonOut condition(Condition condition) {
        if (condition instanceof Condition.Is is) {
            return JsonOut.object().put(is.option().text(), JsonOut.texts(is.values()));
        }
        return JsonOut.object()
                .put("all", JsonOut.list(((Condition.All) condition).conditions(), CrowdedCatalogue::condition));
    }
}
