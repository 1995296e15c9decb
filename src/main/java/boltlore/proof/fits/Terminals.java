package boltlore.proof.fits;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Line;
import boltlore.catalogue.Port;
import boltlore.choices.Choices;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import boltlore.proof.KitView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Lugs on studs along the energy paths: joints whose nut belongs to the device and lies in no bag, so that nothing but its
 * port says how they are tightened. One that comes loose heats up, and burns at hundreds of amperes.
 */
public final class Terminals {

    /**
     * A lug on a stud of a kit.
     *
     * @param at of the stud
     * @param lugAt of the cable or bar with the lug
     * @param stud with its torque
     */
    public record Terminal(
            PositionName at,
            PositionName lugAt,
            Wording device,
            Wording lug,
            String port,
            boolean highVoltage,
            Port.Bolted stud) {}

    private Terminals() {}

    /** The terminals of one order that are bolted with a known torque, in the order of the paths. */
    public static List<Terminal> of(Catalogue catalogue, Choices settled, Predicate<LineName> leftOut) {
        KitView kit = KitView.of(catalogue, settled, leftOut);
        Map<String, Terminal> all = new LinkedHashMap<>();
        for (Join join : Join.once(kit)) {
            join.ends(kit).filter(ends -> ends.when().isAlways()).forEach(ends -> {
                Terminal terminal = terminal(kit, join, ends);
                if (terminal != null) {
                    all.putIfAbsent(terminal.at() + "/" + terminal.port() + "/" + terminal.lugAt(), terminal);
                }
            });
        }
        return List.copyOf(all.values());
    }

    private static @Nullable Terminal terminal(KitView kit, Join join, Join.Ends ends) {
        boolean from = isStud(ends.out());
        Port stud = from ? ends.out() : ends.in();
        if (stud == null || !isStud(stud) || stud.bolted() == null) {
            return null;
        }
        Line device = from ? ends.from() : ends.to();
        Line lug = from ? ends.to() : ends.from();
        return new Terminal(
                (from ? join.from() : join.to()).position(),
                (from ? join.to() : join.from()).position(),
                BoxContents.named(kit, device.part()),
                BoxContents.named(kit, lug.part()),
                stud.name(),
                stud.highVoltage(),
                stud.bolted());
    }

    private static boolean isStud(@Nullable Port port) {
        return port != null && port.bolted() != null && port.bolted().torqueNm() != null;
    }

    static List<FitFinding.Possible> findings(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        for (Join join : Join.once(kit)) {
            join.ends(kit)
                    .filter(ends -> ends.out() != null && ends.in() != null && ends.fit())
                    .filter(ends -> bolted(ends.out()) != null || bolted(ends.in()) != null)
                    .forEach(ends -> judge(kit, ends, all));
        }
        return all.stream().distinct().toList();
    }

    private static Port.@Nullable Bolted bolted(@Nullable Port port) {
        return port == null ? null : port.bolted();
    }

    private static void judge(KitView kit, Join.Ends ends, List<FitFinding.Possible> all) {
        Port.Bolted out = bolted(ends.out());
        Port.Bolted in = bolted(ends.in());
        if (!isStud(ends.out()) && !isStud(ends.in())) {
            add(FitFinding.TERMINAL_WITHOUT_TORQUE, kit, ends, all);
        } else if (out == null || in == null || !out.thread().equals(in.thread())) {
            add(FitFinding.LUG_UNLIKE_STUD, kit, ends, all);
        }
    }

    private static void add(FitFinding kind, KitView kit, Join.Ends ends, List<FitFinding.Possible> all) {
        all.add(kind.when(
                ends.when(),
                ends.from().name().text() + "/" + name(ends.out()),
                ends.to().name().text() + "/" + name(ends.in()),
                List.of(ends.from().name(), ends.to().name()),
                "one",
                BoxContents.named(kit, ends.from().part()),
                "port",
                name(ends.out()),
                "thread",
                thread(ends.out()),
                "other",
                BoxContents.named(kit, ends.to().part()),
                "otherPort",
                name(ends.in()),
                "otherThread",
                thread(ends.in())));
    }

    private static String name(@Nullable Port port) {
        return port == null ? "" : port.name();
    }

    private static String thread(@Nullable Port port) {
        Port.Bolted bolted = bolted(port);
        return bolted == null ? "-" : bolted.designation();
    }
}
