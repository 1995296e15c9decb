package boltlore.scale;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choice;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.report.drawing.Png;
import boltlore.report.drawing.Svg;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

/**
 * This program beside three general ways to do the same: nested loops, a general library for constraint problems, and a
 * workbook of formulas. On the demo's families and made-up ones of growing size, each is asked the same questions about the
 * same partial choices, drawn from a seed, half of which can be completed; answers that differ end the run. Prints a table, and draws it as
 * {@code side-by-side.svg} and {@code .png} in the folder that it is given.
 *
 * <p>Times are of answers alone: what is prepared once for a family (formulas, a diagram, a model, a table of orders) is not
 * counted for any of them.
 */
public final class SideBySide {

    /** What is asked. The workbook answers all of it at once. */
    enum Question {
        OPEN("open values of all options"),
        POSSIBLE("is it possible"),
        CHEAPEST("cheapest completion"),
        COUNT("count of valid orders"),
        ALL("all four");

        final String says;

        Question(String says) {
            this.says = says;
        }
    }

    /** Who answers. */
    enum Who {
        PROGRAM("this program"),
        LOOPS("plain loops"),
        SOLVER("general solver"),
        WORKBOOK("workbook");

        final String says;

        Who(String says) {
            this.says = says;
        }
    }

    /**
     * What was measured of one family.
     *
     * @param orders how many valid ones there are, or why that is not known
     * @param milliseconds mean of the questions; infinite where one was not answered in its time, absent where it cannot be
     *     asked
     */
    record Measured(String family, int options, String orders, Map<Question, Map<Who, Double>> milliseconds) {}

    private record Made(int lines, int options) {}

    private static final List<Made> MADE =
            List.of(new Made(60, 6), new Made(300, 10), new Made(600, 20), new Made(1_000, 40), new Made(5_000, 150));
    private static final long SEED = 20261130;
    private static final int ASKED = 6;
    private static final int ASKED_WORKBOOK = 2;
    private static final long LIMIT_MS = 10_000;

    private SideBySide() {}

    /**
     * Measures, prints and draws.
     *
     * @param words the folder for the drawing
     */
    public static void main(String... words) throws Exception {
        Catalogue demo = read(Path.of("catalog"));
        measure(made(MADE.get(0)), MadeCatalogue.FAMILY, LIMIT_MS);
        List<Measured> all = new ArrayList<>();
        for (Family family : demo.families().values()) {
            System.err.println(family.name());
            all.add(measure(demo, family.name(), LIMIT_MS));
        }
        for (Made made : MADE) {
            System.err.println(made.lines() + " lines, " + made.options() + " options");
            all.add(measure(made(made), MadeCatalogue.FAMILY, LIMIT_MS));
        }
        System.out.print(SideBySideTable.text(all));
        Path folder = Files.createDirectories(Path.of(words[0]));
        Files.writeString(folder.resolve("side-by-side.svg"), Svg.encode(SideBySideTable.drawing(all)));
        Files.write(folder.resolve("side-by-side.png"), Png.encode(SideBySideTable.drawing(all)));
    }

    private static Catalogue made(Made made) throws Exception {
        Path folder = Files.createTempDirectory("side-by-side");
        MadeCatalogue.write(folder, made.lines(), made.options(), SEED);
        return read(folder);
    }

    private static Catalogue read(Path folder) {
        Outcome<Catalogue> outcome = CatalogueReader.read(folder);
        if (outcome instanceof Outcome.Sound<Catalogue> sound) {
            return sound.value();
        }
        throw new IllegalStateException(outcome.faults().toString());
    }

    /** @throws IllegalStateException where two answers differ */
    static Measured measure(Catalogue catalogue, String name, long limitMs) throws Exception {
        Family family = catalogue.family(name);
        Asked asked = Asked.of(catalogue, family);
        Deadline deadline = Deadline.in(limitMs * 1_000_000, System::nanoTime);
        PlainEnumeration loops = new PlainEnumeration(asked, deadline);
        Map<Who, Asked.Way> ways = new EnumMap<>(Who.class);
        ways.put(Who.PROGRAM, new ThisProgram(asked, deadline));
        ways.put(Who.LOOPS, loops);
        ways.put(Who.SOLVER, new GeneralSolver(asked, limitMs));
        List<List<Choice>> partial = partial(asked, ways.get(Who.PROGRAM));
        ways.forEach((who, way) -> new Answered(deadline).ask(who, way, partial.get(0)));
        Answered answered = new Answered(deadline);
        for (List<Choice> kept : partial) {
            ways.forEach((who, way) -> answered.ask(who, way, kept));
        }
        answered.sums();
        Object orders = answered.timed(() -> ways.get(Who.PROGRAM).count(List.of()), took -> {});
        Object listed = answered.timed(() -> loops.count(List.of()), took -> {});
        if (listed != null && Long.parseLong(listed.toString()) <= FormulaWorkbook.MOST_ORDERS) {
            deadline.begin(Long.MAX_VALUE);
            List<List<Choice>> some = partial.subList(0, ASKED_WORKBOOK);
            answered.workbook(FormulaWorkbook.work(asked, loops, some), some);
        }
        return new Measured(
                name + " (" + family.lines().count() + " lines)",
                family.options().size(),
                Objects.requireNonNullElse(orders, "not known").toString(),
                answered.milliseconds);
    }

