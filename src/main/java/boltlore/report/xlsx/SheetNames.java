package boltlore.report.xlsx;

import boltlore.report.Page;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Names that a sheet may bear: at most 31 characters, none of <code>[ ] : * ? / \</code>, no apostrophe at either end,
 * not 'History', unique without regard to capitals (limits that Excel documents for worksheets).
 */
final class SheetNames {

    private static final int LONGEST = 31;

    private SheetNames() {}

    static List<String> of(List<Page> pages) {
        Set<String> taken = new HashSet<>(Set.of("history"));
        List<String> names = new ArrayList<>();
        for (Page page : pages) {
            names.add(free(clean(page.name()), taken));
        }
        return names;
    }

    private static String clean(String name) {
        String clean = name.replaceAll("[\\[\\]:*?/\\\\\\p{Cc}\\p{Cs}\uFFFE\uFFFF]", "-")
                .strip();
        clean = shorten(clean, LONGEST).replaceAll("^'+|'+$", "-");
        return clean.isEmpty() ? "-" : clean;
    }

    private static String free(String name, Set<String> taken) {
        String free = name;
        for (int time = 2; !taken.add(free.toLowerCase(Locale.ROOT)); time++) {
            String number = " (" + time + ")";
            free = shorten(name, LONGEST - number.length()) + number;
        }
        return free;
    }

    private static String shorten(String name, int length) {
        if (name.length() <= length) {
            return name;
        }
        return name.substring(0, Character.isHighSurrogate(name.charAt(length - 1)) ? length - 1 : length);
    }
}
