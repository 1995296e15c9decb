package boltlore.report.xlsx;

import boltlore.report.Page;
import boltlore.report.Particular;
import boltlore.report.Particulars;
import boltlore.report.Table;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Names that a workbook's sheets, tables and values may bear. A sheet's has at most 31 characters, none of <code>
 * [ ] : * ? / \</code>, no apostrophe at either end, is not 'History', and is unique without regard to capitals (limits
 * that Excel documents).
 */
final class WorkbookNames {

    private static final int LONGEST = 31;
    private static final String LEFT_OUT = "… ";
    private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}\\p{Nd}_.]+");
    private static final Pattern ADDRESS = Pattern.compile("(?i)[a-z]{1,3}[0-9]+|r[0-9]*c?[0-9]*|c[0-9]*");
    private static final Pattern NOT_IN_SHEETS = Pattern.compile("[\\[\\]:*?/\\\\\\p{Cc}\\p{Cs}\uFFFE\uFFFF]");
    private static final Pattern APOSTROPHES = Pattern.compile("^'+|'+$");

    private final Map<String, Integer> blocks = new HashMap<>();
    private final Map<String, String> sheets = new HashMap<>();
    private final Set<String> taken = new HashSet<>();

    WorkbookNames(List<Page> pages) {
        Set<String> takenSheets = new HashSet<>(Set.of("history"));
        for (Page page : pages) {
            sheets.put(page.name(), freeSheet(page.tab(), takenSheets));
            page.tables().forEach(table -> blocks.merge(table.name(), 1, Integer::sum));
            page.particulars().forEach(block -> blocks.merge(block.name(), 1, Integer::sum));
        }
    }

    String sheet(Page page) {
        return sheets.getOrDefault(page.name(), page.name());
    }

    /** Its own name, and its page's where several pages have such a table. */
    String table(Page page, Table table) {
        return freeName(table.name(), page, table.name());
    }

    String value(Page page, Particulars block, Particular entry) {
        return freeName(block.name() + "_" + entry.key(), page, block.name());
    }

    /** Letters, digits, points and lines, not like a cell's address (ECMA-376 part 1, 18.2.5). */
    private String freeName(String own, Page page, String block) {
        String full = blocks.getOrDefault(block, 1) > 1 ? own + "_" + sheet(page) : own;
        String name = NO_LETTERS.matcher(full).replaceAll("_");
        if (!Character.isLetter(name.charAt(0)) || ADDRESS.matcher(name).matches()) {
            name = "_" + name;
        }
        String free = name;
        for (int time = 2; !taken.add(free.toLowerCase(Locale.ROOT)); time++) {
            free = name + "_" + time;
        }
        return free;
    }

    private static String freeSheet(String name, Set<String> taken) {
        String clean = APOSTROPHES
                .matcher(NOT_IN_SHEETS.matcher(name).replaceAll("-").strip())
                .replaceAll("-");
        clean = clean.isEmpty() ? "-" : clean;
        String free = shorten(clean, LONGEST);
        for (int time = 2; !taken.add(free.toLowerCase(Locale.ROOT)); time++) {
            String number = " (" + time + ")";
            free = shorten(clean, LONGEST - number.length()) + number;
        }
        return free;
    }

    /**
     * By whole words: '30 x 3 mm' that is cut would read as metres. First the blanks of dimensions go, then words in the
     * middle: the first says what it is, the last tell it from others.
     */
    private static String shorten(String name, int length) {
        if (name.length() <= length) {
            return name;
        }
        String close = name.replaceAll("(?<=\\d) ?([x×]) ?(?=\\d)", "$1");
        if (close.length() <= length) {
            return close;
        }
        int blank = close.indexOf(' ');
        String head = blank > 0 && blank <= length / 3 ? close.substring(0, blank + 1) + LEFT_OUT : LEFT_OUT;
        int from = close.length() - (length - head.length());
        int word = close.lastIndexOf(' ', from) == from - 1 ? from : close.indexOf(' ', from) + 1;
        if (word > 0) {
            return head + close.substring(word);
        }
        return head.strip() + close.substring(Character.isLowSurrogate(close.charAt(from - 1)) ? from : from - 1);
    }
}
