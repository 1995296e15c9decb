package boltlore.cli;

import boltlore.answers.Because;
import boltlore.answers.OrderKit;
import boltlore.answers.WhyIn;
import boltlore.answers.WhyNotIn;
import boltlore.answers.json.BecauseJson;
import boltlore.catalogue.Part;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.measure.PartNumber;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Resolution;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Why a part is in an order's kit, or what would bring it in. */
@Command(name = "why", description = "Say why a part is in an order's kit, or what would bring it in.")
final class WhyCommand extends RoomCommand {

    @Parameters(index = "0", paramLabel = "ORDER", description = "An order file.")
    private Path order = Path.of("");

    @Parameters(index = "1", paramLabel = "PART", description = "A part number.")
    private String part = "";

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        Outcome<Bench> bench = Bench.of(catalogue);
        return done(screen, bench.then(at -> at.kit(order, false).then(kit -> answer(screen, at, kit))));
    }

    private Outcome<Integer> answer(Screen screen, Bench bench, OrderKit kit) {
        PartNumber number = new PartNumber(part);
        Part known = bench.catalogue().parts().get(number);
        if (known == null) {
            List<String> numbers = bench.catalogue().parts().keySet().stream()
                    .map(PartNumber::text)
                    .toList();
            String advice = Nearest.advice(part, numbers, "'boltlore parts' lists them");
            return Outcome.faulty(Fault.of("", "part number '" + part + "'", "a part of the catalogue", advice));
        }
        if (!(kit.resolution() instanceof Resolution.Resolved resolved)) {
            KitText.print(screen, kit);
            return Outcome.sound(Exit.STOPPED);
        }
        FamilyPlan plan = bench.resolver().resolver().plan(kit.order().family());
        boolean in = resolved.kit().contains(number);
        List<Because> reasons = in
                ? WhyIn.of(plan, resolved.kit(), number)
                : WhyNotIn.of(plan, resolved.kit(), resolved.choices(), number);
        if (json()) {
            screen.line(BecauseJson.of(number, in, reasons).written().stripTrailing());
        } else {
            print(screen, known, resolved, reasons);
        }
        return Outcome.sound(Exit.OK);
    }

    private static void print(Screen screen, Part part, Resolution.Resolved resolved, List<Because> reasons) {
        String named = part.number() + " " + part.name().english();
        java.math.BigDecimal quantity = resolved.kit().quantities().get(part.number());
        if (quantity != null) {
            screen.heading(named + ": " + quantity.toPlainString() + " " + part.unit() + " in this kit");
        } else if (reasons.isEmpty()) {
            screen.heading(named + ": not in this kit, and nothing in this family can bring it");
        } else {
            screen.heading(named + ": not in this kit. What would bring it:");
        }
        reasons.forEach(reason -> print(screen, reason, 2));
    }

    private static void print(Screen screen, Because because, int indent) {
        screen.wrapped(indent, because.sentence());
        because.further().forEach(further -> print(screen, further, indent + 2));
    }
}
