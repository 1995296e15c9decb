package boltlore.catalogue.json;

import boltlore.catalogue.Facts;
import boltlore.catalogue.Market;
import boltlore.catalogue.Role;
import boltlore.catalogue.Supply;
import boltlore.catalogue.Workshop;
import boltlore.json.ObjectReader;
import boltlore.json.TextShape;
import java.util.ArrayList;
import java.util.List;

/** What an option's role demands of its values, and what the workshop adds to their facts. */
final class RoleFacts {

    private final Reading reading;
    private final Workshop workshop;

    RoleFacts(Reading reading, Workshop workshop) {
        this.reading = reading;
        this.workshop = workshop;
    }

    /** The value's own facts, with those of the market or supply of its name. */
    Facts complete(Role role, String value, Facts own, ObjectReader reader) {
        switch (role) {
            case MARKET -> reading.mention(Kind.MARKET, value, reader.spot("value"));
            case SUPPLY -> reading.mention(Kind.SUPPLY, value, reader.spot("value"));
            case LANGUAGE -> language(value, reader);
            case INLET -> demand(reader, "inlet", own, "phases");
            case CHARGER -> charger(own, reader);
            case DC_INLET -> directInlet(own, reader);
            case EXPORT -> export(own, reader);
            default -> {
                // Neither drive side, era nor colour asks for facts: what decides them stands elsewhere.
            }
        }
        return own.or(workshopFacts(role, value));
    }

    private Facts workshopFacts(Role role, String value) {
        Market market = role == Role.MARKET ? workshop.markets().get(value) : null;
        Supply supply = role == Role.SUPPLY ? workshop.supplies().get(value) : null;
        if (market != null) {
            return market.facts();
        }
        return supply == null ? Facts.NONE : supply.facts();
    }

    private void language(String value, ObjectReader reader) {
        if (TextShape.LANGUAGE.fits().test(value)) {
            reading.mention(Kind.LANGUAGE, value, reader.spot("value"));
        } else {
            reader.faultAt("value", "'" + value + "'", TextShape.LANGUAGE.says(), "");
        }
    }

    private static void charger(Facts own, ObjectReader reader) {
        demand(reader, "charger", own, "phases");
        if (Boolean.TRUE.equals(own.twoWay())) {
            demand(reader, "bidirectional charger", own, "exportKw");
        }
    }

    /** One without facts is not fitted. */
    private static void directInlet(Facts own, ObjectReader reader) {
        if (reader.has("facts")) {
            demand(reader, "DC inlet", own, "volts", "amps");
        }
    }

    private static void export(Facts own, ObjectReader reader) {
        if (reader.has("facts")) {
            demand(reader, "export", own, "socket", "volts", "amps");
        }
    }

    /** A fault for the facts of these names that are missing. */
    static void demand(ObjectReader reader, String what, Facts facts, String... names) {
        List<String> missing = new ArrayList<>();
        for (String name : names) {
            if (isMissing(facts, name)) {
                missing.add("'" + name + "'");
            }
        }
        if (!missing.isEmpty()) {
            String all = String.join(", ", missing);
            reader.fault("facts without " + all, "the fact " + all + " of each " + what, "Add it under 'facts'.");
        }
    }

    private static boolean isMissing(Facts facts, String name) {
        return switch (name) {
            case "phases" -> facts.phases() == null;
            case "amps" -> facts.amps() == null;
            case "volts" -> facts.volts() == null;
            case "socket" -> facts.socket() == null;
            case "exportKw" -> facts.exportKw() == null;
            default -> throw new IllegalArgumentException(name);
        };
    }
}
