package boltlore.trades.scheduling;

import boltlore.answers.*;
import boltlore.demo.Demo;
import boltlore.trades.KitInWork;
import boltlore.trades.scheduling.finite.*;
import boltlore.catalogue.Capacity;
import java.time.LocalDate;
import java.util.*;
import org.junit.jupiter.api.Test;

class ProbeTest {
    static final List<String> NAMES = List.of("bl-1001","bl-1002","bl-1003","bl-1004","bl-1005","bl-1006","bl-1007","bl-1008","bl-1009","bl-1010","bl-1011","bl-1012","bl-1013","bl-1014","bl-2001","bl-2002","bl-2003");
    @Test
    void probe() {
        Capacity cap = Demo.catalogue().capacity();
        List<KitInWork> kits = new ArrayList<>();
        for (String n : NAMES) { try { kits.add(Demo.kit(n)); } catch (AssertionError e) { System.out.println(n + " none"); } }
        for (KitInWork kit : kits) {
            long t0 = System.nanoTime();
            WorkPlan p = WorkPlan.of(List.of(kit), cap, kit.day(), DispatchRule.EARLIEST_DUE, Map.of());
            OrderWork o = p.orders().get(0);
            long[] sum = new long[p.centres().size()];
            o.shopOrder().steps().forEach(s -> s.work().forEach(w -> sum[w.centre()] += w.minutes()));
            StringBuilder b = new StringBuilder();
            for (int i = 0; i < sum.length; i++) b.append(' ').append(p.centres().get(i).name()).append('=').append(sum[i] / 60);
            System.out.println(kit.order().name() + " day " + kit.day() + " lead " + o.pricing().leadDays() + " priced " + o.priced(kit.day()) + " finish " + p.finish(0) + " earliest " + p.schedule().shop().date(p.schedule().windows(0).earliest()) + " due " + kit.order().due() + " bound " + p.bound() + " reached " + p.schedule().maxLateness() + b + " unplaced " + o.unplaced() + " steps " + o.steps().size() + " ms " + (System.nanoTime() - t0) / 1000000);
        }
        for (LocalDate on : List.of(LocalDate.of(2026, 3, 9), LocalDate.of(2026, 6, 1)))
        for (DispatchRule r : DispatchRule.values()) {
            long t0 = System.nanoTime();
            WorkPlan p = WorkPlan.of(kits, cap, on, r, Map.of());
            System.out.println(on + " " + r + " bound " + p.bound() + " reached " + p.schedule().maxLateness() + " ms " + (System.nanoTime() - t0) / 1000000);
            if (r == DispatchRule.EARLIEST_DUE) for (int i = 0; i < p.orders().size(); i++) System.out.println("  " + p.orders().get(i).order().name() + " " + p.finish(i) + " due " + p.orders().get(i).order().due() + " " + p.schedule().lateness(i));
        }
    }
}
