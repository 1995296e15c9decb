package boltlore.cli;

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
@Command(name = "parts", description = "List the parts of the catalogue, or say where given parts are used.")
final class PartsCommand extends RoomCommand {

    @Parameters(paramLabel = "PART", arity = "0..*", description = "Part numbers; without one all parts are listed.")
    private List<String> numbers = new ArrayList<>();

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        return done(screen, catalogue.read().then(known -> answer(screen, known)));
    }

    private Outcome<Integer> answer(Screen screen, Catalogue known) {
        List<Fault> unknown = unknown(known);
        if (!unknown.isEmpty()) {
            return Outcome.faulty(unknown);
        }
        List<Part> asked = numbers.isEmpty()
                ? List.copyOf(known.parts().values())
                : numbers.stream()
                        .distinct()
                        .map(PartNumber::new)
                        .map(known::part)
                        .toList();
        if (json()) {
            screen.line(JsonOut.list(asked, part -> json(known, part)).written().stripTrailing());
        } else {
            asked.forEach(part -> print(screen, known, part));
        }
        return Outcome.sound(Exit.OK);
    }

    private List<Fault> unknown(Catalogue known) {
        List<String> names =
                known.parts().keySet().stream().map(PartNumber::text).toList();
        return numbers.stream()
                .filter(number -> !known.parts().containsKey(new PartNumber(number)))
                .map(number -> Fault.of(
                        "",
                        "part number '" + number + "'",
                        "a part of the catalogue",
                        Nearest.advice(number, names, "'boltlore parts' lists them")))
                .toList();
    }

    private void print(Screen screen, Catalogue known, Part part) {
        String named =
                part.number() + "  " + part.revision() + "  " + part.name().english();
        if (numbers.isEmpty()) {
            screen.line(named);
            return;
        }
        screen.heading(named);
        WhereUsed.of(known, part.number()).forEach(place -> screen.wrapped(2, place));
    }

    private JsonOut json(Catalogue known, Part part) {
        return JsonOut.object()
                .put("part", part.number().text())
                .put("revision", part.revision())
                .put("name", part.name().english())
                .put("unit", part.unit())
                .put("usedIn", JsonOut.texts(WhereUsed.of(known, part.number())));
    }
}
