package boltlore.choosing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.measure.OptionName;
import boltlore.resolution.Resolver;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The delivery van of the shipped catalogue, read once for all tests. */
final class Van {

    static final Catalogue CATALOGUE = read();
    static final Family FAMILY = CATALOGUE.family("pannier-van");
    static final Resolver RESOLVER = new Resolver(CATALOGUE);

    private Van() {}

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
