package boltlore.catalogue;

import boltlore.measure.OptionName;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A question with exactly one answer in a settled order.
 *
 * @param usual offered first, never taken silently
 * @param builtFrom which value the donor's build date settles; empty where no date settles it
 */
public record Option(
        OptionName name,
        String asks,
        @Nullable Role role,
        List<OptionValue> values,
        @Nullable String usual,
        List<BuildDates> builtFrom) {

    public Optional<OptionValue> value(String wanted) {
        return values.stream().filter(value -> value.value().equals(wanted)).findFirst();
    }

    public List<String> valueNames() {
        return values.stream().map(OptionValue::value).toList();
    }
}
