package boltlore.choosing.json;

import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.Chooser;
import boltlore.choosing.Importance;
import boltlore.json.JsonOut;

/** Where choices stand, as JSON: each option with its state and values; forced ones and those not available with their reason. */
public final class ChoiceStateJson {

    private final Chooser chooser;
    private final ChoiceState.Sound standing;
    private final Importance importance;

    private ChoiceStateJson(Chooser chooser, ChoiceState.Sound standing, Importance importance) {
        this.chooser = chooser;
        this.standing = standing;
        this.importance = importance;
    }

    public static JsonOut.Members encode(Chooser chooser, ChoiceState.Sound standing, Importance importance) {
        ChoiceStateJson json = new ChoiceStateJson(chooser, standing, importance);
        return JsonOut.object()
                .put("family", chooser.family().name())
                .put("options", JsonOut.list(chooser.family().options(), json::option));
    }

    private JsonOut option(Option option) {
        JsonOut.Members members = JsonOut.object()
                .put("option", option.name().text())
                .put("asks", option.asks())
                .put("state", state(option))
                .putIfAny("default", option.usual());
        standing.choices().value(option.name()).ifPresent(value -> members.put("value", value));
        standing.forced(option).ifPresent(value -> forced(members, choice(option, value)));
        return members.put("available", JsonOut.list(standing.open(option), value -> JsonOut.text(value.value())))
                .put("notAvailable", JsonOut.list(standing.closed(option), value -> closed(choice(option, value))));
    }

    private String state(Option option) {
        if (standing.choices().value(option.name()).isPresent()) {
            return "chosen";
        }
        return standing.forced(option).isPresent() ? "forced" : "undecided";
    }

    private static Choice choice(Option option, OptionValue value) {
        return new Choice(option.name(), value.value());
    }

    private void forced(JsonOut.Members members, Choice forced) {
        members.put("value", forced.value())
                .put("because", ConflictJson.encode(chooser.whyForced(standing.choices(), forced, importance)));
    }

    private JsonOut closed(Choice closed) {
        return JsonOut.object()
                .put("value", closed.value())
                .put("because", ConflictJson.encode(chooser.whyClosed(standing.choices(), closed, importance)));
    }
}
