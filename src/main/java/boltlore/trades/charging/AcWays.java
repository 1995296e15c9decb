package boltlore.trades.charging;

import boltlore.catalogue.Facts;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.OnBoardCharger;
import boltlore.catalogue.Pack;
import boltlore.catalogue.ProximityKind;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.power.Link;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Charging on alternating current: at one supply with each loose cable, then at the posts of the market. */
record AcWays(
        Choices choices,
        Fitted fitted,
        @Nullable Mains mains,
        @Nullable CableCode cable) {

    List<AcCharging> all() {
        List<AcCharging> ways = new ArrayList<>();
        if (mains != null) {
            ways.addAll(rising(at(mains)));
        }
        ways.addAll(rising(Mains.atPosts(choices).stream()
                .map(this::at)
                .flatMap(List::stream)
                .toList()));
        return List.copyOf(ways);
    }

    /** Those that bring more than all before them. */
    private static List<AcCharging> rising(List<AcCharging> ways) {
        List<AcCharging> rising = new ArrayList<>();
        for (AcCharging way : ways) {
            if (rising.stream().allMatch(before -> before.kilowatts().compareTo(way.kilowatts()) < 0)) {
                rising.add(way);
            }
        }
        return rising;
    }

    private List<AcCharging> at(Mains place) {
        return cables(place).stream()
                .flatMap(code -> with(place, code).stream())
                .toList();
    }

    /** Loose cables that are no larger than needed; one null where the inlet reads no code. */
    private List<@Nullable CableCode> cables(Mains place) {
        InletWiring inlet = fitted.inlet();
        if (inlet == null || inlet.proximity() != ProximityKind.CABLE_CODE) {
            return Collections.singletonList(null);
        }
        return cable != null ? List.of(cable) : upTo(place);
    }

    private static List<CableCode> upTo(Mains place) {
        BigDecimal enough = Arrays.stream(CableCode.values())
                .map(code -> BigDecimal.valueOf(code.amps(place.phases())))
                .filter(amps -> amps.compareTo(place.amps()) >= 0)
                .findFirst()
                .orElse(place.amps());
        return Arrays.stream(CableCode.values())
                .filter(code -> BigDecimal.valueOf(code.amps(place.phases())).compareTo(enough) <= 0)
                .toList();
    }

    private Optional<AcCharging> with(Mains place, @Nullable CableCode code) {
        Chain chain = chain(place, code);
        return chain.kilowatts()
                .flatMap(kilowatts ->
                        hours(kilowatts).map(hours -> new AcCharging(place, code, chain, kilowatts, hours)));
    }

    private Optional<BigDecimal> hours(BigDecimal kilowatts) {
        Pack pack = fitted.pack();
        OnBoardCharger charger = fitted.charger();
        return pack == null || charger == null
                ? Optional.empty()
                : Optional.of(ChargingTime.hours(pack, kilowatts, charger.efficiencyPercent()));
    }

    private Chain chain(Mains place, @Nullable CableCode code) {
        Facts charger = choices.facts(Role.CHARGER);
        BigDecimal cableAmps = code == null ? null : BigDecimal.valueOf(code.amps(place.phases()));
        List<Link> links = List.of(
                new Link(Link.SUPPLY, place.phases(), place.amps()),
                new Link("cable", null, cableAmps),
                Link.of("inlet", choices.facts(Role.INLET)),
                Link.of(Link.CHARGER, charger));
        return new Chain(links, place.volts(), charger.kw());
    }
}
