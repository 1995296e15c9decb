package boltlore.cli;

import boltlore.asking.SaidDay;
import boltlore.catalogue.BuildDate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A date as people say it: as 1968-05-20 (ISO 8601), or with the day in front and points between, as 20.05.1968. */
final class SaidDate implements ITypeConverter<BuildDate> {

    @Override
    public BuildDate convert(String written) {
        return SaidDay.built(written)
                .orElseThrow(
                        () -> new TypeConversionException("'" + written + "'; expected " + SaidDay.BUILT_EXPECTED));
    }
}
