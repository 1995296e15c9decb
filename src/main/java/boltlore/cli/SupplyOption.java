package boltlore.cli;

import boltlore.bill.Bill;
import boltlore.trades.charging.CableCode;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.Electrician;
import boltlore.trades.charging.Mains;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** At which supply and with which cable charging is worked out first. */
final class SupplyOption {

    @Option(
            names = "--supply",
            paramLabel = "SUPPLY",
            converter = SupplyText.class,
            description =
                    "Work out charging at this supply and not at the order's own: phases, volts of one phase, amps,"
                            + " such as '3x230V 16A'.")
    private @Nullable Mains supply;

    @Option(
            names = "--cable",
            paramLabel = "AMPS",
            converter = Code.class,
            description = "Only with the loose cable of this code: 13, 20, 32 or 63.")
    private @Nullable CableCode cable;

    Charging charging(Bill bill) {
        return Electrician.of(bill.resolved().choices().family().electrics(), bill, supply, cable);
    }

    /** The code of a cable by its current in A. */
    static final class Code implements ITypeConverter<CableCode> {
        @Override
        public CableCode convert(String text) {
            return Arrays.stream(CableCode.values())
                    .filter(code -> String.valueOf(code.amps(3)).equals(text.strip()))
                    .findFirst()
                    .orElseThrow(() -> refused(text));
        }

        private static TypeConversionException refused(String text) {
            return new TypeConversionException("'" + text + "' is no code of a cable; expected 13, 20, 32 or 63");
        }
    }
}
