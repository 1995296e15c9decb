package boltlore.cli;

import boltlore.trades.charging.Mains;
import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a supply such as '3x230V 16A': phases, the voltage of one phase, the current of each. */
final class SupplyText implements ITypeConverter<Mains> {

    private static final String NUMBER = "(\\d{1,5}(?:\\.\\d{1,3})?)";
    private static final Pattern SUPPLY =
            Pattern.compile("([13])\\s*[x×]\\s*" + NUMBER + "\\s*V[ ,]*" + NUMBER + "\\s*A", Pattern.CASE_INSENSITIVE);

    /** Mains between line and neutral anywhere in the world, with 10 % either way. */
    private static final BigDecimal LEAST_VOLTS = BigDecimal.valueOf(90);

    private static final BigDecimal MOST_VOLTS = BigDecimal.valueOf(305);
    private static final BigDecimal MOST_AMPS = BigDecimal.valueOf(125);

    @Override
    public Mains convert(String text) {
        Matcher matcher = SUPPLY.matcher(text.strip());
        if (!matcher.matches()) {
            throw new TypeConversionException(
                    "'" + text + "' is no supply; expected phases, volts of one phase and amps, such as '3x230V 16A'");
        }
        return supply(matcher.group(1), matcher.group(2), matcher.group(3));
    }

    private static Mains supply(String phases, String volts, String amps) {
        BigDecimal one = within(new BigDecimal(volts), LEAST_VOLTS, MOST_VOLTS, "V across one phase");
        BigDecimal each = within(new BigDecimal(amps), BigDecimal.ONE, MOST_AMPS, "A in each phase");
        return new Mains("As asked", Integer.parseInt(phases), one, each);
    }

    private static BigDecimal within(BigDecimal number, BigDecimal least, BigDecimal most, String what) {
        if (number.compareTo(least) < 0 || number.compareTo(most) > 0) {
            throw new TypeConversionException(number.toPlainString() + " " + what
                    + " is no supply that a vehicle is charged at; expected from " + least + " to " + most);
        }
        return number;
    }
}
