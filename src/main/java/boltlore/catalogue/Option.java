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
 * @param group the question with several answers that it is one answer of, or null; then its values are 'yes' and 'no'
 * @param scale of which the values are the pieces, where the order's date or chassis number settles it; else null
 */
public record Option(
        OptionName name,
        String asks,
        @Nullable Role role,
        List<OptionValue> values,
        @Nullable String usual,
        List<BuildDates> builtFrom,
        @Nullable Group group,
        @Nullable EffectivityScale scale) {

    public static final String YES = "yes";
    public static final String NO = "no";

    /**
     * A question with any number of answers. Each answer is an option of its own, so that all that is true of options is true of
     * it; what people read and write is the group.
     *
     * @param asks the one question
     * @param value by which orders and conditions name the answer in the group
     */
    public record Group(OptionName name, String asks, String value) {

        /** What the option of that answer is called: 'extras' and 'roof-rack' make 'extras-roof-rack'. */
        public OptionName member() {
            return member(name, value);
        }

        public static OptionName member(OptionName group, String value) {
            return new OptionName(group.text() + "-" + value);
        }
    }

    /** A question of its own. */
    public Option(
            OptionName name,
            String asks,
            @Nullable Role role,
            List<OptionValue> values,
            @Nullable String usual,
            List<BuildDates> builtFrom) {
        this(name, asks, role, values, usual, builtFrom, null, null);
    }

    /** The same question with only some of its values, or with more. */
    public Option offering(List<OptionValue> some, @Nullable String offered) {
        return new Option(name, asks, role, some, offered, List.of(), group, scale);
    }

    public Optional<OptionValue> value(String wanted) {
        return values.stream().filter(value -> value.value().equals(wanted)).findFirst();
    }

    public List<String> valueNames() {
        return values.stream().map(OptionValue::value).toList();
    }
}
