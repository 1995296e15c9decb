package boltlore.cli;

import boltlore.answers.PartSearch;
import boltlore.answers.WhereUsed;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.measure.PartNumber;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The part master, and where parts are used. */
@Command(name = "parts", description = "List the parts of the catalogue, search them, or say where parts are used.")
final class PartsCommand extends RoomCommand {

    @Parameters(
            paramLabel = "PART|WORD",
            arity = "0..*",
            description = "Part numbers, or words that a part has in its number, name, supplier or supplier's code;"
                    + " without one all parts are listed.")
    private List<String> words = new ArrayList<>();

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        return done(screen, catalogue.read().then(known -> answer(screen, known)));
    }

    private Outcome<Integer> answer(Screen screen, Catalogue known) {
        boolean numbers = words.stream().map(PartNumber::new).allMatch(known.parts()::containsKey);
        List<Part> asked = numbers && !words.isEmpty()
                ? words.stream()
                        .distinct()
                        .map(PartNumber::new)
                        .map(known::part)
                        .toList()
                : PartSearch.find(known, words);
        if (asked.isEmpty() && !words.isEmpty()) {
            return Outcome.faulty(unknown(known));
        }
        if (json()) {
            screen.line(JsonOut.list(asked, part -> json(known, part)).written().stripTrailing());
        } else {
            boolean few = (numbers && !words.isEmpty()) || asked.size() == 1;
            asked.forEach(part -> print(screen, known, part, few));
        }
        return Outcome.sound(Exit.OK);
    }

    private List<Fault> unknown(Catalogue known) {
        List<String> names =
                known.parts().keySet().stream().map(PartNumber::text).toList();
        return words.stream()
                .filter(word -> !known.parts().containsKey(new PartNumber(word)))
                .map(word -> Fault.of(
                        "",
                        "'" + word + "', which no part has in number, name, supplier or supplier's code"
                                + (words.size() == 1 ? "" : " together with the other words"),
                        "a part of the catalogue",
                        Nearest.advice(word, names, "'boltlore parts' lists them")))
                .toList();
    }

    private static void print(Screen screen, Catalogue known, Part part, boolean where) {
        String named =
                part.number() + "  " + part.revision() + "  " + part.name().english();
        if (!where) {
            screen.wrapped(0, named);
            return;
        }
        screen.heading(named);
        WhereUsed.find(known, part.number()).forEach(place -> screen.wrapped(2, place));
        String notes = part.upkeep().notes();
        if (!notes.isEmpty()) {
            screen.wrapped(2, "Notes: " + notes);
        }
        history(known, part).forEach(note -> screen.wrapped(2, note));
    }

    private static List<String> history(Catalogue known, Part part) {
        return PartSearch.history(known, part).stream()
                .map(note -> "History: " + note)
                .toList();
    }

    private JsonOut json(Catalogue known, Part part) {
        JsonOut.Members out = JsonOut.object()
                .put("part", part.number().text())
                .put("revision", part.revision())
                .put("name", part.name().english())
                .put("unit", part.unit())
                .put("usedIn", JsonOut.texts(WhereUsed.find(known, part.number())))
                .putIfAny("notes", part.upkeep().notes());
        List<String> history = history(known, part);
        return history.isEmpty() ? out : out.put("history", JsonOut.texts(history));
    }
}
