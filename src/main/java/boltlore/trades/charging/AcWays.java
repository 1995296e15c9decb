package boltlore.trades.charging;

import boltlore.catalogue.Facts;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.OnBoardCharger;
import boltlore.catalogue.Pack;
import boltlore.catalogue.ProximityKind;
import boltlore.catalogue.PublicLead;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.power.Link;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
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
            ways.addAll(rising(at(mains, cables(mains))));
        }
        ways.addAll(rising(Mains.atPosts(choices).stream()
                .map(post -> at(post, atPost(post)))
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

    private List<AcCharging> at(Mains place, List<Loose> cables) {
        return cables.stream().flatMap(loose -> with(place, loose).stream()).toList();
    }

    /** A cable between charging point and inlet; all null where it belongs to the point. */
    private record Loose(
            @Nullable CableCode code,
            @Nullable PublicLead lead,
            @Nullable Integer phases,
            @Nullable BigDecimal amps) {

        static Loose coded(CableCode code, Mains place) {
            return new Loose(code, null, null, BigDecimal.valueOf(code.amps(place.phases())));
        }

        static Loose of(PublicLead lead) {
            return new Loose(null, lead, lead.phases(), lead.amps());
        }
    }

    /** At a public point with the cable of the kit, where it has one. */
    private List<Loose> atPost(Mains post) {
        PublicLead lead = fitted.lead();
        return lead == null || cable != null ? cables(post) : List.of(Loose.of(lead));
    }

    /** Loose cables that are no larger than needed; one that belongs to the point where the inlet reads no code. */
    private List<Loose> cables(Mains place) {
        InletWiring inlet = fitted.inlet();
        if (inlet == null || inlet.proximity() != ProximityKind.CABLE_CODE) {
            return List.of(new Loose(null, null, null, null));
        }
        List<CableCode> codes = cable != null ? List.of(cable) : upTo(place);
        return codes.stream().map(code -> Loose.coded(code, place)).toList();
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

    private Optional<AcCharging> with(Mains place, Loose loose) {
        Chain chain = chain(place, loose);
        return chain.kilowatts()
                .flatMap(kilowatts -> hours(kilowatts)
                        .map(hours -> new AcCharging(place, loose.code(), loose.lead(), chain, kilowatts, hours)));
    }

    private Optional<BigDecimal> hours(BigDecimal kilowatts) {
        Pack pack = fitted.pack();
        OnBoardCharger charger = fitted.charger();
        return pack == null || charger == null
                ? Optional.empty()
                : Optional.of(ChargingTime.hours(pack, kilowatts, charger.efficiencyPercent()));
    }

    private Chain chain(Mains place, Loose loose) {
        Facts charger = choices.facts(Role.CHARGER);
        List<Link> links = List.of(
                new Link(Link.SUPPLY, place.phases(), place.amps()),
                new Link("cable", loose.phases(), loose.amps()),
                Link.of("inlet", choices.facts(Role.INLET)),
                Link.of(Link.CHARGER, charger));
        return new Chain(links, place.volts(), charger.kw());
    }
}
