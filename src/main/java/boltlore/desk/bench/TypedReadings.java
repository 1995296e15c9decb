package boltlore.desk.bench;

import boltlore.desk.frame.Call;
import boltlore.faults.Outcome;
import boltlore.trades.testing.Box;
import boltlore.trades.testing.Reading;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.TestRecord;
import boltlore.trades.testing.TestRow;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Readings out of a form, and as the record that the book keeps: CSV with a line for each, replaced ones too. */
final class TypedReadings {

    private static final String HEAD = "order,limits,box,value,unit,instrument,by,on";

    private TypedReadings() {}

    /** What was typed into boxes; each with the instrument that its kind of test is read with. */
    static List<Reading> of(Call call, TestPlan plan, String who) {
        List<String> boxes = call.all("box");
        List<String> values = call.all("value");
        List<Reading> readings = new ArrayList<>();
        for (TestRow row : plan.rows().toList()) {
            String instrument = call.said("instrument-" + row.instrument().name());
            for (Box box : row.boxes()) {
                int at = boxes.indexOf(box.key());
                String value = at < 0 || at >= values.size() ? "" : values.get(at);
                if (!value.isEmpty()) {
                    readings.add(new Reading(
                            box.key(),
                            value,
                            box.unit(),
                            instrument,
                            who,
                            call.today().toString(),
                            "the form",
                            0,
                            "value"));
                }
            }
        }
        return readings;
    }

    /** What a kept record holds; none where it was kept for other limits. */
    static List<Reading> kept(byte[] content, TestPlan plan) {
        return TestRecord.read("the record kept before", content) instanceof Outcome.Sound<List<TestRecord>> sound
                ? sound.value().stream()
                        .filter(record -> record.order().equals(plan.order()))
                        .filter(record -> record.limits().equals(plan.limits()))
                        .flatMap(record -> record.readings().stream())
                        .filter(reading -> !reading.value().isBlank())
                        .toList()
                : List.of();
    }

    static byte[] csv(TestPlan plan, List<Reading> readings) {
        return Stream.concat(Stream.of(HEAD), readings.stream().map(reading -> line(plan, reading)))
                .collect(Collectors.joining("\r\n", "", "\r\n"))
                .getBytes(StandardCharsets.UTF_8);
    }

    /** As RFC 4180 has it; a reading is one line. */
    private static String line(TestPlan plan, Reading reading) {
        return Stream.of(
                        plan.order(),
                        plan.limits(),
                        reading.box(),
                        reading.value(),
                        reading.unit(),
                        reading.instrument(),
                        reading.by(),
                        reading.on())
                .map(cell -> '"' + cell.replace("\"", "\"\"").replaceAll("\\R", " ") + '"')
                .collect(Collectors.joining(","));
    }
}
