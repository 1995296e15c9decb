package boltlore.cli;

import boltlore.book.db.Place;
import boltlore.book.orders.ChangeDesk;
import boltlore.book.orders.ChangeDesk.Additional;
import boltlore.book.orders.OrderJson;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Adds parts to a kit that has been shipped. */
@Command(name = "service", description = "Add parts to a shipped kit by a service order.")
final class ServiceCommand extends BookCommand {

    @Mixin
    private OrderCommand.Numbered order = new OrderCommand.Numbered();

    @Option(
            names = "--part",
            required = true,
            paramLabel = "PART=QUANTITY",
            description = "A part and how much of it, as PV-CR-E=2; 1 without it. May be given several times.")
    private List<String> parts = new ArrayList<>();

    @Option(
            names = "--price",
            required = true,
            paramLabel = "AMOUNT",
            description = "What the customer pays before tax, in the workshop's currency; 0 under warranty.")
    private BigDecimal price = BigDecimal.ZERO;

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Mixin
    private OrderCommand.Reason reason = new OrderCommand.Reason();

    @Override
    Outcome<Integer> answer(Screen screen, Place place) {
        return added().then(added -> catalogue
                .read()
                .then(known -> onOrder(
                        place,
                        order,
                        reason,
                        at -> new ChangeDesk(at.book(), at.by())
                                .serve(
                                        at.order(),
                                        added,
                                        known,
                                        known.workshop().currency().getCurrencyCode(),
                                        price,
                                        at.reason())
                                .then(written -> written(
                                        screen,
                                        written,
                                        OrderJson::change,
                                        each -> screen.wrapped(0, ChangeCommand.line(each)))))));
    }

    private Outcome<List<Additional>> added() {
        List<Fault> faults = new ArrayList<>();
        List<Additional> added = new ArrayList<>();
        if (price.signum() < 0 || price.scale() > 4 || price.precision() - price.scale() > 9) {
            faults.add(Fault.of("--price", "that amount", "an amount from 0 to 999999999", ""));
        }
        parts.forEach(said -> {
            String[] named = said.split("=", 2);
            BigDecimal quantity = named.length < 2 ? BigDecimal.ONE : FittedTable.quantity(named[1]);
            faults.addAll(Said.text("--part", named[0], TextShape.PART_NUMBER).faults());
            faults.addAll(FittedTable.amount("--part", quantity).faults());
            added.add(new Additional(named[0], quantity));
        });
        return faults.isEmpty() ? Outcome.sound(added) : Outcome.faulty(faults);
    }
}
