package boltlore.bring;

import java.util.Map;
import java.util.Optional;

/**
 * What people have answered, by the address of the cell that was in doubt: {@link #LEAVE_OUT}, {@link #HEADING}, or how
 * many, such as {@code 2} or {@code 0.5 m}.
 */
record Answers(Map<String, String> byAddress) {

    static final String LEAVE_OUT = "leave out";
    static final String HEADING = "heading";

    /** Begins the doubt about an answer that means nothing: it is asked again. */
    static final String NOT_UNDERSTOOD = "the answer ";

    Optional<String> at(String address) {
        return Optional.ofNullable(byAddress.get(address));
    }
}
