package boltlore.cli;

import boltlore.answers.SureParts;
import boltlore.catalogue.Part;
import boltlore.order.Order;
import java.math.BigDecimal;

/** The parts that an unsettled order is sure to need, for the screen. */
final class SureText {

    record Answer(Order order, SureParts sure) {

        static Answer of(Bench bench, Order order) {
            return new Answer(order, SureParts.of(bench.resolver().resolver().plan(order.family()), order.choices()));
        }
    }

    private SureText() {}

    static void print(Screen screen, Bench bench, Answer answer) {
        SureParts sure = answer.sure();
        screen.heading(answer.order().name() + ": parts that each of its " + sure.completions()
                + " valid completions brings, with their least quantity");
        if (sure.completions() == 0) {
            screen.wrapped(2, "No valid order keeps these choices; 'kit' names the limits they break.");
        }
        sure.least().forEach((number, quantity) -> {
            Part part = bench.catalogue().part(number);
            screen.line("  " + row(part, quantity));
        });
        screen.wrapped(2, "For early ordering only: nothing is picked, cut or coated from this list.");
    }

    private static String row(Part part, BigDecimal quantity) {
        return "%-14s %8s %-5s %s"
                .formatted(
                        part.number().text(),
                        quantity.stripTrailingZeros().toPlainString(),
                        part.unit(),
                        part.name().english());
    }
}
