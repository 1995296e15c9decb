package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.TradeOption;
import java.time.LocalDate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day as people give it on the command line. */
final class Day implements ITypeConverter<LocalDate> {

    @Override
    public LocalDate convert(String written) {
        Outcome<LocalDate> day = TradeOption.dated("", written);
        if (day instanceof Outcome.Sound<LocalDate> sound) {
            return sound.value();
        }
        Fault fault = day.faults().get(0);
        throw new TypeConversionException(fault.found() + "; expected " + fault.expected());
    }
}
