package boltlore.cli;

import boltlore.book.BuiltHappening.Measured;
import boltlore.book.db.Place;
import boltlore.book.orders.BuiltDesk;
import boltlore.book.orders.OrderJson;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Keeps a value that was read of a kit. */
@Command(
        name = "read",
        description =
                "Write down a value that was read of a kit, with its unit; with limits it is judged, and one that is"
                        + " outside them holds the kit until a later one is within, or a concession is written.")
final class BuiltRead extends BookCommand {

    /** A value as people type it, with a point or a comma. */
    static final class Value implements ITypeConverter<BigDecimal> {
        @Override
        public BigDecimal convert(String typed) {
            String number = typed.strip().replace(',', '.').replace('\u2212', '-');
            if (!number.matches("[+-]?[0-9]{1,9}(\\.[0-9]{1,9})?")) {
                throw new TypeConversionException(
                        "'" + BookOption.shortened(typed) + "'; expected a number such as 2.4 or -0,75");
            }
            return new BigDecimal(number);
        }
    }

    @Mixin
    private OrderCommand.Numbered order = new OrderCommand.Numbered();

    @Parameters(index = "1", paramLabel = "OF", description = "What was measured, as 'isolation resistance'.")
    private String of = "";

    @Parameters(index = "2", paramLabel = "VALUE", converter = Value.class, description = "The value.")
    private BigDecimal value = BigDecimal.ZERO;

    @Parameters(
            index = "3",
            paramLabel = "UNIT",
            description = "Its unit, as V, MΩ, mΩ, Nm, kg, µm, °C, bar; 1 where it has none.")
    private String unit = "";

    @Option(names = "--least", paramLabel = "VALUE", converter = Value.class, description = "It may be no less.")
    private @Nullable BigDecimal least;

    @Option(names = "--most", paramLabel = "VALUE", converter = Value.class, description = "It may be no more.")
    private @Nullable BigDecimal most;

    @Mixin
    private OrderCommand.Reason reason = new OrderCommand.Reason();

    @Override
    Outcome<Integer> answer(Screen screen, Place place) {
        return Said.text("OF", of, TextShape.LINE)
                .then(about -> unit().then(symbol -> onOrder(
                        place,
                        order,
                        reason,
                        at -> new BuiltDesk(at.book(), at.by())
                                .measure(new Measured(at.order(), about, value, symbol, least, most), at.reason())
                                .then(written -> written(
                                                screen,
                                                written,
                                                OrderJson::reading,
                                                now -> screen.wrapped(0, now.toString()))
                                        .then(exit -> Outcome.sound(
                                                written.value().measured().within() ? exit : Exit.STOPPED))))));
    }

    /** No list of units holds those of every workshop; but one is no number and no sentence. */
    private Outcome<String> unit() {
        if (unit.equals("1")) {
            return Outcome.sound("");
        }
        return unit.matches("[\\p{L}%°Ω][\\p{L}0-9%°Ω/·²³⁻¹]{0,11}")
                ? Said.text("UNIT", unit, TextShape.LINE)
                : Outcome.faulty(
                        Fault.of("UNIT", "'" + unit + "'", "the symbol of a unit, as MΩ; 1 where it has none", ""));
    }
}
