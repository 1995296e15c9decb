package boltlore.choosing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.measure.OptionName;
import boltlore.proof.Altered;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The delivery van of the shipped catalogue, read once for all tests. */
final class Van {

    static final Catalogue CATALOGUE = read();
    static final Family FAMILY = CATALOGUE.family("pannier-van");
    static final Resolver RESOLVER = new RuleResolver(CATALOGUE);

    /** The same without the limit that ties one socket to its market: a finding stops such kits. */
    static final Resolver WITHOUT_SOCKET_LIMIT = new RuleResolver(withoutLimit("bs-1363-united-kingdom"));

    private Van() {}

    private static Catalogue withoutLimit(String name) {
        Family loose = Altered.with(
                FAMILY,
                "limits",
                FAMILY.limits().stream()
                        .filter(limit -> !limit.name().equals(name))
                        .toList());
        return Altered.with(CATALOGUE, "families", Map.of(loose.name(), loose));
    }

    private static Catalogue read() {
        Outcome<Catalogue> outcome = CatalogueReader.read(Path.of("catalog"));
        if (outcome instanceof Outcome.Sound<Catalogue> sound) {
            return sound.value();
        }
        throw new IllegalStateException(outcome.faults().toString());
    }

    /** Choices written 'option=value'. */
    static Choices choices(String... written) {
        Map<OptionName, String> values = new LinkedHashMap<>();
        for (String each : written) {
            Choice choice = choice(each);
            values.put(choice.option(), choice.value());
        }
        return Choices.of(FAMILY, values);
    }

    static Choice choice(String written) {
        int at = written.indexOf('=');
        return new Choice(new OptionName(written.substring(0, at)), written.substring(at + 1));
    }
}
