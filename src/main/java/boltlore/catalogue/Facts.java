package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is true of an option value beyond its name. A fact that is not known is null or an empty list.
 *
 * @param phases phases in use, 1 or 3
 * @param amps current per phase in A
 * @param volts voltage that one phase sees in V: line to neutral, or of the single-phase supply
 * @param socket name of the V2L outlet
 * @param sockets names of the sockets in use in a market
 * @param inlets names of the inlet values in use in a market
 * @param languages language codes in use in a market
 * @param twoWay whether a charger also feeds out
 * @param exportKw what a charger may feed out, in kW
 * @param kw rated power in kW
 * @param finish name of the finish that a colour stands for
 */
public record Facts(
        @Nullable Integer phases,
        @Nullable BigDecimal amps,
        @Nullable BigDecimal volts,
        @Nullable String socket,
        List<String> sockets,
        List<String> inlets,
        List<String> languages,
        @Nullable Boolean twoWay,
        @Nullable BigDecimal exportKw,
        @Nullable BigDecimal kw,
        @Nullable String finish) {

    public static final Facts NONE =
            new Facts(null, null, null, null, List.of(), List.of(), List.of(), null, null, null, null);

    /** These facts, with those of the other wherever these are silent. */
    public Facts or(Facts other) {
        return new Facts(
                phases != null ? phases : other.phases,
                amps != null ? amps : other.amps,
                volts != null ? volts : other.volts,
                socket != null ? socket : other.socket,
                sockets.isEmpty() ? other.sockets : sockets,
                inlets.isEmpty() ? other.inlets : inlets,
                languages.isEmpty() ? other.languages : languages,
                twoWay != null ? twoWay : other.twoWay,
                exportKw != null ? exportKw : other.exportKw,
                kw != null ? kw : other.kw,
                finish != null ? finish : other.finish);
    }
}
