package boltlore.bring;

import java.util.Collection;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** The numbers that parts get. */
final class PartNumbers {

    private final Brought brought;
    private final Known into;

    PartNumbers(Brought brought) {
        this.brought = brought;
        this.into = brought.into();
    }

    /** Numbers of parts: the list's own where they will do as such, else running ones. */
    void give(Collection<DraftPart> parts) {
        String initials = initials(brought.mapping().family());
        Set<String> taken = new HashSet<>(into.parts());
        int running = 0;
        for (DraftPart part : parts) {
            String own = part.entry().text(Role.PART_NUMBER).equals(part.entry().name())
                            && part.read().columns().stream().noneMatch(column -> column.role() == Role.PART_NUMBER)
                    ? ""
                    : Slugs.partNumber(part.entry().text(Role.PART_NUMBER));
            String number = own;
            while (number.isEmpty() || !taken.add(number)) {
                running++;
                number = initials + "-" + String.format(Locale.ROOT, "%04d", running);
            }
            part.number(number);
        }
    }

    private static String initials(String family) {
        StringBuilder initials = new StringBuilder();
        for (String word : family.split("-", -1)) {
            if (!word.isEmpty() && initials.length() < 4) {
                initials.append(word.charAt(0));
            }
        }
        return initials.length() < 2
                ? family.substring(0, Math.min(4, family.length())).toUpperCase(Locale.ROOT)
                : initials.toString().toUpperCase(Locale.ROOT);
    }
}
