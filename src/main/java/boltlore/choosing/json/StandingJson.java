package boltlore.choosing.json;

import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choosing.Chooser;
import boltlore.choosing.Importance;
import boltlore.choosing.Standing;
import boltlore.json.JsonOut;
import java.util.List;

/** Where choices stand, as JSON: each option with its state and values; closed and forced ones with their reason. */
public final class StandingJson {

    private StandingJson() {}

    public static JsonOut.Members of(Chooser chooser, Standing.Sound standing, Importance importance) {
        List<Option> options = chooser.family().options();
        return JsonOut.object()
                .put("family", chooser.family().name())
                .put("options", JsonOut.list(options, option -> option(chooser, standing, importance, option)));
    }

    private static JsonOut option(Chooser chooser, Standing.Sound standing, Importance importance, Option option) {
        JsonOut.Members members = JsonOut.object()
                .put("option", option.name().text())
                .put("asks", option.asks())
                .put("state", state(standing, option))
                .putIfAny("usual", option.usual());
        standing.choices().value(option.name()).ifPresent(value -> members.put("value", value));
        standing.forced(option).ifPresent(value -> {
            Choice forced = new Choice(option.name(), value.value());
            members.put("value", value.value())
                    .put("because", ConflictJson.of(chooser.whyForced(standing.choices(), forced, importance)));
        });
        return members.put("open", JsonOut.list(standing.open(option), value -> JsonOut.text(value.value())))
                .put(
                        "closed",
                        JsonOut.list(
                                standing.closed(option),
                                value -> closed(chooser, standing, importance, option, value)));
    }

    private static String state(Standing.Sound standing, Option option) {
        if (standing.choices().value(option.name()).isPresent()) {
            return "chosen";
        }
        return standing.forced(option).isPresent() ? "forced" : "open";
    }

    private static JsonOut closed(
            Chooser chooser, Standing.Sound standing, Importance importance, Option option, OptionValue value) {
        Choice closed = new Choice(option.name(), value.value());
        return JsonOut.object()
                .put("value", value.value())
                .put("because", ConflictJson.of(chooser.whyClosed(standing.choices(), closed, importance)));
    }
}
