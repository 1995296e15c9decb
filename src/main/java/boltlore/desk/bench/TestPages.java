package boltlore.desk.bench;

import boltlore.book.OrderState;
import boltlore.book.Person;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop.KeptRecord;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.orders.OrderDesk;
import boltlore.book.stores.RackDesk;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.DrawnSheet;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.report.Report;
import boltlore.trades.KitInWork;
import boltlore.trades.testing.Judge;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.TestPlanner;
import boltlore.trades.testing.TestReport;
import boltlore.trades.testing.Verdict;
import boltlore.trades.testing.VerdictWords;
import java.util.List;
import java.util.stream.Stream;

/** The end-of-line test: values are judged as they are typed, by the code that judges the record, and kept with retests. */
public final class TestPages {

    static final String TEST = "test";

    private static final String NOTHING_TYPED =
            "Values: found nothing filled in, expected what was read, in one box at least.";

    private final Workshop workshop;
    private final KitsAtHand kits;

    TestPages(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
    }

    void open(Doors doors) {
        doors.look("/bench/test/{order}", this::form);
        doors.look("/bench/test/{order}/judge", this::judgeOne);
        doors.act("/bench/test/{order}", this::keep);
        doors.look("/bench/test/{order}/judged", this::form);
        doors.act("/bench/test/{order}/judged", this::judgeAll);
        doors.look("/bench/test/{order}/report", this::report);
        doors.act("/bench/test/{order}/tested", this::tested);
    }

    /** What is tested of an order, and what was read of it until now. */
    private record Tested(KitInWork kit, TestPlan plan, List<boltlore.trades.testing.Reading> known) {}

    private Outcome<Tested> plan(Reading reading, Call call) {
        return kits.of(reading, call.path("order"), call.today()).then(kit -> {
            TestPlan plan = kit.once(TestPlan.class, own -> TestPlanner.plan(own.catalogue(), own.bill()));
            return Outcome.sound(new Tested(kit, plan, known(reading, plan)));
        });
    }

    private static List<boltlore.trades.testing.Reading> known(Reading reading, TestPlan plan) {
        return BenchRoom.lastTest(reading, plan.order())
                .map(record -> TypedReadings.kept(reading.contents().of(record.content()), plan))
                .orElse(List.of());
    }

    private Answer form(Call call) {
        return workshop.book().read(reading -> {
            Outcome<Tested> tested = plan(reading, call);
            if (!(tested instanceof Outcome.Sound<Tested> sound)) {
                return new Answer.Missing(Sentences.missing(tested.faults()));
            }
            Tested of = sound.value();
            String who = call.said("who").isEmpty() ? call.by().name() : call.said("who");
            List<boltlore.trades.testing.Reading> now = TypedReadings.of(call, of.plan(), who);
            List<boltlore.trades.testing.Reading> all = together(of, now);
            Verdict verdict = Judge.judge(of.plan(), all, call.today());
            return Answer.page(
                    "Test " + call.path("order"),
                    "bench/test.jte",
                    new Form(
                            Told.of(reading, call),
                            call.path("order"),
                            VerdictWords.in("en").headline(verdict)
                                    + (now.isEmpty() ? "" : " What is typed now is judged too; it is not kept yet."),
                            who,
                            call.said("reason"),
                            read(all),
                            of.plan()
                                    .rows()
                                    .mapToLong(row -> row.boxes().size())
                                    .sum(),
                            now.size(),
                            TestForm.groups(of.plan(), verdict, of.known(), call),
                            TestForm.instruments(of.plan(), of.known(), call),
                            reading.persons().names(Person.STAFF),
                            kept(reading, call.path("order"))));
        });
    }

    /** How many boxes are read, a retest counting with what it replaces. */
    private static long read(List<boltlore.trades.testing.Reading> all) {
        return all.stream().map(boltlore.trades.testing.Reading::box).distinct().count();
    }

    private static List<Kept> kept(Reading reading, String order) {
        return reading.shop().records(order).stream()
                .filter(record -> record.of().equals(TEST))
                .map(record -> new Kept(
                        record.entry(),
                        record.passed() ? "passed" : "NOT passed",
                        reading.journal()
                                .entry(record.entry())
                                .map(entry ->
                                        reading.persons().shown(entry.stamp().person()) + ", "
                                                + entry.stamp().at())
                                .orElse("")))
                .toList();
    }

    /** Judges all that is typed and keeps nothing of it: what the key for the next line does, too. */
    private Answer judgeAll(Call call) {
        Answer page = form(call);
        return page instanceof Answer.Shown shown && shown.page() instanceof Form form && form.typed() == 0
                ? shown.refusing(List.of(NOTHING_TYPED))
                : page;
    }