    /** Some by chance, which hardly ever stand together in a large family, and as many more that do. */
    private static List<List<Choice>> partial(Asked asked, Asked.Way way) {
        Random random = new Random(SEED);
        return Stream.iterate(0, i -> i + 1)
                .limit(ASKED)
                .map(i -> asked.partial(random, i % 2 == 0 ? way::possible : kept -> true))
                .toList();
    }

    /** Answers so far, compared, and the time they took. */
    private static final class Answered {

        private final Deadline deadline;
        private final Map<Question, Map<Who, Double>> milliseconds = new EnumMap<>(Question.class);
        private final Map<List<Choice>, Map<Question, Object>> known = new java.util.HashMap<>();

        Answered(Deadline deadline) {
            this.deadline = deadline;
            for (Question question : Question.values()) {
                milliseconds.put(question, new EnumMap<>(Who.class));
            }
        }

        void ask(Who who, Asked.Way way, List<Choice> kept) {
            answer(who, Question.OPEN, kept, () -> way.open(kept));
            answer(who, Question.POSSIBLE, kept, () -> way.possible(kept));
            answer(who, Question.CHEAPEST, kept, () -> way.cheapest(kept));
            answer(who, Question.COUNT, kept, () -> way.count(kept));
        }

        private void answer(Who who, Question question, List<Choice> kept, Callable<Object> asked) {
            Double before = milliseconds.get(question).get(who);
            if (before != null && before.isInfinite()) {
                return;
            }
            Object answer = timed(asked, took -> milliseconds.get(question).merge(who, took / ASKED, Double::sum));
            if (answer == null) {
                milliseconds.get(question).put(who, Double.POSITIVE_INFINITY);
            } else {
                compare(who, question, kept, answer);
            }
        }

        private void compare(Who who, Question question, List<Choice> kept, Object answer) {
            Object other = known.computeIfAbsent(kept, asked -> new EnumMap<>(Question.class))
                    .putIfAbsent(question, answer);
            if (other != null && !other.equals(answer)) {
                throw new IllegalStateException(
                        question.says + " with " + kept + ": " + other + ", but " + who.says + " says " + answer);
            }
        }

        /** The answer, or null where its time was up. */
        Object timed(Callable<Object> asked, java.util.function.DoubleConsumer took) {
            deadline.begin();
            long begun = System.nanoTime();
            try {
                Object answer = asked.call();
                took.accept((System.nanoTime() - begun) / 1e6);
                return answer;
            } catch (Deadline.Passed late) {
                return null;
            } catch (Exception other) {
                throw new IllegalStateException(other);
            }
        }

        void sums() {
            for (Who who : milliseconds.get(Question.OPEN).keySet()) {
                double sum = milliseconds.values().stream()
                        .mapToDouble(times -> times.getOrDefault(who, 0.0))
                        .sum();
                milliseconds.get(Question.ALL).put(who, sum);
            }
        }

        void workbook(FormulaWorkbook.Worked worked, List<List<Choice>> partial) {
            milliseconds.get(Question.ALL).put(Who.WORKBOOK, worked.milliseconds());
            for (int i = 0; i < partial.size(); i++) {
                FormulaWorkbook.Answers answers = worked.answers().get(i);
                compare(Who.WORKBOOK, Question.OPEN, partial.get(i), answers.open());
                compare(Who.WORKBOOK, Question.POSSIBLE, partial.get(i), answers.possible());
                compare(Who.WORKBOOK, Question.CHEAPEST, partial.get(i), answers.cheapest());
                compare(Who.WORKBOOK, Question.COUNT, partial.get(i), answers.count());
            }
        }
    }
}
