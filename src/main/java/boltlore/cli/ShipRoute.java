package boltlore.cli;

import boltlore.trades.shipping.By;
import boltlore.trades.shipping.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** How and where crates travel. */
final class ShipRoute {

    private static final List<String> COUNTRIES = List.of(Locale.getISOCountries());

    @Option(names = "--by", paramLabel = "WAY", description = "How they travel: road, sea or air; without it road.")
    private By by = By.ROAD;

    @Option(
            names = "--to",
            paramLabel = "COUNTRY",
            split = ",",
            description =
                    "Country that they go to, after those that they pass (two letters, ISO 3166); may be given several"
                            + " times.")
    private List<String> to = new ArrayList<>();

    @Spec(Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    /**
     * The route.
     *
     * @throws ParameterException for what is no country
     */
    Route route() {
        List<String> countries = to.stream()
                .map(country -> country.strip().toUpperCase(Locale.ROOT))
                .toList();
        for (String country : countries) {
            if (!COUNTRIES.contains(country)) {
                throw new ParameterException(
                        spec.commandLine(), "No country has the code '" + country + "' (ISO 3166); Ireland is IE.");
            }
        }
        return new Route(by, countries);
    }
}
