package boltlore.bring;

import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;

/** What columns are by the words of their headings, as far as their values do not belie it. */
final class HeadingRoles {

    /** Roles whose values are texts. */
    private static final List<Role> OF_TEXTS = List.of(
            Role.LINK,
            Role.DRAWING,
            Role.REFERENCE,
            Role.NAME,
            Role.DESCRIPTION,
            Role.GROUP,
            Role.UNIT,
            Role.MATERIAL,
            Role.FINISH,
            Role.NOTE,
            Role.SUPPLIER,
            Role.MAKER,
            Role.REVISION);

    private static final int LONGEST_QUANTITY = 15;

    private final Table table;
    private final ColumnsSoFar known;
    private final SortedMap<Integer, Words.Meaning> meanings;
    private final SortedMap<Integer, Column> columns;

    HeadingRoles(Table table, ColumnsSoFar known) {
        this.table = table;
        this.known = known;
        this.meanings = known.meanings();
        this.columns = known.columns();
    }

    void take() {
        table.columns().forEach(this::byHeading);
        table.columns().forEach(this::byHeadingAround);
        runningNumbers();
    }

    /** What the headings over a column and beside it tell. */
    private void byHeadingAround(int at) {
        if (known.isSpread(at)) {
            known.set(at, known.role(at), false, "'" + table.group(at) + "' heads a column left of it");
        } else if (isOwnNumber(at, known.profile(at))) {
            known.set(at, Role.PART_NUMBER, false, "its values are numbers, and another column names the parts");
        }
    }

    /** Numbers under a heading that only holds a word for texts, such as the name of a drawing: that is no clue. */
    private void forget(int at) {
        Words.Meaning meaning = meanings.get(at);
        boolean misled = meaning != null
                && !meaning.whole()
                && OF_TEXTS.contains(meaning.role())
                && (known.profile(at).isNumeric() || known.profile(at).isMarks());
        if (misled) {
            meanings.remove(at);
        }
    }

    private void byHeading(int at) {
        forget(at);
        String heading = table.heading(at);
        Words.Meaning meaning = meanings.get(at);
        Profile profile = known.profile(at);
        Role role = meaning == null ? Role.LEFT : meaning.role();
        if (meaning == null && profile.isLinks()) {
            role = Role.LINK;
        }
        String because = meaning == null
                ? profile.isLinks() ? "its values are links" : "its heading is no known word"
                : meaning.whole() ? "its heading says so" : "its heading holds a word for it";
        columns.put(at, new Column(at, heading, role, "", "", meaning != null, because));
        boolean wordsUnderNumbers = profile.filled() > 0
                && switch (role) {
                    // 'As needed' under 'Quantity' is a quantity that must be asked for, and no other column.
                    case QUANTITY ->
                        profile.isText()
                                && !profile.isMarks()
                                && (!known.isWhole(at) || profile.averageLength() > LONGEST_QUANTITY);
                    case PACK -> profile.isText();
                    case LEVEL, MASS, LEAD_DAYS -> profile.isText() && !profile.isMarks();
                    case TOTAL -> profile.isText() && profile.isCodes();
                    default -> false;
                };
        boolean numbersUnderWords = profile.isNumeric()
                && (role == Role.DESCRIPTION
                        || role == Role.UNIT
                        || role == Role.SUPPLIER
                        || (role == Role.NAME && profile.isRunning()));
        if (role == Role.NAME && profile.isRunning()) {
            known.set(at, Role.ITEM, true, "its numbers run on from row to row");
        } else if (wordsUnderNumbers || numbersUnderWords) {
            known.set(at, Role.LEFT, false, "its heading says " + role.code() + ", its values do not look like it");
        }
    }

    /** Running numbers, texts and quantities go by the same few headings. */
    private void runningNumbers() {
        for (int at : List.copyOf(columns.keySet())) {
            Profile profile = known.profile(at);
            boolean named = !known.with(Role.NAME).isEmpty();
            if (known.role(at) == Role.ITEM && profile.isText() && !(named && !profile.isCodes())) {
                boolean codes =
                        profile.isCodes() && known.with(Role.PART_NUMBER).isEmpty();
                known.set(
                        at,
                        codes ? Role.PART_NUMBER : named ? Role.ITEM : Role.NAME,
                        true,
                        "its values are " + (codes ? "codes" : "texts"));
            } else if (known.role(at) == Role.NUMBER) {
                boolean codes = profile.isPadded() || (profile.isText() && profile.isCodes());
                boolean counts = !codes
                        && !profile.isRunning()
                        && profile.isNumeric()
                        && known.with(Role.QUANTITY).isEmpty();
                Role role = counts ? Role.QUANTITY : codes ? Role.PART_NUMBER : Role.ITEM;
                boolean words = role == Role.ITEM
                        && profile.isText()
                        && known.with(Role.QUANTITY).isEmpty();
                known.set(at, words ? Role.QUANTITY : role, true, "its heading says 'number', and so do its values");
            } else if (known.role(at) == Role.ORDER_CODE && profile.isDesignators()) {
                known.set(at, Role.REFERENCE, true, "its values are places on a board");
            } else if (known.role(at) == Role.REFERENCE && profile.isRepeated()) {
                known.set(at, Role.GROUP, true, "the same few texts come back");
            } else if (known.role(at) == Role.PART_NUMBER
                    && profile.isText()
                    && !profile.isCodes()
                    && known.with(Role.NAME).isEmpty()) {
                known.set(at, Role.NAME, true, "its values are names and no numbers");
            }
        }
    }

    /**
     * Whether a column headed 'Part' or 'Reference' holds the numbers of parts: its values are codes or all different
     * numbers, other columns name the parts, and none beside it numbers them or says who sells by that code.
     */
    private boolean isOwnNumber(int at, Profile profile) {
        Role role = known.role(at);
        boolean codes = profile.isCodes() || (profile.isNumeric() && profile.distinct() == profile.filled());
        boolean named = Stream.of(Role.NAME, Role.DESCRIPTION)
                .flatMap(each -> known.with(each).stream())
                .anyMatch(other -> other != at
                        && known.profile(other).isText()
                        && !known.profile(other).isCodes());
        boolean reference = role == Role.ORDER_CODE
                && Words.isJust(Words.Saying.REFERENCE, table.heading(at))
                && !profile.isDesignators()
                && known.with(Role.SUPPLIER).isEmpty();
        return codes
                && named
                && (role == Role.NAME || reference)
                && known.with(Role.PART_NUMBER).isEmpty();
    }
}