    /** What is to be said of one test as its values are typed. */
    private Answer judgeOne(Call call) {
        return workshop.book().read(reading -> {
            Outcome<Tested> tested = plan(reading, call);
            if (!(tested instanceof Outcome.Sound<Tested> sound)) {
                return new Answer.Missing(Sentences.missing(tested.faults()));
            }
            Tested of = sound.value();
            List<boltlore.trades.testing.Reading> typed =
                    TypedReadings.of(call, of.plan(), call.by().name());
            Verdict verdict = Judge.judge(of.plan(), together(of, typed), call.today());
            String says = of.plan()
                    .row(call.said("row"))
                    .flatMap(row -> verdict.rows().stream()
                            .filter(judged -> judged.row().equals(row))
                            .findFirst())
                    .map(judged -> TestForm.says(judged, VerdictWords.in("en")))
                    .orElse("not a test of this kit");
            return Answer.page("Judged", "frame/judged.jte", says);
        });
    }

    private static List<boltlore.trades.testing.Reading> together(
            Tested of, List<boltlore.trades.testing.Reading> typed) {
        return Stream.concat(of.known().stream(), typed.stream()).toList();
    }

    /** Judges what was typed together with what was read before, which stays, and keeps all of it as one record. */
    private Answer keep(Call call) {
        Typed typed = new Typed(call);
        String who = typed.text("who", "Measured by", TextShape.LINE);
        String why = typed.sentence("reason", "Remark");
        return Acting.done(
                call,
                "/bench/test/" + call.path("order") + "/report",
                by -> typed.sound()
                        .then(ok -> workshop.book().read(reading -> readings(reading, call, who)))
                        .then(record -> {
                            Verdict verdict = Judge.judge(record.plan(), record.readings(), call.today());
                            Report report = TestReport.compose(
                                    verdict, workshop.bench().catalogue().workshop());
                            List<String> codes = report.findings().all().stream()
                                    .map(finding -> finding.kind().code())
                                    .distinct()
                                    .toList();
                            return new RackDesk(workshop.book(), by)
                                    .keep(
                                            List.of(call.path("order")),
                                            TEST,
                                            TypedReadings.csv(record.plan(), record.readings()),
                                            verdict.passed(),
                                            codes,
                                            why);
                        }),
                this::form);
    }

    private record Together(TestPlan plan, List<boltlore.trades.testing.Reading> readings) {}

    private Outcome<Together> readings(Reading reading, Call call, String who) {
        Typed typed = new Typed(call);
        boolean known = who.equals(call.by().name())
                || !reading.persons().named(who, Person.STAFF).isEmpty();
        if (!known) {
            typed.fault("who", "Measured by", "'" + who + "'", "somebody whom the book knows as one of the workshop");
        }
        return plan(reading, call).then(of -> {
            List<boltlore.trades.testing.Reading> now = TypedReadings.of(call, of.plan(), who);
            if (now.isEmpty()) {
                typed.fault("value", "Values", "nothing filled in", "what was read, in one box at least");
            } else if (!call.said("typed").equals(String.valueOf(now.size()))) {
                typed.fault(
                        "value",
                        "Values",
                        now.size() + " typed",
                        "as many as were judged before signing. Look how they are judged below, then sign");
            }
            return typed.sound().then(ok -> Outcome.sound(new Together(of.plan(), together(of, now))));
        });
    }

    private Answer report(Call call) {
        return workshop.book().read(reading -> {
            Outcome<Tested> tested = plan(reading, call);
            if (!(tested instanceof Outcome.Sound<Tested> sound)) {
                return new Answer.Missing(Sentences.missing(tested.faults()));
            }
            Tested of = sound.value();
            Report report = TestReport.compose(
                    Judge.judge(of.plan(), of.known(), call.today()),
                    workshop.bench().catalogue().workshop());
            return DrawnSheet.isAsked(call)
                    ? DrawnSheet.handed(report, call)
                    : Answer.page(
                            "Test report of " + call.path("order"),
                            "bench/report.jte",
                            new Reported(
                                    Told.of(reading, call),
                                    call.path("order"),
                                    BenchRoom.lastTest(reading, call.path("order"))
                                            .map(KeptRecord::passed)
                                            .orElse(false),
                                    DrawnSheet.of(report, call, "/bench/test/" + call.path("order") + "/report?", "")));
        });
    }

    private Answer tested(Call call) {
        Typed typed = new Typed(call);
        String why = typed.sentence("reason", "Reason");
        boolean release = call.said("release").equals("yes");
        return Acting.done(
                call,
                "/bench",
                by -> typed.sound()
                        .then(ok -> new OrderDesk(workshop.book(), by)
                                .move(call.path("order"), OrderState.TESTED, release, why)),
                this::report);
    }

    /**
     * All tests of an order.
     *
     * @param who signs
     * @param read boxes that have a value, kept or typed
     * @param boxes all there are
     * @param typed values that are typed and not kept yet
     * @param staff names that may be signed with
     * @param kept records that were kept, the first one first
     */
    public record Form(
            List<String> told,
            String order,
            String stands,
            String who,
            String remark,
            long read,
            long boxes,
            int typed,
            List<TestForm.Group> groups,
            List<TestForm.Meter> instruments,
            List<String> staff,
            List<Kept> kept) {}

    /** A record that was kept, and by whom. */
    public record Kept(long entry, String passed, String by) {}

    /** The report of what was read last. */
    public record Reported(List<String> told, String order, boolean passed, DrawnSheet sheet) {}
}
