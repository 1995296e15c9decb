package boltlore.power;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.catalogue.Workshop;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A family of electrical options alone, each with the one value that a test gives it. */
public final class Wired {

    private final List<Option> options = new ArrayList<>();
    private final Map<OptionName, String> chosen = new LinkedHashMap<>();

    public Wired with(Role role, String value, Facts facts) {
        OptionName name = new OptionName(role.written());
        OptionValue only = new OptionValue(value, Wording.english(value), facts);
        options.add(new Option(name, "Which?", role, List.of(only), null, List.of()));
        chosen.put(name, value);
        return this;
    }

    public static Facts carries(int phases, String volts, String amps) {
        return new Facts(
                phases,
                new BigDecimal(amps),
                new BigDecimal(volts),
                null,
                List.of(),
                List.of(),
                List.of(),
                null,
                null,
                null,
                null);
    }

    public static Facts outlet(String socket, String volts, String amps) {
        return new Facts(
                null,
                new BigDecimal(amps),
                new BigDecimal(volts),
                socket,
                List.of(),
                List.of(),
                List.of(),
                null,
                null,
                null,
                null);
    }

    public static Facts charger(int phases, String amps, boolean twoWay, String exportKw) {
        return new Facts(
                phases,
                new BigDecimal(amps),
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                twoWay,
                exportKw.isEmpty() ? null : new BigDecimal(exportKw),
                null,
                null);
    }

    public static Facts market(List<String> inlets, List<String> sockets) {
        return new Facts(null, null, null, null, sockets, inlets, List.of(), null, null, null, null);
    }

    public Choices choices() {
        return Choices.of(family(), chosen);
    }

    public Catalogue catalogue() {
        CoatingShop coating = new CoatingShop(Map.of(), List.of(), Map.of(), List.of(), Map.of(), BigDecimal.ONE);
        Workshop workshop = new Workshop(
                "Ostrevale",
                "Ostrevale",
                Currency.getInstance("EUR"),
                BigDecimal.ONE,
                0,
                "en",
                List.of("en"),
                List.of(),
                Map.of(),
                List.of(),
                List.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                coating);
        return new Catalogue(workshop, Map.of(), Map.of(), Map.of(), Map.of("wired", family()), "0");
    }

    private Family family() {
        return new Family(
                "wired", Wording.english("Wired"), null, options, List.of(), Map.of(), List.of(), List.of(), List.of());
    }
}
