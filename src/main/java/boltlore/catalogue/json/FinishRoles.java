package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Family;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Part;
import boltlore.faults.Nearest;
import boltlore.measure.PartNumber;
import java.util.Map;
import java.util.Set;

/** Each family decides every finish role that its parts have, for every choice. */
final class FinishRoles {

    private final Catalogue catalogue;
    private final Reading reading;

    FinishRoles(Catalogue catalogue, Reading reading) {
        this.catalogue = catalogue;
        this.reading = reading;
    }

    void check(Family family, Set<PartNumber> reach) {
        for (Map.Entry<String, FinishRule> rule : family.finishes().entrySet()) {
            if (rule.getValue() instanceof FinishRule.DecidedBy by) {
                family.option(by.option()).ifPresent(option -> decided(rule.getKey(), option));
            }
        }
        reach.forEach(number -> known(number, family));
    }

    private void known(PartNumber number, Family family) {
        Part part = catalogue.parts().get(number);
        if (part != null && part.coat() != null) {
            known(part.coat(), family);
        }
    }

    private void decided(String role, Option option) {
        String expected = "a finish, because option '" + option.name() + "' decides role '" + role + "'";
        for (OptionValue value : option.values()) {
            if (value.facts().finish() == null) {
                withoutFinish(value, expected);
            }
        }
    }

    private void withoutFinish(OptionValue value, String expected) {
        String found = "value '" + value.value() + "' without the fact 'finish'";
        reading.faults().add(reading.sources().of(value).fault(found, expected, "Add \"facts\": {\"finish\": …}."));
    }

    private void known(CoatingSpec coat, Family family) {
        String role = coat.role();
        Set<String> known = family.finishes().keySet();
        if (role != null && !known.contains(role)) {
            reading.faults()
                    .add(reading.sources()
                            .of(coat)
                            .fault(
                                    "finish role '" + role + "', which family '" + family.name() + "' does not decide",
                                    known.isEmpty()
                                            ? "a role under 'finishes' in family.json"
                                            : "one of " + String.join(", ", known),
                                    Nearest.advice(role, known, "Add it to the family's 'finishes'.")));
        }
    }
}
