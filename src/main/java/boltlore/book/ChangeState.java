package boltlore.book;

import boltlore.json.Allowed;
import java.util.List;
import java.util.Locale;

/** Where a change order stands; its status accounting in the sense of ISO 10007:2017, 5.5. */
public enum ChangeState {
    PROPOSED,
    /** From then on the order stands on the changed kit. */
    ACCEPTED,
    DROPPED,
    /** Accepted, and somebody has verified that it was done. */
    CARRIED_OUT;

    public static final Allowed<ChangeState> WORDS = Allowed.of(values(), ChangeState::written);

    public String written() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Where a change may go from here. */
    public List<ChangeState> next() {
        return switch (this) {
            case PROPOSED -> List.of(ACCEPTED, DROPPED);
            case ACCEPTED -> List.of(CARRIED_OUT);
            case DROPPED, CARRIED_OUT -> List.of();
        };
    }
}
