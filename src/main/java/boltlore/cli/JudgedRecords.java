package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.trades.testing.Judge;
import boltlore.trades.testing.Reading;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.TestPlanner;
import boltlore.trades.testing.TestRecord;
import boltlore.trades.testing.Verdict;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Brings records together with the orders that they belong to, and has them judged. */
final class JudgedRecords {

    private final CatalogueSession session;
    private final Map<String, Path> orders;
    private final LocalDate today;
    private final List<Fault> faults = new ArrayList<>();
    private final List<Verdict> verdicts = new ArrayList<>();

    private JudgedRecords(CatalogueSession session, Map<String, Path> orders, LocalDate today) {
        this.session = session;
        this.orders = orders;
        this.today = today;
    }

    /** @param among order files, or folders of them */
    static Outcome<List<Verdict>> read(CatalogueSession session, List<Path> files, List<Path> among, LocalDate today) {
        return OrderFiles.find(among).then(all -> new JudgedRecords(session, byName(all), today).judged(files));
    }

    /** Orders that cannot be read are passed over: they are told where a record needs one of them. */
    private static Map<String, Path> byName(List<Path> files) {
        Map<String, Path> byName = new TreeMap<>();
        for (Path file : files) {
            if (JsonFile.read(file) instanceof Outcome.Sound<Json> sound
                    && sound.value() instanceof Json.Obj object
                    && object.members().get("order") instanceof Json.Text name) {
                byName.putIfAbsent(name.text(), file);
            }
        }
        return byName;
    }

    private Outcome<List<Verdict>> judged(List<Path> files) {
        Map<String, List<TestRecord>> byOrder = new LinkedHashMap<>();
        for (Path file : files) {
            Outcome<List<TestRecord>> records = TestRecord.read(file);
            faults.addAll(records.faults());
            if (records instanceof Outcome.Sound<List<TestRecord>> sound) {
                sound.value()
                        .forEach(record -> byOrder.computeIfAbsent(record.order(), name -> new ArrayList<>())
                                .add(record));
            }
        }
        byOrder.forEach(this::order);
        return faults.isEmpty() ? Outcome.sound(verdicts) : Outcome.faulty(faults);
    }

    private void order(String name, List<TestRecord> records) {
        Path file = orders.get(name);
        if (file == null) {
            records.forEach(this::unknown);
            return;
        }
        Outcome<OrderKit> kit = session.kit(file, false);
        faults.addAll(kit.faults());
        if (kit instanceof Outcome.Sound<OrderKit> sound) {
            kit(file, sound.value(), records);
        }
    }

    private void unknown(TestRecord record) {
        String advice = Nearest.advice(record.order(), orders.keySet(), "Name its file with --order.");
        faults.add(Fault.of(
                record.file(), "a record of order " + record.order(), "an order among those that are known", advice));
    }

    private void kit(Path file, OrderKit kit, List<TestRecord> records) {
        if (kit.bill() == null || !kit.issuesSheets()) {
            String found = "order " + kit.order().name() + ", whose sheets are stopped";
            faults.add(Fault.of(file.toString(), found, "an order with a kit", "Ask 'boltlore kit' what stops it."));
            return;
        }
        TestPlan plan = TestPlanner.plan(session.catalogue(), kit.bill());
        List<TestRecord> others = records.stream()
                .filter(record -> !record.limits().equals(plan.limits()))
                .toList();
        others.forEach(record -> faults.add(otherLimits(record, plan)));
        if (others.isEmpty()) {
            List<Reading> readings = records.stream()
                    .flatMap(record -> record.readings().stream())
                    .toList();
            verdicts.add(Judge.judge(plan, readings, today));
        }
    }

    static Fault otherLimits(TestRecord record, TestPlan plan) {
        return Fault.of(
                record.file(),
                "a record with the limits " + record.limits(),
                "the limits " + plan.limits() + ", as they are for order " + plan.order() + " now",
                "A limit, or what is tested, has changed since. Name the catalogue that the record was printed from with"
                        + " --catalogue, or write the test sheet again and test against it.");
    }
}
