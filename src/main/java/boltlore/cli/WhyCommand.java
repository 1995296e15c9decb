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
import boltlore.json.JsonOut;
import boltlore.measure.PartNumber;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Resolution;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Why a part is in the kits of orders, or what would bring it in. */
@Command(name = "why", description = "Say which orders' kits hold a part and why, or what would add it.")
final class WhyCommand extends RoomCommand {

    /** What is to be said of one order; no kit where its choices stop it. */
    private record Answer(OrderKit order, boolean in, String quantity, List<Because> reasons) {

        boolean hasKit() {
            return order.resolution() instanceof Resolution.Resolved;
        }

        String name() {
            return order.order().name();
        }
    }

    @Parameters(
            arity = "2..*",
            paramLabel = "ORDER… PART",
            hideParamSyntax = true,
            description = {"Order files, or folders of them, and last a part number."})
    private List<String> words = new ArrayList<>();

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        HeadStart.forKits();
        List<Path> named =
                words.subList(0, words.size() - 1).stream().map(Path::of).toList();
        boolean one = named.size() == 1 && !Files.isDirectory(named.get(0));
        return done(
                screen,
                CatalogueSession.of(catalogue)
                        .then(session -> part(session)
                                .then(part -> OrderFiles.find(named)
                                        .then(files -> Outcome.sound(tell(screen, session, part, files, one))))));
    }

    private Outcome<Part> part(CatalogueSession session) {
        String number = words.get(words.size() - 1);
        Part known = session.catalogue().parts().get(new PartNumber(number));
        if (known != null) {
            return Outcome.sound(known);
        }
        List<String> numbers = session.catalogue().parts().keySet().stream()
                .map(PartNumber::text)
                .toList();
        String advice = Nearest.advice(number, numbers, "'boltlore parts' lists them");
        return Outcome.faulty(Fault.of("", "part number '" + number + "'", "a part of the catalogue", advice));
    }

    /** What of the orders can be read is answered, and what cannot is told after it. */
    private int tell(Screen screen, CatalogueSession session, Part part, List<Path> files, boolean one) {
        List<Outcome<Answer>> outcomes = files.parallelStream()
                .map(file -> session.kit(file, false).then(kit -> Outcome.sound(answer(session, kit, part.number()))))
                .toList();
        List<Fault> faults =
                outcomes.stream().flatMap(each -> each.faults().stream()).toList();
        List<Answer> answers = new ArrayList<>();
        for (Outcome<Answer> outcome : outcomes) {
            if (outcome instanceof Outcome.Sound<Answer> sound) {
                answers.add(sound.value());
            }
        }
        if (json()) {
            JsonOut all = one && answers.size() == 1
                    ? json(part, answers.get(0))
                    : JsonOut.list(answers, answer -> json(part, answer));
            screen.line(all.written().stripTrailing());
        } else if (one) {
            answers.forEach(answer -> print(screen, part, answer));
        } else {
            print(screen, part, answers);
        }
        screen.flush();
        int exit = answers.stream().allMatch(Answer::hasKit) ? Exit.OK : Exit.STOPPED;
        return faults.isEmpty() ? exit : refused(faults, Exit.FAULTS);
    }

    private static Answer answer(CatalogueSession session, OrderKit order, PartNumber part) {
        if (!(order.resolution() instanceof Resolution.Resolved resolved)) {
            return new Answer(order, false, "", List.of());
        }
        FamilyPlan plan = session.plan(order.order().family());
        BigDecimal quantity = resolved.kit().quantities().get(part);
        boolean in = resolved.kit().contains(part);
        List<Because> reasons = in
                ? WhyIn.explain(plan, resolved.kit(), part)
                : WhyNotIn.explain(plan, resolved.kit(), resolved.choices(), part);
        return new Answer(order, in, quantity == null ? "" : quantity.toPlainString(), reasons);
    }

    private static JsonOut json(Part part, Answer answer) {
        JsonOut.Members order = JsonOut.object()
                .put("order", answer.name())
                .put("part", part.number().text());
        return answer.hasKit() ? BecauseJson.into(order, answer.in(), answer.reasons()) : order.put("stopped", true);
    }

    private static void print(Screen screen, Part part, Answer answer) {
        String named = part.number() + " " + part.name().english();
        if (!answer.hasKit()) {
            KitText.print(screen, answer.order());
            return;
        }
        if (answer.in()) {
            screen.heading(named + ": " + answer.quantity() + " " + part.unit() + " in this kit");
        } else if (answer.reasons().isEmpty()) {
            screen.heading(named + ": not in this kit, and nothing in this family can add it");
        } else {
            screen.heading(named + ": not in this kit. What would add it:");
        }
        answer.reasons().forEach(reason -> print(screen, reason, 2));
    }

    private static void print(Screen screen, Part part, List<Answer> answers) {
        List<Answer> with = answers.stream().filter(Answer::in).toList();
        screen.heading(part.number() + " " + part.name().english() + ": in " + with.size() + " of " + answers.size()
                + (answers.size() == 1 ? " order" : " orders"));
        for (Answer answer : with) {
            screen.wrapped(
                    0,
                    answer.name() + ", " + answer.order().order().customer() + ": " + answer.quantity() + " "
                            + part.unit());
            answer.reasons().forEach(reason -> print(screen, reason, 2));
        }
        names(screen, "Not in: ", answers.stream().filter(each -> each.hasKit() && !each.in()));
        names(screen, "No kit yet, their choices stop them: ", answers.stream().filter(each -> !each.hasKit()));
    }

    private static void names(Screen screen, String head, Stream<Answer> answers) {
        String names = answers.map(Answer::name).collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
            screen.wrapped(0, head + names + ".");
        }
    }

    private static void print(Screen screen, Because because, int indent) {
        screen.wrapped(indent, because.sentence());
        because.further().forEach(further -> print(screen, further, indent + 2));
    }
}
