package boltlore.cli;

import boltlore.asking.FigureWords;
import boltlore.catalogue.Part;
import boltlore.choosing.Chooser;
import boltlore.choosing.FamilyQuestions;
import boltlore.choosing.SureParts;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.measure.Digits;
import boltlore.order.Order;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Locale;

/** The parts that an unsettled order is sure to need, for the screen. */
final class SureText {

    record Answer(Order order, SureParts sure) {

        static Answer of(CatalogueSession session, Order order) {
            Chooser chooser = new Chooser(session.catalogue().family(order.family()));
            FamilyQuestions questions = new FamilyQuestions(session.catalogue(), chooser, Deadline.NONE);
            return new Answer(order, questions.sure(order.choices()));
        }

        /** Whether no valid order keeps the choices. */
        boolean none() {
            return sure.completions() instanceof Count.Exactly exactly
                    && exactly.orders().equals(BigInteger.ZERO);
        }
    }

    private SureText() {}

    static void print(Screen screen, CatalogueSession session, Answer answer) {
        SureParts sure = answer.sure();
        screen.heading(answer.order().name() + ": parts certain whatever is still open, with their least quantity; "
                + FigureWords.orders(sure.completions(), "complete it", "completes it"));
        if (answer.none()) {
            screen.wrapped(2, "No valid order keeps these choices; 'kit' names the limits they break.");
        }
        rows(screen, session, sure);
    }

    static void rows(Screen screen, CatalogueSession session, SureParts sure) {
        sure.least().forEach((number, quantity) -> {
            Part part = session.catalogue().part(number);
            screen.line("  " + row(part, quantity));
        });
        screen.wrapped(2, "For early ordering only: nothing is picked, cut or coated from this list.");
    }

    private static String row(Part part, BigDecimal quantity) {
        return String.format(
                Locale.ROOT,
                "%-14s %8s %-5s %s",
                part.number().text(),
                Digits.plain(quantity),
                part.unit(),
                part.name().english());
    }
}
